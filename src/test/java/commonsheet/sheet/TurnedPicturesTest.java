package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.sheet.ocr.PictureWords;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages that are pictures of text drawn on its side or upside down; what is drawn is known. */
class TurnedPicturesTest {
  private static final String[] LINES = {
    "Nominal capacity 2600 mAh", "Nominal voltage 3.6 V", "Weight 46.5 g", "Height 65.2 mm max."
  };

  @TempDir Path folder;

  /** Its second page is a picture of the lines on 400 by 600 points, turned clockwise. */
  private Path sheet(int quarters) throws IOException {
    double scale = 200 / 72.0;
    BufferedImage image =
        new BufferedImage((int) (400 * scale), (int) (600 * scale), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
    graphics.setColor(Color.BLACK);
    graphics.scale(scale, scale);
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 10));
    for (int i = 0; i < LINES.length; i++) {
      graphics.drawString(LINES[i], 60, 100 + 30 * i);
    }
    graphics.dispose();
    boolean onSide = quarters % 2 == 1;
    Drawn drawn = new Drawn().page(onSide ? 600 : 400, onSide ? 400 : 600);
    PDImageXObject picture =
        LosslessFactory.createFromImage(drawn.document(), OpenSheet.turned(image, quarters));
    drawn.content().drawImage(picture, 0, 0, onSide ? 600 : 400, onSide ? 400 : 600);
    return drawn.save(folder);
  }

  private static Page read(Path file, Recogniser recogniser) throws SheetException {
    return new SheetReader(SheetSettings.defaults(), recogniser).readSheet(file).pages().get(1);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void everyWayUpReadsTheSame(int quarters) throws IOException, SheetException {
    Path file = sheet(quarters);
    try (PictureWords words = new PictureWords(2)) {
      Page page = read(file, words);
      assertEquals((4 - quarters) % 4 * 90, page.turned());
      assertEquals(400, page.width());
      assertEquals(
          List.of(LINES).stream().map(line -> line.replace(" ", "")).toList(),
          page.lines().stream().map(line -> line.text().replace(" ", "")).toList());
      Word mass = page.words().stream().filter(w -> w.text().startsWith("46.5")).toList().get(0);
      assertEquals(157, mass.box().centreY(), 2.5);
      assertMarkedOnInk(file, page, mass.box());
    }
  }

  /** Marks drawn on the page lie on what they mark. */
  private void assertMarkedOnInk(Path file, Page page, Box box) throws IOException, SheetException {
    Path png = folder.resolve("page.png");
    PagePicture.draw(file, 2, page.turned(), List.of(), png);
    BufferedImage picture = ImageIO.read(png.toFile());
    int dark = 0;
    for (int x = (int) (2 * box.x()); x < 2 * box.right(); x++) {
      for (int y = (int) (2 * box.y()); y < 2 * box.bottom(); y++) {
        dark += (picture.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
      }
    }
    assertTrue(dark > 50, dark + " dark pixels");
  }

  @Test
  void theTitleOfAnAxisTurnsNoPage() throws IOException, SheetException {
    Word title = new Word("Voltage", new Box(40, 200, 8, 40), 9, false, 90, 0, true, 0.99);
    Word label = new Word("Mass", new Box(60, 105, 30, 8), 10, false, 0, 0, true, 0.99);
    Page page = read(sheet(0), picture -> List.of(label, title));
    assertEquals(0, page.turned());
    assertEquals(List.of(label, title), page.words());
  }

  @Test
  void fourQuarterTurnsLeadBack() {
    Box box = new Box(30, 40, 50, 10);
    QuarterTurn turn = new QuarterTurn(1, 400, 600);
    assertEquals(new Box(0, 0, 600, 400), turn.page());
    assertEquals(new Box(550, 30, 10, 50), turn.place(box));
    Box back = turn.place(box);
    back = new QuarterTurn(3, 600, 400).place(back);
    assertEquals(box, back);
    assertEquals(box, new QuarterTurn(2, 400, 600).place(new QuarterTurn(2, 400, 600).place(box)));
  }
}
