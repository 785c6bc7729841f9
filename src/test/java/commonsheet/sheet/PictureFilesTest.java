package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures given as sheets become pages like those of a scan. */
class PictureFilesTest {
  private static final int WIDTH = 600;
  private static final int HEIGHT = 900;

  @TempDir Path folder;

  /** White, with a black square in the top left corner. */
  private static BufferedImage marked(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setColor(Color.BLACK);
    graphics.fillRect(0, 0, width / 10, width / 10);
    graphics.dispose();
    return image;
  }

  private static byte[] encoded(BufferedImage image, String format) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    assertTrue(ImageIO.write(image, format, bytes));
    return bytes.toByteArray();
  }

  private Path file(byte[] bytes) throws IOException {
    return Files.write(folder.resolve("sheet"), bytes);
  }

  /** The pages of a file and, into {@code seen}, what a recogniser was shown of them. */
  private static List<Page> read(Path file, List<PagePixels> seen) throws SheetException {
    Recogniser recogniser =
        picture -> {
          seen.add(picture);
          return List.of();
        };
    return new SheetReader(SheetSettings.defaults(), recogniser).readSheet(file).pages();
  }

  private static boolean isDark(PagePixels picture, double x, double y) {
    BufferedImage image = picture.image();
    int rgb = image.getRGB((int) (x * (image.getWidth() - 1)), (int) (y * (image.getHeight() - 1)));
    return (rgb & 0xFF) < 128;
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg", "tiff"})
  void aPictureIsAPage(String format) throws IOException, SheetException {
    List<PagePixels> seen = new ArrayList<>();
    List<Page> pages = read(file(encoded(marked(WIDTH, HEIGHT), format)), seen);
    assertEquals(1, pages.size());
    assertEquals(PageKind.PICTURE, pages.get(0).kind());
    assertEquals(842, pages.get(0).height(), 0.5);
    assertEquals(842.0 * WIDTH / HEIGHT, pages.get(0).width(), 0.5);
    assertTrue(isDark(seen.get(0), 0.03, 0.03));
  }

  @Test
  void eachPictureOfATiffIsAPage() throws IOException, SheetException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(stream);
      writer.prepareWriteSequence(null);
      for (int i = 0; i < 3; i++) {
        writer.writeToSequence(new javax.imageio.IIOImage(marked(WIDTH, HEIGHT), null, null), null);
      }
      writer.endWriteSequence();
    }
    writer.dispose();
    assertEquals(3, read(file(bytes.toByteArray()), new ArrayList<>()).size());
  }

  /**
   * Where the stored picture's top left corner is seen, by the value of the orientation (Exif 2.3,
   * tag 0x0112: which sides of the scene row 0 and column 0 are).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 0.03, 0.03", "2, 0.97, 0.03", "3, 0.97, 0.97", "4, 0.03, 0.97",
    "5, 0.03, 0.03", "6, 0.97, 0.03", "7, 0.97, 0.97", "8, 0.03, 0.97"
  })
  void aPhotographIsTurnedAsTheCameraSays(int orientation, double x, double y)
      throws IOException, SheetException {
    List<PagePixels> seen = new ArrayList<>();
    byte[] jpeg = encoded(marked(WIDTH, HEIGHT), "jpeg");
    Page page = read(file(withOrientation(jpeg, orientation)), seen).get(0);
    assertEquals(orientation >= 5, page.width() > page.height());
    assertTrue(isDark(seen.get(0), x, y));
  }

  /** Puts an Exif segment with one entry behind the start of a JPEG file. */
  private static byte[] withOrientation(byte[] jpeg, int value) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, 2);
    out.write(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, 34});
    out.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    out.write(new byte[] {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1});
    out.write(new byte[] {0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) value, 0, 0});
    out.write(new byte[] {0, 0, 0, 0});
    out.write(jpeg, 2, jpeg.length - 2);
    return out.toByteArray();
  }

  @Test
  void aHugePictureIsBroughtDown() throws IOException, SheetException {
    BufferedImage huge = new BufferedImage(20_000, 20_000, BufferedImage.TYPE_BYTE_BINARY);
    List<PagePixels> seen = new ArrayList<>();
    assertEquals(1, read(file(encoded(huge, "png")), seen).size());
    assertTrue(seen.get(0).image().getWidth() < 3000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg", "tiff"})
  void aPictureCutShortIsRefused(String format) throws IOException {
    byte[] whole = encoded(noise(), format);
    Path half = file(Arrays.copyOf(whole, whole.length / 2));
    SheetException refused =
        assertThrows(SheetException.class, () -> read(half, new ArrayList<>()));
    assertEquals(SheetException.Kind.DAMAGED, refused.kind());
    assertTrue(refused.getMessage().contains("save it anew"), refused.getMessage());
  }

  /** So that half of the file is half of the picture in every format. */
  private static BufferedImage noise() {
    BufferedImage image = new BufferedImage(300, 300, BufferedImage.TYPE_INT_RGB);
    java.util.Random random = new java.util.Random(7);
    for (int y = 0; y < 300; y++) {
      for (int x = 0; x < 300; x++) {
        image.setRGB(x, y, random.nextInt(0x1000000));
      }
    }
    return image;
  }
}
