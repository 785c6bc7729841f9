package commonsheet.cli;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;

/** An invented datasheet of one page: a few values, and a chart of discharges. */
final class ChartSheet {
  private static final float LEFT = 120;
  private static final float BOTTOM = 200;
  private static final float PER_AMPERE_HOUR = 100;
  private static final float PER_VOLT = 100;
  private static final double[] RATES = {0.2, 1, 2};
  private static final Color[] COLOURS = {Color.BLUE, Color.RED, new Color(0, 130, 0)};

  private ChartSheet() {}

  /** Draws the sheet; its three curves end at 2.6, 2.4 and 2.2 Ah and 2.5 V. */
  static Path draw(Path file) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(PDRectangle.A4);
      document.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        values(content);
        axes(content);
        for (int i = 0; i < RATES.length; i++) {
          curve(content, RATES[i], 2.6 - 0.2 * i, COLOURS[i], i);
        }
      }
      document.save(file.toFile());
    }
    return file;
  }

  private static void values(PDPageContentStream content) throws IOException {
    String[] lines = {
      "Lithium-ion cell Tarnwick TW18650-26",
      "Nominal capacity: 2600 mAh (0.2C discharge, 2.5 V cut-off)",
      "Nominal voltage: 3.6 V",
      "Charge voltage: 4.2 V",
      "Discharge cut-off voltage: 2.5 V",
      "Maximum continuous discharge current: 5.2 A"
    };
    for (int i = 0; i < lines.length; i++) {
      text(content, 72, 780 - 18 * i, 10, lines[i]);
    }
  }

  private static void axes(PDPageContentStream content) throws IOException {
    content.setStrokingColor(Color.BLACK);
    content.setLineWidth(0.8f);
    content.addRect(LEFT, BOTTOM, 3 * PER_AMPERE_HOUR, 2 * PER_VOLT);
    content.stroke();
    for (int i = 0; i <= 6; i++) {
      float x = LEFT + i * PER_AMPERE_HOUR / 2;
      line(content, x, BOTTOM, x, BOTTOM + 4);
      text(content, x - 8, BOTTOM - 14, 8, "" + 500 * i);
    }
    for (int i = 0; i <= 4; i++) {
      float y = BOTTOM + i * PER_VOLT / 2;
      line(content, LEFT, y, LEFT + 4, y);
      text(content, LEFT - 18, y - 3, 8, "" + (2.5 + i / 2.0));
    }
    text(content, LEFT + 110, BOTTOM - 30, 9, "Discharge capacity (mAh)");
    text(content, LEFT - 40, BOTTOM + 212, 9, "Voltage (V)");
    text(content, LEFT + 90, BOTTOM + 230, 10, "Discharge by rate at 25°C");
  }

  /** From 4.1 V less a drop by the rate, gently down, then steeply to 2.5 V. */
  private static void curve(
      PDPageContentStream content, double rate, double end, Color colour, int index)
      throws IOException {
    content.setStrokingColor(colour);
    content.setLineWidth(1.2f);
    for (int i = 0; i <= 100; i++) {
      double share = i / 100.0;
      double start = 4.1 - 0.15 * index;
      double voltage = start - 0.7 * share - (start - 0.7 - 2.5) * Math.pow(share, 12);
      float x = (float) (LEFT + PER_AMPERE_HOUR * end * share);
      float y = (float) (BOTTOM + PER_VOLT * (voltage - 2.5));
      if (i == 0) {
        content.moveTo(x, y);
      } else {
        content.lineTo(x, y);
      }
    }
    content.stroke();
    float key = BOTTOM + 180 - 14 * index;
    line(content, LEFT + 225, key, LEFT + 250, key);
    text(content, LEFT + 256, key - 3, 8, (rate == 0.2 ? "0.2" : "" + (int) rate) + "C");
  }

  private static void line(PDPageContentStream content, float x1, float y1, float x2, float y2)
      throws IOException {
    content.moveTo(x1, y1);
    content.lineTo(x2, y2);
    content.stroke();
  }

  private static void text(PDPageContentStream content, float x, float y, int size, String text)
      throws IOException {
    content.beginText();
    content.setFont(PDType1Font.HELVETICA, size);
    content.newLineAtOffset(x, y);
    content.showText(text);
    content.endText();
  }
}
