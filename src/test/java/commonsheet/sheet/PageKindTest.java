package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PageKindTest {
  @TempDir Path folder;

  @Test
  void scanIsAPicture() throws SheetException {
    assertEquals(PageKind.PICTURE, image(Drawn.sheet(), 0, 0, 400, 600).readPage(folder).kind());
  }

  @Test
  void nothingDrawnIsBlank() throws SheetException {
    assertEquals(PageKind.BLANK, Drawn.sheet().readPage(folder).kind());
  }

  @Test
  void smallLogoHidesNothing() throws SheetException {
    Drawn sheet = image(Drawn.sheet().text(50, 100, 9, "Mass 48 g"), 20, 20, 90, 40);
    assertEquals(PageKind.WORDS, sheet.readPage(folder).kind());
  }

  @Test
  void tilesOfOnePictureCountTogether() throws SheetException {
    Drawn sheet = Drawn.sheet().text(50, 60, 9, "Discharge curve");
    for (int row = 0; row < 20; row++) {
      for (int column = 0; column < 25; column++) {
        image(sheet, 50 + column * 10, 100 + row * 10, 10, 10);
      }
    }
    assertEquals(PageKind.PARTLY_PICTURE, sheet.readPage(folder).kind());
  }

  @Test
  void lettersTurnedIntoOutlinesAreAPicture() throws SheetException {
    Drawn sheet = Drawn.sheet();
    sheet.quietly(
        () -> {
          for (int row = 0; row < 30; row++) {
            for (int column = 0; column < 40; column++) {
              float x = 50 + column * 7;
              float y = 550 - row * 14;
              sheet.content().moveTo(x, y);
              sheet.content().curveTo(x + 2, y + 6, x + 4, y + 6, x + 5, y);
              sheet.content().fill();
            }
          }
        });
    assertEquals(PageKind.PICTURE, sheet.readPage(folder).kind());
  }

  @Test
  void outlinesBesideWordsHidePartOfThePage() throws SheetException {
    Drawn sheet = Drawn.sheet().text(50, 20, 9, "Specification");
    sheet.quietly(
        () -> {
          for (int row = 0; row < 20; row++) {
            for (int column = 0; column < 40; column++) {
              float x = 50 + column * 7;
              float y = 550 - row * 14;
              sheet.content().moveTo(x, y);
              sheet.content().curveTo(x + 2, y + 6, x + 4, y + 6, x + 5, y);
              sheet.content().fill();
            }
          }
        });
    assertEquals(PageKind.PARTLY_PICTURE, sheet.readPage(folder).kind());
  }

  private static Drawn image(Drawn sheet, double x, double y, double width, double height) {
    return sheet.quietly(
        () -> {
          PDImageXObject image =
              LosslessFactory.createFromImage(
                  sheet.document(), new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB));
          float below = sheet.document().getPage(0).getMediaBox().getHeight();
          sheet
              .content()
              .drawImage(
                  image, (float) x, (float) (below - y - height), (float) width, (float) height);
        });
  }
}
