package commonsheet.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.PDLineDashPattern;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;

/** Notes what a page draws as paths, with their exact course and look, and where pictures are. */
final class DrawingScanner extends PageWalker {
  /** Width in points of a line that asks for the thinnest a device can draw. */
  private static final double HAIRLINE = 0.1;

  private final List<Glyph> glyphs = new ArrayList<>();
  private final List<DrawnPath> paths = new ArrayList<>();
  private final List<PlacedPicture> pictures = new ArrayList<>();
  private final Colours colours = new Colours();
  private int order;

  private DrawingScanner(PDPage page, PDOptionalContentProperties layers, SheetSettings limits) {
    super(page, layers, limits);
  }

  /**
   * What a page draws, upright as {@link SheetReader} sees it.
   *
   * @param number of the page, from 1
   * @param layers the file's layers, of which hidden ones are left out; null if it has none
   * @throws IOException if the content cannot be read
   * @throws PageLimitException if it asks for more than the limits allow
   */
  static PageDrawing scan(
      PDPage page, int number, PDOptionalContentProperties layers, SheetSettings limits)
      throws IOException {
    DrawingScanner scanner = new DrawingScanner(page, layers, limits);
    scanner.walk();
    Frame own = Frame.of(page);
    Frame frame = own.turned(WordBuilder.sideways(scanner.glyphs, own));
    return new PageDrawing(
        number,
        frame.width(),
        frame.height(),
        scanner.paths.stream().map(path -> place(path, frame)).toList(),
        scanner.pictures.stream().map(picture -> place(picture, frame)).toList());
  }

  private static DrawnPath place(DrawnPath path, Frame frame) {
    List<List<Point>> runs = new ArrayList<>();
    for (List<Point> run : path.runs()) {
      List<Point> placed = new ArrayList<>(run.size());
      for (Point p : run) {
        placed.add(new Point(frame.x(p.x(), p.y()), frame.y(p.x(), p.y())));
      }
      runs.add(placed);
    }
    return new DrawnPath(runs, path.filled(), path.rgb(), path.width(), path.dash(), path.order());
  }

  private static PlacedPicture place(PlacedPicture picture, Frame frame) {
    return new PlacedPicture(
        frame.place(picture.box()), picture.columns(), picture.rows(), picture.order());
  }

  @Override
  void bend(Subpath to, double x1, double y1, double x2, double y2, double x3, double y3) {
    Flattening.curveTo(to, x1, y1, x2, y2, x3, y3);
  }

  @Override
  void glyph(Glyph glyph, Box open) {
    order++;
    boolean outside = !open.contains(glyph.x(), glyph.y());
    if (!glyph.isSpace() && !outside) {
      glyphs.add(glyph);
    }
  }

  @Override
  void stroke(List<Subpath> path, Box open) {
    PDGraphicsState state = getGraphicsState();
    List<List<Point>> runs = new ArrayList<>();
    for (Subpath piece : path) {
      if (piece.points() > 1) {
        runs.addAll(Clipping.cutLine(piece, open));
      }
    }
    double width = Math.max(HAIRLINE, transformWidth(state.getLineWidth()));
    add(runs, false, state.getStrokingColor(), state.getAlphaConstant(), width, dash(state));
  }

  private List<Double> dash(PDGraphicsState state) {
    PDLineDashPattern pattern = state.getLineDashPattern();
    float[] lengths = pattern == null ? new float[0] : pattern.getDashArray();
    List<Double> dash = new ArrayList<>();
    double longest = 0;
    for (float length : lengths) {
      double shown = transformWidth(length);
      dash.add(shown);
      longest = Math.max(longest, shown);
    }
    return longest > 0 ? dash : List.of();
  }

  @Override
  void fill(List<Subpath> path, Box open) {
    PDGraphicsState state = getGraphicsState();
    List<List<Point>> runs = new ArrayList<>();
    for (Subpath piece : path) {
      if (piece.points() > 1) {
        piece.close();
        List<Point> area = Clipping.cutArea(piece, open);
        if (area.size() > 1) {
          runs.add(area);
        }
      }
    }
    double opacity = state.getNonStrokeAlphaConstant();
    add(runs, true, state.getNonStrokingColor(), opacity, 0, List.of());
  }

  private void add(
      List<List<Point>> runs,
      boolean filled,
      PDColor color,
      double opacity,
      double width,
      List<Double> dash) {
    order++;
    if (!runs.isEmpty()) {
      int rgb = Colours.onPaper(colours.rgb(color), opacity);
      paths.add(new DrawnPath(runs, filled, rgb, width, dash, order));
    }
  }

  @Override
  void shade(Box open) {
    order++;
  }

  @Override
  void picture(PDImage image, Box where, Box open) {
    order++;
    Box seen = Clipping.common(where, open);
    if (seen.width() > 0 && seen.height() > 0) {
      pictures.add(new PlacedPicture(seen, image.getWidth(), image.getHeight(), order));
    }
  }
}
