package commonsheet.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.util.Matrix;

/** A small PDF drawn for a test, measured in points from the top left of the page. */
final class Drawn {
  private final PDDocument document = new PDDocument();
  private PDPageContentStream content;
  private double height;

  /** An empty page of 400 by 600 points is open. */
  Drawn() {
    page(400, 600);
  }

  static Drawn sheet() {
    return new Drawn();
  }

  PDDocument document() {
    return document;
  }

  PDPageContentStream content() {
    return content;
  }

  Drawn page(double width, double pageHeight) {
    return quietly(
        () -> {
          if (content != null) {
            content.close();
          }
          PDPage page = new PDPage(new PDRectangle((float) width, (float) pageHeight));
          document.addPage(page);
          content = new PDPageContentStream(document, page);
          height = pageHeight;
        });
  }

  /** Text whose base line begins at x, y, in Helvetica. */
  Drawn text(double x, double y, double size, String text) {
    return text(x, y, size, PDType1Font.HELVETICA, 0, text);
  }

  Drawn text(double x, double y, double size, PDFont font, double turn, String text) {
    return quietly(
        () -> {
          content.beginText();
          content.setFont(font, (float) size);
          content.setTextMatrix(
              Matrix.getRotateInstance(Math.toRadians(turn), (float) x, (float) (height - y)));
          content.showText(text);
          content.endText();
        });
  }

  /** Lines of text, one below the other. */
  Drawn lines(double x, double y, double size, double pitch, String... lines) {
    for (int i = 0; i < lines.length; i++) {
      text(x, y + i * pitch, size, lines[i]);
    }
    return this;
  }

  Drawn line(double x1, double y1, double x2, double y2) {
    return quietly(
        () -> {
          content.moveTo((float) x1, (float) (height - y1));
          content.lineTo((float) x2, (float) (height - y2));
          content.stroke();
        });
  }

  /** Level lines at each y from x1 to x2. */
  Drawn rules(double x1, double x2, double... ys) {
    for (double y : ys) {
      line(x1, y, x2, y);
    }
    return this;
  }

  /** Upright lines at each x from y1 to y2. */
  Drawn uprights(double y1, double y2, double... xs) {
    for (double x : xs) {
      line(x, y1, x, y2);
    }
    return this;
  }

  Drawn filled(double x, double y, double width, double boxHeight, double grey) {
    return quietly(
        () -> {
          content.setNonStrokingColor((float) grey);
          content.addRect(
              (float) x, (float) (height - y - boxHeight), (float) width, (float) boxHeight);
          content.fill();
          content.setNonStrokingColor(0f);
        });
  }

  byte[] bytes() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    quietly(
        () -> {
          content.close();
          document.save(out);
          document.close();
        });
    return out.toByteArray();
  }

  Sheet read(Path folder) throws SheetException {
    return SheetReader.read(save(folder));
  }

  /** The first page as read. */
  Page readPage(Path folder) throws SheetException {
    return read(folder).pages().get(0);
  }

  Path save(Path folder) {
    return save(folder, bytes());
  }

  static Path save(Path folder, byte[] bytes) {
    Path file = folder.resolve("sheet.pdf");
    try {
      return Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  interface Drawing {
    void draw() throws IOException;
  }

  Drawn quietly(Drawing drawing) {
    try {
      drawing.draw();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return this;
  }
}
