package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagePictureTest {
  @TempDir Path folder;

  @Test
  void markIsDrawnWhereItStands() throws SheetException, IOException {
    Path file = Drawn.sheet().text(50, 100, 10, "Mass").save(folder);
    Path png = folder.resolve("page.png");
    Mark mark = new Mark(new Box(200, 300, 50, 20), "", Mark.Tone.READ);
    PagePicture.draw(file, 1, 0, List.of(mark), png);
    BufferedImage picture = ImageIO.read(png.toFile());
    assertEquals(800, picture.getWidth());
    assertEquals(Mark.Tone.READ.rgb(), picture.getRGB(450, 600) & 0xFFFFFF);
    assertEquals(0xFFFFFF, picture.getRGB(600, 900) & 0xFFFFFF);
  }

  @Test
  void sidewaysPageIsDrawnAsItIsRead() throws SheetException, IOException {
    Drawn sheet = Drawn.sheet();
    for (int i = 0; i < 5; i++) {
      sheet.text(100 + 15 * i, 300, 10, PDType1Font.HELVETICA, 90, "Mass");
    }
    Path file = sheet.save(folder);
    Path png = folder.resolve("page.png");
    Box word = SheetReader.read(file).pages().get(0).words().get(0).box();
    PagePicture.draw(file, 1, 0, List.of(), png);
    BufferedImage picture = ImageIO.read(png.toFile());
    assertEquals(1200, picture.getWidth());
    int dark = 0;
    for (int x = (int) (2 * word.x()); x < 2 * word.right(); x++) {
      for (int y = (int) (2 * word.y()); y < 2 * word.bottom(); y++) {
        dark += (picture.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
      }
    }
    assertEquals(true, dark > 50);
  }

  @Test
  void pageThatIsNotThere() {
    Path file = Drawn.sheet().text(50, 100, 10, "Mass").save(folder);
    SheetException refused =
        assertThrows(
            SheetException.class,
            () -> PagePicture.draw(file, 2, 0, List.of(), folder.resolve("page.png")));
    assertEquals("sheet.pdf has no page 2; choose one from 1 to 1.", refused.getMessage());
  }
}
