package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures are read back by the Java platform's own reader of PNG. */
class SheetPicturesTest {
  @TempDir Path folder;

  private static BufferedImage picture(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  private static int dark(BufferedImage picture, Box box, double scale) {
    int dark = 0;
    for (int x = (int) (scale * box.x()); x < scale * box.right(); x++) {
      for (int y = (int) (scale * box.y()); y < scale * box.bottom(); y++) {
        dark += (picture.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
      }
    }
    return dark;
  }

  @Test
  void wordLiesWhereItsBoxIs() throws SheetException, IOException {
    Path file = Drawn.sheet().text(50, 100, 10, "Mass").save(folder);
    Box word = SheetReader.read(file).pages().get(0).words().get(0).box();
    try (SheetPictures pictures = SheetPictures.open(file, null)) {
      assertEquals(List.of(new PageSize(1, 400, 600)), pictures.sizes());
      BufferedImage picture = picture(pictures.png(1, 800));
      assertEquals(800, picture.getWidth());
      assertEquals(1200, picture.getHeight());
      int all = dark(picture, new Box(0, 0, 400, 600), 2);
      assertTrue(all > 50);
      assertEquals(all, dark(picture, word, 2));
    }
  }

  @Test
  void sidewaysPageIsShownAsItIsRead() throws SheetException, IOException {
    Drawn sheet = Drawn.sheet();
    for (int i = 0; i < 5; i++) {
      sheet.text(100 + 15 * i, 300, 10, PDType1Font.HELVETICA, 90, "Mass");
    }
    Path file = sheet.save(folder);
    List<Word> words = SheetReader.read(file).pages().get(0).words();
    try (SheetPictures pictures = SheetPictures.open(file, null)) {
      assertEquals(List.of(new PageSize(1, 600, 400)), pictures.sizes());
      BufferedImage picture = picture(pictures.png(1, 1200));
      BufferedImage part = picture(pictures.png(1, words.get(0).box(), 600));
      assertTrue(dark(picture, words.get(0).box(), 2) > 50);
      double scale = part.getWidth() / words.get(0).box().width();
      int inPart = dark(part, new Box(0, 0, words.get(0).box().width(), 9), scale);
      assertTrue(inPart > 2000, "a part is drawn upright, too: " + inPart);
    }
  }

  @Test
  void partIsSharperThanThePage() throws SheetException, IOException {
    Path file = Drawn.sheet().text(50, 100, 10, "Mass").save(folder);
    try (SheetPictures pictures = SheetPictures.open(file, null)) {
      BufferedImage part = picture(pictures.png(1, new Box(40, 80, 50, 30), 1000));
      assertEquals(1000, part.getWidth());
      assertEquals(600, part.getHeight());
      assertTrue(dark(part, new Box(0, 0, 50, 30), 20) > 5000);
    }
  }

  @Test
  void pictureIsNeverLargerThanMemoryAllows() throws SheetException, IOException {
    Path file = Drawn.sheet().text(50, 100, 10, "Mass").save(folder);
    try (SheetPictures pictures = SheetPictures.open(file, null)) {
      BufferedImage picture = picture(pictures.png(1, 1_000_000));
      assertTrue(picture.getWidth() * (long) picture.getHeight() <= 16_100_000);
    }
  }

  @Test
  void coloursAreThoseOfThePage() throws SheetException, IOException {
    Drawn sheet = Drawn.sheet();
    sheet.content().setNonStrokingColor(new java.awt.Color(200, 30, 90));
    sheet.content().addRect(100, 100, 200, 200);
    sheet.content().fill();
    Path file = sheet.save(folder);
    try (SheetPictures pictures = SheetPictures.open(file, null)) {
      BufferedImage picture = picture(pictures.png(1, 400));
      assertEquals(0xC81E5A, picture.getRGB(200, 400) & 0xFFFFFF);
      assertEquals(0xFFFFFF, picture.getRGB(20, 20) & 0xFFFFFF);
    }
  }

  @Test
  void pageAndPartThatAreNotThereAreSaid() throws SheetException {
    Path file = Drawn.sheet().text(50, 100, 10, "Mass").save(folder);
    try (SheetPictures pictures = SheetPictures.open(file, null)) {
      SheetException page = assertThrows(SheetException.class, () -> pictures.png(3, 100));
      assertTrue(page.getMessage().contains("no page 3; choose one from 1 to 1"));
      assertThrows(SheetException.class, () -> pictures.png(1, new Box(500, 0, 10, 10), 100));
    }
  }

  @Test
  void scanThatWasReadOnItsSideIsShownSo() throws SheetException, IOException {
    Drawn sheet = Drawn.sheet();
    sheet.content().addRect(100, 500, 30, 50);
    sheet.content().fill();
    Path file = sheet.save(folder);
    KeptWords kept = new KeptWords(new KeptFiles(folder.resolve("kept"), 1 << 20), () -> "test");
    try (SheetPictures pictures = SheetPictures.open(file, kept);
        SheetFile open = SheetFile.open(file, SheetSettings.defaults())) {
      assertEquals(List.of(new PageSize(1, 400, 600)), pictures.sizes());
      PageContent upright =
          PageReader.read(open.document().getPage(0), 1, null, SheetSettings.defaults());
      kept.keep(pictures.sha256(), upright.turnedBy(1));
      assertEquals(List.of(new PageSize(1, 600, 400)), pictures.sizes());
      BufferedImage picture = picture(pictures.png(1, 600));
      // The rectangle stood 50 points below the top and 100 from the left; clockwise, its lower
      // left corner comes to be its upper left one.
      assertEquals(0x000000, picture.getRGB(600 - 75, 115) & 0xFFFFFF);
      assertEquals(0xFFFFFF, picture.getRGB(115, 75) & 0xFFFFFF);
    }
  }
}
