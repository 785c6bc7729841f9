package commonsheet.sheet;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A file held open, so that its pages can be looked at as drawings and as pixels. */
public final class OpenSheet implements AutoCloseable {
  private static final double POINTS_PER_INCH = 72;

  private final SheetFile file;
  private final SheetSettings settings;

  private OpenSheet(SheetFile file, SheetSettings settings) {
    this.file = file;
    this.settings = settings;
  }

  /**
   * Opens a file within the default limits.
   *
   * @throws SheetException if it is no PDF, damaged, locked, without pages or beyond the limits
   */
  public static OpenSheet open(Path file) throws SheetException {
    SheetSettings settings = SheetSettings.defaults();
    return new OpenSheet(SheetFile.open(file, settings), settings);
  }

  /**
   * A page as pixels, upright as {@link SheetReader} sees it.
   *
   * @param page from 1
   * @param resolution in dots per inch
   * @throws SheetException if the page cannot be drawn
   */
  public PagePixels pixels(int page, double resolution) throws SheetException {
    PDDocument document = file.document();
    try {
      PDPage shown = document.getPage(page - 1);
      BufferedImage image =
          new PDFRenderer(document)
              .renderImage(page - 1, (float) (resolution / POINTS_PER_INCH), ImageType.RGB);
      Ink ink = PageScanner.scan(shown, document.getDocumentCatalog().getOCProperties(), settings);
      int quarters = WordBuilder.sideways(ink.glyphs(), Frame.of(shown)) / 90;
      BufferedImage upright = turned(image, quarters);
      double points = POINTS_PER_INCH / resolution;
      Box area = new Box(0, 0, upright.getWidth() * points, upright.getHeight() * points);
      return new PagePixels(page, area, upright);
    } catch (IOException e) {
      throw new SheetException(
          SheetException.Kind.DAMAGED,
          "Page " + page + " of " + file.name() + " cannot be drawn; fetch the file again.");
    }
  }

  /**
   * What a page draws as lines, areas and pictures, upright as {@link SheetReader} sees it.
   *
   * @param page from 1
   * @throws SheetException if the page cannot be read or draws more than the limits allow
   */
  public PageDrawing drawing(int page) throws SheetException {
    PDDocument document = file.document();
    try {
      return DrawingScanner.scan(
          document.getPage(page - 1),
          page,
          document.getDocumentCatalog().getOCProperties(),
          settings);
    } catch (PageLimitException e) {
      throw new SheetException(
          SheetException.Kind.TOO_LARGE,
          "Page "
              + page
              + " of "
              + file.name()
              + " "
              + e.getMessage()
              + ", which no datasheet needs; print it to a new PDF and read that.");
    } catch (IOException e) {
      throw new SheetException(
          SheetException.Kind.DAMAGED,
          "Page " + page + " of " + file.name() + " cannot be read; fetch the file again.");
    }
  }

  /**
   * The part of a page around a picture, in the picture's own pixels: each pixel of the picture is
   * one of the result, unless another lies over it. So nothing is lost of a chart that is stored as
   * a picture, and what the page draws over it and beside it is there too.
   *
   * @param page from 1
   * @param picture one of that page's {@link PageDrawing}
   * @param margin how much of the page around the picture to show, in points
   * @return at most some 3000 pixels wide and high; a finer picture is brought down to that
   * @throws SheetException if the page cannot be drawn
   */
  public PagePixels pixels(int page, PlacedPicture picture, double margin) throws SheetException {
    try {
      return new PartRenderer(file.document(), settings).around(page, picture, margin);
    } catch (IOException e) {
      throw new SheetException(
          SheetException.Kind.DAMAGED,
          "Page " + page + " of " + file.name() + " cannot be drawn; fetch the file again.");
    }
  }

  /** A picture turned clockwise by quarters of a full turn. */
  static BufferedImage turned(BufferedImage shown, int quarters) {
    if (quarters == 0) {
      return shown;
    }
    boolean onSide = quarters % 2 == 1;
    int width = onSide ? shown.getHeight() : shown.getWidth();
    int height = onSide ? shown.getWidth() : shown.getHeight();
    BufferedImage turned = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    AffineTransform turn = new AffineTransform();
    turn.translate(width / 2.0, height / 2.0);
    turn.quadrantRotate(quarters);
    turn.translate(-shown.getWidth() / 2.0, -shown.getHeight() / 2.0);
    Graphics2D graphics = turned.createGraphics();
    graphics.drawImage(shown, turn, null);
    graphics.dispose();
    return turned;
  }

  @Override
  public void close() {
    file.close();
  }
}
