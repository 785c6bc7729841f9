package commonsheet.chart;

import commonsheet.chart.bitmap.BitmapLines;
import commonsheet.chart.plot.PlotInk;
import commonsheet.chart.plot.Trace;
import commonsheet.chart.vector.VectorPlots;
import commonsheet.sheet.Box;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.PageDrawing;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.PlacedPicture;
import commonsheet.sheet.Point;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Follows the one line of a plot that a person points at, in the page's paths or else in its
 * pixels. What counts as a curve does not matter here: the person says it is one.
 */
public final class InkTracer {
  /** How far from the middle of a line a person may point, in points: a millimetre. */
  private static final double REACH = 3;

  /** A longer line a little farther from the place is meant rather than a scrap of ink at it. */
  private static final double SCRAP = 0.25;

  /** Fine enough for lines of half a point, in dots per inch. */
  private static final double RESOLUTION = 200;

  /** How much of the page around a picture is looked at with it, in points. */
  private static final double MARGIN = 6;

  private final List<Trace> paths;
  private final List<Trace> pixels;

  private InkTracer(List<Trace> paths, List<Trace> pixels) {
    this.paths = paths;
    this.pixels = pixels;
  }

  /** A line and what it is drawn in. */
  public record Found(Trace trace, PlotInk ink) {}

  /**
   * Looks at a plot once, for any number of places in it.
   *
   * @param open the sheet's file
   * @param page from 1
   * @param words of the page; a label can stand in the gap of a curve
   * @param frame the plot area, in points from the top left of the page
   * @throws SheetException if the page cannot be drawn
   */
  public static InkTracer of(OpenSheet open, int page, List<Word> words, Box frame)
      throws SheetException {
    PageDrawing drawing = open.drawing(page);
    return new InkTracer(
        VectorPlots.lines(drawing, words, frame),
        BitmapLines.in(picture(open, drawing, frame), frame));
  }

  private static PagePixels picture(OpenSheet open, PageDrawing drawing, Box frame)
      throws SheetException {
    Optional<PlacedPicture> around =
        drawing.pictures().stream()
            .filter(picture -> isAround(picture.box(), frame))
            .min(Comparator.comparingDouble(p -> p.box().width() * p.box().height()));
    return around.isPresent()
        ? open.pixels(drawing.page(), around.get(), MARGIN)
        : open.pixels(drawing.page(), RESOLUTION);
  }

  private static boolean isAround(Box picture, Box frame) {
    return picture.x() <= frame.x() + MARGIN
        && picture.y() <= frame.y() + MARGIN
        && picture.right() >= frame.right() - MARGIN
        && picture.bottom() >= frame.bottom() - MARGIN;
  }

  /** The line at a place; nothing where there is none within a millimetre. */
  public Optional<Found> at(Point place) {
    return nearest(paths, place)
        .map(trace -> new Found(trace, PlotInk.PATHS))
        .or(() -> nearest(pixels, place).map(trace -> new Found(trace, PlotInk.PIXELS)));
  }

  private static Optional<Trace> nearest(List<Trace> lines, Point place) {
    List<Trace> near = new ArrayList<>();
    for (Trace line : lines) {
      if (distance(line.points(), place) <= REACH) {
        near.add(line);
      }
    }
    double longest = near.stream().mapToDouble(line -> extent(line.points())).max().orElse(0);
    return near.stream()
        .filter(line -> extent(line.points()) >= SCRAP * longest)
        .min(Comparator.comparingDouble(line -> distance(line.points(), place)));
  }

  /** The larger side of the box around the points. */
  private static double extent(List<Point> points) {
    double left = points.stream().mapToDouble(Point::x).min().orElse(0);
    double right = points.stream().mapToDouble(Point::x).max().orElse(0);
    double top = points.stream().mapToDouble(Point::y).min().orElse(0);
    double bottom = points.stream().mapToDouble(Point::y).max().orElse(0);
    return Math.max(right - left, bottom - top);
  }

  private static double distance(List<Point> line, Point place) {
    double least = line.get(0).distance(place);
    for (int i = 1; i < line.size(); i++) {
      least = Math.min(least, toPiece(place, line.get(i - 1), line.get(i)));
    }
    return least;
  }

  private static double toPiece(Point p, Point a, Point b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double along = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
    double t = Math.max(0, Math.min(1, along));
    return p.distance(new Point(a.x() + t * dx, a.y() + t * dy));
  }
}
