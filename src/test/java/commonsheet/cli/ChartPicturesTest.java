package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Review;
import commonsheet.record.Source;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChartPicturesTest {
  @TempDir private Path folder;

  private static CellRecord record(String id) {
    return new CellRecord(
        CellRecord.SCHEMA,
        id,
        new Cell(null, null, null, null, null, null, null),
        new Source(null, null, null, null, "a.pdf", "0".repeat(64), 1, null, null),
        List.of(),
        List.of(),
        List.of(),
        Review.DRAFT);
  }

  private static byte[] png() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(3, 2, BufferedImage.TYPE_INT_RGB), "png", bytes);
    return bytes.toByteArray();
  }

  private Path file(String name, byte[] content) throws IOException {
    return Files.write(folder.resolve(name), content);
  }

  @Test
  void onlyOwnPicturesOfTheSameRecordGoWhenTheyAreNotDrawnAgain() throws Exception {
    Path old = file("cell-a-page-2-chart-1.png", PictureMark.on(png(), "cell-a"));
    Path ofSomebody = file("cell-a-page-2-chart-2.png", png());
    Path ofAnother = file("cell-b-page-2-chart-1.png", PictureMark.on(png(), "cell-b"));
    Path renamed = file("cell-a-page-3-chart-1.png", PictureMark.on(png(), "cell-b"));
    Path broken = file("cell-a-page-4-chart-1.png", new byte[] {1, 2, 3});
    ChartPictures.draw(folder, record("cell-a"), List.of(), folder, 1);
    assertTrue(Files.exists(old), "only page 1 was looked at");
    ChartPictures.draw(folder, record("cell-a"), List.of(), folder, null);
    assertFalse(Files.exists(old));
    for (Path kept : List.of(ofSomebody, ofAnother, renamed, broken)) {
      assertTrue(Files.exists(kept), kept.toString());
    }
  }

  /** The reader of the Java platform, which proves check sums of chunks. */
  @Test
  void aMarkedPictureIsStillOne() throws IOException {
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(PictureMark.on(png(), "cell-a")));
    assertNotNull(image);
    assertEquals(3, image.getWidth());
  }
}
