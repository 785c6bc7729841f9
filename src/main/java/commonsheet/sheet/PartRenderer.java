package commonsheet.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Draws a part of a page in the pixels of a picture on it. */
final class PartRenderer {
  /** Longest side of what is drawn, in pixels: some 16 MB of memory at the usual proportions. */
  private static final int LONGEST = 3000;

  /** Coarsest that is drawn, in pixels to the point: 72 dots per inch. */
  private static final double COARSEST = 1;

  private final PDDocument document;
  private final SheetSettings settings;

  PartRenderer(PDDocument document, SheetSettings settings) {
    this.document = document;
    this.settings = settings;
  }

  PagePixels around(int number, PlacedPicture picture, double margin) throws IOException {
    PDPage page = document.getPage(number - 1);
    Ink ink = PageScanner.scan(page, document.getDocumentCatalog().getOCProperties(), settings);
    Frame shown = Frame.of(page);
    int degrees = WordBuilder.sideways(ink.glyphs(), shown);
    Frame upright = shown.turned(degrees);
    double scaleX = scale(picture.columns(), picture.box().width(), margin);
    double scaleY = scale(picture.rows(), picture.box().height(), margin);
    Span across =
        Span.of(picture.box().x(), picture.box().width(), margin, upright.width(), scaleX);
    Span down =
        Span.of(picture.box().y(), picture.box().height(), margin, upright.height(), scaleY);
    BufferedImage image = new BufferedImage(across.pixels, down.pixels, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setBackground(Color.WHITE);
    graphics.clearRect(0, 0, across.pixels, down.pixels);
    graphics.scale(scaleX, scaleY);
    graphics.translate(-across.from, -down.from);
    graphics.transform(turn(degrees / 90, shown));
    new PDFRenderer(document).renderPageToGraphics(number - 1, graphics, 1, 1);
    graphics.dispose();
    Box area = new Box(across.from, down.from, across.pixels / scaleX, down.pixels / scaleY);
    return new PagePixels(number, area, image);
  }

  /** Pixels to the point along one side. */
  private static double scale(int pixels, double points, double margin) {
    double own = Math.max(COARSEST, pixels / Math.max(1e-6, points));
    double whole = own * (points + 2 * margin);
    return own / Math.max(1, Math.ceil(whole / LONGEST));
  }

  /** From the page as displayed to the page set upright. */
  private static AffineTransform turn(int quarters, Frame shown) {
    AffineTransform turn = new AffineTransform();
    boolean onSide = quarters % 2 == 1;
    double width = onSide ? shown.height() : shown.width();
    double height = onSide ? shown.width() : shown.height();
    turn.translate(width / 2, height / 2);
    turn.quadrantRotate(quarters);
    turn.translate(-shown.width() / 2, -shown.height() / 2);
    return turn;
  }

  /** What is shown along one side: from where on the page, and how many pixels. */
  private record Span(double from, int pixels) {
    /** Begins and ends at whole pixels of the picture, within the page. */
    static Span of(double start, double length, double margin, double page, double scale) {
      int before = (int) Math.floor(Math.max(0, Math.min(margin, start)) * scale);
      double rest = Math.max(0, Math.min(margin, page - start - length));
      int after = (int) Math.floor(rest * scale);
      int own = Math.max(1, (int) Math.round(length * scale));
      return new Span(start - before / scale, before + own + after);
    }
  }
}
