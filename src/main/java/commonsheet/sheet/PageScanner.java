package commonsheet.sheet;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** Notes what a page draws as a reader of words needs it: characters, lines, areas, pictures. */
final class PageScanner extends PageWalker {
  private final InkCollector ink = new InkCollector();

  private PageScanner(PDPage page, PDOptionalContentProperties layers, SheetSettings limits) {
    super(page, layers, limits);
  }

  /**
   * Notes what a page draws, form fields and notes on it included.
   *
   * @param layers the file's layers, of which hidden ones are left out; null if it has none
   * @throws IOException if the content cannot be read
   * @throws PageLimitException if it asks for more than the limits allow
   */
  static Ink scan(PDPage page, PDOptionalContentProperties layers, SheetSettings limits)
      throws IOException {
    PageScanner scanner = new PageScanner(page, layers, limits);
    scanner.walk();
    return scanner.ink.ink();
  }

  @Override
  void glyph(Glyph glyph, Box open) {
    ink.glyph(glyph, open);
  }

  @Override
  void stroke(List<Subpath> path, Box open) {
    double width = transformWidth(getGraphicsState().getLineWidth());
    double light = Lightness.of(getGraphicsState().getStrokingColor());
    for (Subpath piece : path) {
      ink.stroke(piece, width, light, open);
    }
  }

  @Override
  void fill(List<Subpath> path, Box open) {
    double light = Lightness.of(getGraphicsState().getNonStrokingColor());
    for (Subpath piece : path) {
      ink.fill(piece, light, open);
    }
  }

  @Override
  void shade(Box open) {
    ink.shade(open);
  }

  @Override
  void picture(PDImage image, Box where, Box open) {
    ink.image(where, open);
  }
}
