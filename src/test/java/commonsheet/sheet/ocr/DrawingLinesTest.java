package commonsheet.sheet.ocr;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.sheet.Box;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Texts drawn here, so that where their ink lies is known; the lines found of them are made up. */
class DrawingLinesTest {
  private final BufferedImage image = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
  private final Graphics2D graphics = image.createGraphics();

  DrawingLinesTest() {
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, 400, 300);
    graphics.setColor(Color.BLACK);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 16));
  }

  private Box text(String text, int x, int y) {
    graphics.drawString(text, x, y);
    double width = graphics.getFontMetrics().stringWidth(text);
    return new Box(x, y - 12, width, 12);
  }

  private List<Box> completed(Box... found) {
    List<TurnedBox> lines =
        List.of(found).stream()
            .map(b -> TurnedBox.level(b.x(), b.y(), b.width(), b.height()))
            .toList();
    return DrawingLines.completed(Pixels.of(image), lines).stream().map(TurnedBox::around).toList();
  }

  /** Found as "2C", it would name the curve of another rate. */
  @Test
  void aLabelWhoseBeginningWasCutOffIsWhole() {
    Box whole = text("0.2C", 100, 100);
    Box end = new Box(whole.x() + 15, whole.y() - 3, whole.width() - 12, 18);
    List<Box> lines = completed(end);
    assertEquals(1, lines.size());
    assertTrue(lines.get(0).x() <= whole.x() + 1, lines.toString());
    assertTrue(lines.get(0).right() >= whole.right() - 1, lines.toString());
  }

  @Test
  void aLoneLabelThatWasPassedOverIsFound() {
    Box title = text("Discharge capacity", 60, 200);
    Box label = text("3C", 250, 80);
    List<Box> lines = completed(new Box(56, 185, title.width() + 8, 20));
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).contains(label.centreX(), label.centreY()), lines.toString());
  }

  @Test
  void theUnitOfATitleOnItsSideBelongsToIt() {
    graphics.setTransform(AffineTransform.getRotateInstance(-Math.PI / 2, 40, 200));
    graphics.drawString("Voltage / V", 40, 200);
    graphics.setTransform(new AffineTransform());
    double length = graphics.getFontMetrics().stringWidth("Voltage / V");
    double word = graphics.getFontMetrics().stringWidth("Voltage");
    Box title = new Box(24, 200 - word - 2, 20, word + 4);
    Box unit = new Box(25, 200 - length - 3, 18, 16);
    List<Box> lines = completed(title, unit);
    assertEquals(1, lines.size());
    assertEquals(200 - length, lines.get(0).y(), 5);
    assertEquals(202, lines.get(0).bottom(), 4);
  }

  @Test
  void neighboursInARowStayApart() {
    Box one = text("20", 100, 100);
    Box other = text("40", 160, 100);
    List<Box> lines =
        completed(
            new Box(one.x() - 3, one.y() - 3, one.width() + 6, 18),
            new Box(other.x() - 3, other.y() - 3, other.width() + 6, 18));
    assertEquals(2, lines.size());
    assertTrue(lines.get(0).right() < 140, lines.toString());
  }

  @Test
  void theDashesOfACurveAreNoLetters() {
    Box label = text("1C", 100, 100);
    for (int k = 0; k < 6; k++) {
      graphics.drawLine(130 + 12 * k, 97 + k, 137 + 12 * k, 98 + k);
    }
    List<Box> lines = completed(new Box(97, 85, label.width() + 6, 18));
    assertEquals(1, lines.size());
    assertTrue(lines.get(0).right() < 128, lines.toString());
  }
}
