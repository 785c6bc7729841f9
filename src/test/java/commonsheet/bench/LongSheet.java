package commonsheet.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;

/**
 * A specification of an invented cell as long as one can be: on every page running text, a ruled
 * table and a chart drawn as paths.
 */
final class LongSheet {
  private static final int LINES = 24;
  private static final int ROWS = 14;
  private static final int CURVES = 5;
  private static final int POINTS = 400;
  private static final String SENTENCE =
      "The cell is charged at constant current and then at constant voltage to the limit below.";

  private LongSheet() {}

  static void write(Path file, int pages) throws IOException {
    try (PDDocument document = new PDDocument()) {
      for (int number = 1; number <= pages; number++) {
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          draw(content, number);
        }
      }
      document.save(file.toFile());
    }
  }

  private static void draw(PDPageContentStream content, int number) throws IOException {
    text(content, PDType1Font.HELVETICA_BOLD, 14, 60, 790, "Section " + number);
    for (int line = 0; line < LINES; line++) {
      text(
          content,
          PDType1Font.TIMES_ROMAN,
          10,
          60,
          760 - 13 * line,
          number + "." + line + "  " + SENTENCE);
    }
    for (int row = 0; row <= ROWS; row++) {
      float y = 430 - 14 * row;
      content.moveTo(60, y);
      content.lineTo(530, y);
      content.stroke();
      if (row < ROWS) {
        text(content, PDType1Font.HELVETICA, 9, 66, y - 10, "Discharge at rate " + row);
        text(
            content,
            PDType1Font.HELVETICA,
            9,
            300,
            y - 10,
            String.format(Locale.ROOT, "%.3f Ah", 3 - row * 0.05));
      }
    }
    chart(content);
  }

  private static void chart(PDPageContentStream content) throws IOException {
    content.addRect(60, 40, 470, 170);
    content.stroke();
    for (int curve = 0; curve < CURVES; curve++) {
      content.moveTo(60, 200);
      for (int i = 1; i <= POINTS; i++) {
        double x = i / (double) POINTS;
        double y = 1 - 0.25 * x - 0.05 * curve * x - 0.5 * Math.pow(x, 12);
        content.lineTo((float) (60 + 470 * x), (float) (40 + 160 * y));
      }
      content.stroke();
    }
  }

  private static void text(
      PDPageContentStream content, PDFont font, float size, float x, float y, String text)
      throws IOException {
    content.beginText();
    content.setFont(font, size);
    content.newLineAtOffset(x, y);
    content.showText(text);
    content.endText();
  }
}
