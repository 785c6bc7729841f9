package commonsheet.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;

/**
 * A picture file (PNG, JPEG, TIFF) as a document of pages, so that a photographed or scanned sheet
 * goes the same way as a PDF that holds nothing but a scan.
 */
final class PictureFile {
  /**
   * Pixels that are kept of a picture; of a larger one only each second, third, … is. An A4 page
   * scanned at 600 dpi has 35 million.
   */
  private static final long MOST_PIXELS = 40_000_000;

  /**
   * Length of a page's longer side in points: A4. What files say of their resolution is often wrong
   * (screenshots, photographs), and nothing that is read depends on the true size.
   */
  private static final double LONGER_SIDE = 842;

  /** How the decoder of JPEG says that it filled up what is missing of a file. */
  private static final String CUT_SHORT = "Truncated File";

  private PictureFile() {}

  /** Whether the first bytes are those of a PNG, JPEG or TIFF file (by their specifications). */
  static boolean isOne(byte[] bytes) {
    return starts(bytes, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)
        || starts(bytes, 0xFF, 0xD8, 0xFF)
        || starts(bytes, 'I', 'I', 42, 0)
        || starts(bytes, 'M', 'M', 0, 42);
  }

  /**
   * The pictures of a file, a page each.
   *
   * @param mostPages pages beyond which nothing is decoded; the caller refuses such a file
   * @throws IOException if the file is damaged or of a variety that cannot be decoded
   */
  static PDDocument document(byte[] bytes, int mostPages) throws IOException {
    try (ImageInputStream stream =
        ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      ImageReader reader = decoder(stream);
      try {
        reader.setInput(stream);
        return document(reader, Orientation.of(bytes), mostPages);
      } catch (RuntimeException e) {
        // The decoders meet damaged files with whatever exception comes first.
        throw new IOException(e);
      } finally {
        reader.dispose();
      }
    }
  }

  /**
   * Java's own decoder: others on the class path, which come first in some runs, make up what is
   * missing of a damaged TIFF file.
   */
  private static ImageReader decoder(ImageInputStream stream) throws IOException {
    Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
    while (readers.hasNext()) {
      ImageReader reader = readers.next();
      if ("java.desktop".equals(reader.getClass().getModule().getName())) {
        return reader;
      }
      reader.dispose();
    }
    throw new IOException("no decoder");
  }

  private static PDDocument document(ImageReader reader, Orientation orientation, int mostPages)
      throws IOException {
    PDDocument document = new PDDocument();
    try {
      int pictures = reader.getNumImages(true);
      for (int i = 0; i < pictures; i++) {
        if (pictures > mostPages) {
          document.addPage(new PDPage());
        } else {
          addPage(document, orientation.applied(decoded(reader, i)));
        }
      }
      return document;
    } catch (IOException | RuntimeException e) {
      document.close();
      throw e;
    }
  }

  private static BufferedImage decoded(ImageReader reader, int index) throws IOException {
    long pixels = (long) reader.getWidth(index) * reader.getHeight(index);
    int step = (int) Math.ceil(Math.sqrt((double) pixels / MOST_PIXELS));
    ImageReadParam parameters = reader.getDefaultReadParam();
    parameters.setSourceSubsampling(Math.max(1, step), Math.max(1, step), 0, 0);
    List<String> warnings = new ArrayList<>();
    reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
    BufferedImage read = reader.read(index, parameters);
    if (warnings.stream().anyMatch(w -> w.contains(CUT_SHORT))) {
      throw new IOException("cut short");
    }
    BufferedImage plain =
        new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = plain.createGraphics();
    // What is transparent in a screenshot is shown on white.
    graphics.drawImage(read, 0, 0, Color.WHITE, null);
    graphics.dispose();
    return plain;
  }

  private static void addPage(PDDocument document, BufferedImage picture) throws IOException {
    double points = LONGER_SIDE / Math.max(picture.getWidth(), picture.getHeight());
    float width = (float) (picture.getWidth() * points);
    float height = (float) (picture.getHeight() * points);
    PDPage page = new PDPage(new PDRectangle(width, height));
    document.addPage(page);
    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
      content.drawImage(LosslessFactory.createFromImage(document, picture), 0, 0, width, height);
    }
  }

  private static boolean starts(byte[] bytes, int... expected) {
    for (int i = 0; i < expected.length; i++) {
      if (i >= bytes.length || (bytes[i] & 0xFF) != expected[i]) {
        return false;
      }
    }
    return true;
  }
}
