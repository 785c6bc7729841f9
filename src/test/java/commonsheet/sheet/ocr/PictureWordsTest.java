package commonsheet.sheet.ocr;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.sheet.Box;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.TextPlace;
import commonsheet.sheet.Word;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/**
 * What is drawn is known, so the words that come back are compared with it. The font is the logical
 * sans serif one of the Java machine.
 */
class PictureWordsTest {
  private static final PictureWords OCR = new PictureWords(2);

  @AfterAll
  static void close() {
    OCR.close();
  }

  /** A white picture of a part of a page, 200 dots per inch, with its upper left at (30, 40). */
  private static final class Drawing {
    private static final double SCALE = 200 / 72.0;
    private final BufferedImage image =
        new BufferedImage((int) (300 * SCALE), (int) (100 * SCALE), BufferedImage.TYPE_INT_RGB);
    private final Graphics2D graphics = image.createGraphics();

    Drawing() {
      this(Color.WHITE, Color.BLACK);
    }

    Drawing(Color ground, Color ink) {
      graphics.setColor(ground);
      graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
      graphics.setColor(ink);
      graphics.scale(SCALE, SCALE);
      graphics.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }

    /** Draws a text of a font size in points at a place in points, and tells where its ink is. */
    Box text(String text, double size, double x, double y) {
      Font font = new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) size);
      graphics.setFont(font);
      graphics.drawString(text, (float) x, (float) y);
      Rectangle2D ink =
          font.createGlyphVector(graphics.getFontRenderContext(), text)
              .getOutline((float) x, (float) y)
              .getBounds2D();
      return new Box(30 + ink.getX(), 40 + ink.getY(), ink.getWidth(), ink.getHeight());
    }

    PagePixels picture() {
      return new PagePixels(1, new Box(30, 40, 300, 100), image);
    }

    List<Word> words() {
      return OCR.words(picture());
    }
  }

  private static List<String> texts(List<Word> words) {
    return words.stream().map(Word::text).toList();
  }

  @Test
  void aLineComesOutWordByWord() {
    Drawing drawing = new Drawing();
    drawing.text("Nominal capacity 2600 mAh", 9, 20, 50);
    List<Word> words = drawing.words();
    assertEquals(List.of("Nominal", "capacity", "2600", "mAh"), texts(words));
    words.forEach(
        word -> {
          assertTrue(word.recognised());
          assertTrue(word.confidence() > 0.8);
          assertEquals(0, word.turn());
          assertEquals(9, word.size(), 1.5);
        });
  }

  @Test
  void smallLabelsOfAnAxisStandWhereTheyAreDrawn() {
    Drawing drawing = new Drawing();
    String[] labels = {"0", "500", "1000", "1500", "2000", "2500"};
    Box[] drawn = new Box[labels.length];
    for (int i = 0; i < labels.length; i++) {
      drawn[i] = drawing.text(labels[i], 5.5, 15 + i * 45, 50);
    }
    List<Word> words = drawing.words();
    for (int i = 0; i < labels.length; i++) {
      String label = labels[i];
      Word word = words.stream().filter(w -> w.text().equals(label)).findFirst().orElseThrow();
      assertEquals(drawn[i].centreX(), word.box().centreX(), 0.5);
      assertEquals(drawn[i].centreY(), word.box().centreY(), 0.7);
    }
  }

  @Test
  void signsThatChangeANumberAreKept() {
    Drawing drawing = new Drawing();
    drawing.text("-20 \u00B0C", 7, 20, 30);
    drawing.text("\u00B10.05 V", 7, 120, 30);
    drawing.text("3.65 V", 7, 220, 30);
    String read = String.join(" ", texts(drawing.words())).replace("\u2103", "\u00B0C");
    assertTrue(read.contains("-20"), read);
    assertTrue(read.contains("\u00B0C"), read);
    assertTrue(read.contains("\u00B10.05"), read);
    assertTrue(read.contains("3.65"), read);
  }

  @Test
  void theTitleOfAnUprightAxisReadsFromBottomToTop() {
    Drawing drawing = new Drawing();
    drawing.graphics.rotate(-Math.PI / 2, 40, 90);
    drawing.text("Voltage (V)", 7, 40, 90);
    List<Word> words = drawing.words();
    assertEquals("Voltage(V)", String.join("", texts(words)));
    words.forEach(word -> assertEquals(90, word.turn()));
  }

  @Test
  void lightTextOnDarkGroundIsRead() {
    Drawing drawing = new Drawing(new Color(0x20, 0x40, 0x90), Color.WHITE);
    drawing.text("Shorefall 21700", 12, 40, 50);
    assertEquals(List.of("Shorefall", "21700"), texts(drawing.words()));
  }

  @Test
  void placesThatAreKnownAreReadWithoutTheRest() {
    Drawing drawing = new Drawing();
    drawing.text("Nominal voltage", 9, 20, 50);
    Box number = drawing.text("3.65 V", 9, 120, 50);
    drawing.graphics.rotate(-Math.PI / 2, 260, 90);
    drawing.text("42.5 mm", 9, 260, 90);
    Box upright = new Box(30 + 260 - 6.6, 40 + 90 - 37, 6.7, 37);
    List<TextPlace> places = List.of(new TextPlace(number, 0), new TextPlace(upright, 90));
    List<Word> words = OCR.words(drawing.picture(), places);
    assertEquals("3.65V42.5mm", String.join("", texts(words)));
    assertEquals(number.x(), words.get(0).box().x(), 0.5);
    assertEquals(90, words.get(words.size() - 1).turn());
  }

  @Test
  void theSampleOfALegendIsNoMinus() {
    Drawing drawing = new Drawing();
    drawing.text("25 \u00B0C", 7, 52, 50);
    drawing.graphics.setColor(new Color(0x80, 0x30, 0xA0));
    drawing.graphics.fill(new Rectangle2D.Double(28, 47, 22, 1));
    assertEquals("25", drawing.words().get(0).text());
  }

  /** The network tells where a narrow letter stands only roughly. */
  @Test
  void narrowLettersStayInTheirWords() {
    Drawing drawing = new Drawing();
    drawing.text("Impulse of small cell until cut-off", 8, 20, 50);
    assertEquals(
        List.of("Impulse", "of", "small", "cell", "until", "cut-off"), texts(drawing.words()));
  }

  /** Of table rows between rulings: the size decides which gaps part cells. */
  @Test
  void aRulingAboveALineMakesItsPrintNoLarger() {
    Drawing drawing = new Drawing();
    drawing.text("Discharge capacity", 9, 20, 50);
    drawing.graphics.fill(new Rectangle2D.Double(10, 40.2, 250, 0.8));
    drawing.words().forEach(word -> assertEquals(9, word.size(), 1.5));
  }

  @Test
  void aDegreeIsAsSureAsItsTwoFormsTogether() {
    Drawing drawing = new Drawing();
    drawing.text("23 \u00B0C", 9, 20, 50);
    drawing.text("60 \u00B0C", 9, 120, 50);
    drawing.words().forEach(word -> assertTrue(word.confidence() > 0.6, word.toString()));
  }

  @Test
  void picturesWithoutWordsHaveNone() {
    for (int type : new int[] {BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_BYTE_BINARY}) {
      assertEquals(List.of(), OCR.words(blank(1, 1, type)));
      assertEquals(List.of(), OCR.words(blank(1, 900, type)));
      assertEquals(List.of(), OCR.words(blank(700, 900, type)));
    }
  }

  private static PagePixels blank(int width, int height, int type) {
    return new PagePixels(1, new Box(0, 0, width, height), new BufferedImage(width, height, type));
  }

  @Test
  void aHugePictureIsReadWithinBounds() {
    PagePixels page = blank(16_000, 16_000, BufferedImage.TYPE_BYTE_BINARY);
    Graphics2D graphics = page.image().createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 400));
    graphics.drawString("Shorefall", 4000, 8000);
    graphics.dispose();
    assertEquals(List.of("Shorefall"), texts(OCR.words(page)));
  }

  @Test
  void itReadsAgainAfterItWasClosed() {
    Drawing drawing = new Drawing();
    drawing.text("4.20", 9, 40, 50);
    try (PictureWords once = new PictureWords(1)) {
      assertEquals(List.of("4.20"), texts(once.words(drawing.picture())));
      once.close();
      assertEquals(List.of("4.20"), texts(once.words(drawing.picture())));
    }
  }

  @Test
  void noThreadsCannotRead() {
    assertThrows(IllegalArgumentException.class, () -> new PictureWords(0));
  }
}
