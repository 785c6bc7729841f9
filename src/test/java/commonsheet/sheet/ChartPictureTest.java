package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChartPictureTest {
  /** Pixels per point, at 200 dots per inch. */
  private static final double SCALE = 200 / 72.0;

  @TempDir Path folder;

  @Test
  void curvesLieOverTheFigureWhereTheyStand() throws SheetException, IOException {
    Path file = Drawn.sheet().text(120, 300, 10, "1C").save(folder);
    Box plot = new Box(100, 250, 200, 150);
    CurveMark sure = mark("c1", 280, false);
    CurveMark unsure = mark("c2", 380, true);
    byte[] png;
    try (OpenSheet open = OpenSheet.open(file)) {
      png = ChartPicture.draw(open, 1, plot, List.of(), List.of(sure, unsure), "page 1");
    }
    BufferedImage picture = ImageIO.read(new ByteArrayInputStream(png));
    assertEquals(1.0, coloured(picture, 280), 0.2);
    assertEquals(0.6, coloured(picture, 380), 0.2);
    assertEquals(0.0, coloured(picture, 330), 0.01);
    assertTrue(picture.getWidth() > 290 * SCALE, "there is room for the list");
  }

  private static CurveMark mark(String id, double y, boolean unsure) {
    return new CurveMark(List.of(new Point(100, y), new Point(300, y)), id, "1C", unsure);
  }

  /** Share of the row's pixels within the plot that have a colour. */
  private static double coloured(BufferedImage picture, double y) {
    int row = (int) Math.round((y - 205) * SCALE);
    int left = (int) (46 * SCALE);
    int right = (int) (244 * SCALE);
    int count = 0;
    for (int x = left; x < right; x++) {
      boolean any = false;
      for (int near = row - 1; near <= row + 1; near++) {
        int rgb = picture.getRGB(x, near);
        any |= Math.abs((rgb >> 16 & 0xFF) - (rgb & 0xFF)) > 40;
      }
      count += any ? 1 : 0;
    }
    return count / (double) (right - left);
  }
}
