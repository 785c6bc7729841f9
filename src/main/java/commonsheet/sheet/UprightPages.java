package commonsheet.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.rendering.PageDrawer;
import org.apache.pdfbox.rendering.PageDrawerParameters;

/**
 * Draws the pages of an open file upright, as {@link SheetReader} sees them, so that the boxes of
 * words lie over the words. Used by one thread at a time, as the library demands.
 */
final class UprightPages {
  private final PDDocument document;
  private final SheetSettings settings;
  private final PDFRenderer renderer;
  private final IntUnaryOperator turned;
  private final Map<Integer, Written> written = new HashMap<>();
  private long deadline;

  /**
   * What the written words of a page say.
   *
   * @param any whether there are some
   * @param quarters by which to turn the page for them
   */
  private record Written(boolean any, int quarters) {}

  /**
   * Pages of an open file.
   *
   * @param turned degrees clockwise by which a page without written words is turned to be read, see
   *     {@link Page#turned}; 0 where it is not known
   */
  UprightPages(PDDocument document, SheetSettings settings, IntUnaryOperator turned) {
    this.document = document;
    this.turned = turned;
    this.settings = settings;
    this.renderer = new TimedRenderer();
    renderer.setSubsamplingAllowed(true);
  }

  /**
   * How a page is displayed.
   *
   * @param page from 1
   * @throws PageLimitException if looking through it takes more than the limits allow
   */
  Frame frame(int page) throws IOException {
    return Frame.of(document.getPage(page - 1)).turned(quarters(page) * 90);
  }

  /**
   * A page as pixels.
   *
   * @param scale pixels per point
   */
  BufferedImage drawn(int page, double scale) throws IOException {
    int turn = quarters(page);
    start();
    return OpenSheet.turned(renderer.renderImage(page - 1, (float) scale, ImageType.RGB), turn);
  }

  /**
   * A part of a page as pixels.
   *
   * @param part of the page as displayed, in points
   * @param scale pixels per point
   */
  BufferedImage drawn(int page, Box part, double scale) throws IOException {
    Frame frame = frame(page);
    BufferedImage image =
        new BufferedImage(
            Math.max(1, (int) Math.round(part.width() * scale)),
            Math.max(1, (int) Math.round(part.height() * scale)),
            BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    try {
      graphics.setBackground(Color.WHITE);
      graphics.clearRect(0, 0, image.getWidth(), image.getHeight());
      graphics.translate(-part.x() * scale, -part.y() * scale);
      graphics.transform(turn(quarters(page), frame, scale));
      start();
      renderer.renderPageToGraphics(page - 1, graphics, (float) scale);
    } finally {
      graphics.dispose();
    }
    return image;
  }

  /** Clockwise by quarters, so that the page's top left corner is at the origin again. */
  private static AffineTransform turn(int quarters, Frame frame, double scale) {
    double width = frame.width() * scale;
    double height = frame.height() * scale;
    AffineTransform turn = new AffineTransform();
    switch (quarters) {
      case 1 -> turn.translate(width, 0);
      case 2 -> turn.translate(width, height);
      case 3 -> turn.translate(0, height);
      default -> turn.setToIdentity();
    }
    turn.quadrantRotate(quarters);
    return turn;
  }

  private int quarters(int page) throws IOException {
    Written words = written.get(page);
    if (words == null) {
      PDPage shown = document.getPage(page - 1);
      Ink ink = PageScanner.scan(shown, document.getDocumentCatalog().getOCProperties(), settings);
      words =
          new Written(
              !ink.glyphs().isEmpty(), WordBuilder.sideways(ink.glyphs(), Frame.of(shown)) / 90);
      written.put(page, words);
    }
    return words.any() ? words.quarters() : turned.applyAsInt(page) / 90;
  }

  private void start() {
    deadline = System.nanoTime() + settings.secondsPerPage() * 1_000_000_000L;
  }

  /** Gives up a page that takes too long, between two of its operators. */
  private final class TimedRenderer extends PDFRenderer {
    TimedRenderer() {
      super(UprightPages.this.document);
    }

    @Override
    protected PageDrawer createPageDrawer(PageDrawerParameters parameters) throws IOException {
      return new PageDrawer(parameters) {
        @Override
        protected void processOperator(Operator operator, List<COSBase> operands)
            throws IOException {
          if (System.nanoTime() - deadline > 0) {
            throw new PageLimitException(
                "takes more than " + settings.secondsPerPage() + " seconds to draw");
          }
          super.processOperator(operator, operands);
        }
      };
    }
  }
}
