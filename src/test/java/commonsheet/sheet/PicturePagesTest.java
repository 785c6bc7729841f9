package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages on which nothing is written; what is recognised on them is told by the test. */
class PicturePagesTest {
  @TempDir Path folder;

  private static final Word LABEL = word("Mass", 60, 105, 0.99);

  private static Word word(String text, double x, double y, double confidence) {
    return new Word(text, new Box(x, y, 30, 8), 10, false, 0, 0, true, confidence);
  }

  /** A page of 400 by 600 points that is a picture of a table of two cells, turned as scans are. */
  private Path scan(double degrees) throws IOException {
    BufferedImage image = new BufferedImage(1111, 1667, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.rotate(Math.toRadians(degrees), 555, 833);
    graphics.setColor(Color.BLACK);
    for (int y : new int[] {270, 350, 1200}) {
      graphics.fillRect(140, y, 830, 3);
    }
    for (int x : new int[] {140, 550, 967}) {
      graphics.fillRect(x, 270, 3, 933);
    }
    graphics.dispose();
    Drawn drawn = Drawn.sheet();
    PDImageXObject picture = LosslessFactory.createFromImage(drawn.document(), image);
    drawn.content().drawImage(picture, 0, 0, 400, 600);
    return drawn.save(folder);
  }

  private static Page read(Path file, List<List<Word>> readings) throws SheetException {
    List<List<Word>> left = new ArrayList<>(readings);
    Recogniser recogniser = picture -> left.remove(0);
    return new SheetReader(SheetSettings.defaults(), recogniser).readSheet(file).pages().get(0);
  }

  @Test
  void theCellsOfATurnedScanAreFoundByItsRulings() throws IOException, SheetException {
    Word value = word("48.5g", 220, 105, 0.99);
    Page page = read(scan(0.8), List.of(List.of(LABEL, value), List.of(LABEL, value)));
    assertEquals(1, page.tables().size());
    Table table = page.tables().get(0);
    assertEquals(4, table.cells().size());
    assertTrue(page.words().stream().anyMatch(word -> word.box().equals(value.box())));
  }

  /** A written line above a picture of 200 by 100 points that begins 100 points from the left. */
  private Path pastedPicture() throws IOException {
    BufferedImage image = new BufferedImage(600, 300, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, 600, 300);
    graphics.setColor(Color.BLACK);
    for (int y : new int[] {6, 150, 291}) {
      graphics.fillRect(6, y, 588, 3);
    }
    for (int x : new int[] {6, 300, 591}) {
      graphics.fillRect(x, 6, 3, 288);
    }
    graphics.dispose();
    Drawn drawn = Drawn.sheet().text(60, 60, 9, "Outline");
    PDImageXObject picture = LosslessFactory.createFromImage(drawn.document(), image);
    drawn.content().drawImage(picture, 100, 600 - 300, 200, 100);
    return drawn.save(folder);
  }

  @Test
  void aTablePastedAsAPictureIsReadBesideTheWrittenWords() throws IOException, SheetException {
    Word label = word("Width", 120, 215, 0.99);
    Word value = word("40.0mm", 220, 215, 0.99);
    Page page = read(pastedPicture(), List.of(List.of(label, value), List.of(label, value)));
    assertEquals(PageKind.PARTLY_PICTURE, page.kind());
    assertEquals(
        List.of("Outline", "Width", "40.0mm"), page.words().stream().map(Word::text).toList());
    assertEquals(List.of(false, true, true), page.words().stream().map(Word::recognised).toList());
    assertEquals(4, page.tables().get(0).cells().size());
  }

  @Test
  void whatIsWrittenOverAPictureIsNotReadTwice() throws IOException, SheetException {
    Word seen = word("Outline", 62, 52, 0.99);
    Page page = read(pastedPicture(), List.of(List.of(seen), List.of(seen)));
    assertEquals(List.of(false), page.words().stream().map(Word::recognised).toList());
  }

  @Test
  void aNumberThatOneReadingOfTwoHasIsDoubted() throws IOException, SheetException {
    Word first = word("48.5g", 220, 105, 0.99);
    Word second = word("485g", 220, 105, 0.99);
    Page page = read(scan(0), List.of(List.of(LABEL, first), List.of(LABEL, second)));
    Word kept = page.words().get(1);
    assertEquals("48.5g", kept.text());
    assertEquals(0.5, kept.confidence());
    assertEquals(0.99, page.words().get(0).confidence(), 0.01);
  }

  @Test
  void whatBothReadingsHaveIsSurerThanEither() throws IOException, SheetException {
    List<Word> first = List.of(LABEL, word("25\u2103", 220, 105, 0.7));
    List<Word> second = List.of(LABEL, word("25\u00B0C", 220, 105, 0.8));
    Page page = read(scan(0), List.of(first, second));
    assertEquals(1 - 0.3 * 0.2, page.words().get(1).confidence(), 1e-9);
  }

  @Test
  void partsOfTheOtherReadingConfirmAsWell() throws IOException, SheetException {
    Word whole = new Word("0~45\u2103", new Box(220, 105, 60, 8), 10, false, 0, 0, true, 0.95);
    List<Word> parts =
        List.of(
            new Word("0~", new Box(220, 105, 25, 8), 10, false, 0, 0, true, 0.95),
            new Word("45\u00B0C", new Box(250, 105, 30, 8), 10, false, 0, 0, true, 0.95));
    Page page = read(scan(0), List.of(List.of(whole), parts));
    assertEquals(1 - 0.05 * 0.05, page.words().get(0).confidence(), 1e-9);
  }

  @Test
  void theFiveHourCapacityTakenForLettersIsMendedAndDoubted() throws IOException, SheetException {
    Word slip = word("0.2CsA,", 220, 105, 0.95);
    Page page = read(scan(0), List.of(List.of(slip), List.of(slip)));
    assertEquals("0.2C5A,", page.words().get(0).text());
    assertEquals(0.5, page.words().get(0).confidence());
  }

  @Test
  void aWrittenPageIsNotLookedAt() throws SheetException {
    Path file = Drawn.sheet().text(60, 100, 10, "Mass 48.5 g").save(folder);
    assertEquals("Mass", read(file, List.of()).words().get(0).text());
  }

  @Test
  void withoutARecogniserThePageStaysAPicture() throws IOException, SheetException {
    Page page = SheetReader.read(scan(0)).pages().get(0);
    assertEquals(PageKind.PICTURE, page.kind());
  }

  @Test
  void whereNothingCanBeRecognisedThePageStaysAPicture() throws IOException, SheetException {
    Recogniser none =
        picture -> {
          throw new RecogniserException("this machine has none", null);
        };
    Sheet sheet = new SheetReader(SheetSettings.defaults(), none).readSheet(scan(0));
    assertEquals(PageKind.PICTURE, sheet.pages().get(0).kind());
  }
}
