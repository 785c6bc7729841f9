package commonsheet.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** Takes from a page what it draws and puts it upright: words, rulings, curves, pictures. */
final class PageReader {
  /**
   * Longest side of a page in points: 200 inches, the limit of PDF 1.7 (ISO 32000-1, annex C.2).
   */
  private static final double LARGEST_PAGE = 14_400;

  /** No chart with labels that can be read is smaller than this, in points: 42 by 28 mm. */
  private static final double LEAST_CHART_WIDTH = 120;

  private static final double LEAST_CHART_HEIGHT = 80;

  /** The curves of a chart are as wide as this, in points, or rise and fall as well. */
  private static final double LONG_LINE = 90;

  private static final double SHORTEST_LINE = 60;
  private static final double LEAST_RISE = 8;

  /** Or they are drawn in at least as many pieces, slanted strokes or small filled shapes. */
  private static final int FEWEST_PIECES = 40;

  private static final int FEWEST_OUTLINES = 150;

  private PageReader() {}

  static PageContent read(
      PDPage page, int number, PDOptionalContentProperties layers, SheetSettings limits)
      throws IOException {
    PDRectangle size = page.getCropBox();
    if (Math.max(size.getWidth(), size.getHeight()) > LARGEST_PAGE) {
      throw new PageLimitException("is more than five metres long");
    }
    Ink ink = PageScanner.scan(page, layers, limits);
    Frame frame = upright(page, ink);
    WordBuilder.Written written = new WordBuilder(frame).build(ink.glyphs());
    Rulings rulings = rulings(ink, frame);
    boolean drawn = !(ink.strokes().isEmpty() && ink.fills().isEmpty() && ink.curves().isEmpty());
    PictureRegions pictures =
        PictureRegions.of(
            place(ink.images(), frame),
            place(ink.outlines(), frame),
            drawn,
            frame.width(),
            frame.height());
    return new PageContent(
        number,
        frame.width(),
        frame.height(),
        written.body(),
        written.aside(),
        rulings,
        place(ink.curves(), frame),
        pictures,
        figures(ink, frame),
        0);
  }

  private static List<Box> figures(Ink ink, Frame frame) {
    List<Box> figures = new ArrayList<>(PictureRegions.merge(place(ink.images(), frame)));
    List<Box> drawn = new ArrayList<>(place(ink.curves(), frame));
    boolean lines = drawn.size() >= FEWEST_PIECES || drawn.stream().anyMatch(PageReader::isLong);
    List<Box> outlines = place(ink.outlines(), frame);
    if (outlines.size() >= FEWEST_OUTLINES) {
      drawn.addAll(outlines);
      lines = true;
    }
    if (lines) {
      figures.add(Box.around(drawn));
    }
    return figures.stream().filter(PageReader::hasSizeOfChart).toList();
  }

  private static boolean isLong(Box curve) {
    return curve.width() >= LONG_LINE
        || (curve.width() >= SHORTEST_LINE && curve.height() >= LEAST_RISE);
  }

  private static boolean hasSizeOfChart(Box box) {
    return box.width() >= LEAST_CHART_WIDTH && box.height() >= LEAST_CHART_HEIGHT;
  }

  /** The frame in which most of the page's text reads left to right. */
  static Frame upright(PDPage page, Ink ink) {
    Frame frame = Frame.of(page);
    return frame.turned(WordBuilder.sideways(ink.glyphs(), frame));
  }

  private static Rulings rulings(Ink ink, Frame frame) {
    List<Ruling> pieces = new ArrayList<>();
    for (Box stroke : ink.strokes()) {
      pieces.add(Ruling.of(frame.place(stroke)));
    }
    return Rulings.merged(pieces);
  }

  private static List<Box> place(List<Box> own, Frame frame) {
    return own.stream().map(frame::place).toList();
  }
}
