package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Markers of one look in and at a plot, in the order of painting.
 *
 * @param size the larger side in points
 */
record MarkerSeries(List<Shape> shapes, InkStyle.Marker marker, int rgb, double size) {
  /** Equal shapes from which they are markers. */
  private static final int LEAST = 3;

  /** Equal shapes from which they can be a curve by themselves. */
  private static final int ROW = 5;

  /** Share of the plot's width a curve of markers spans at least. */
  private static final double WIDE = 0.3;

  /** Points by which the sides of equal markers may differ, by rounding. */
  private static final double SAME_SIZE = 0.15;

  /** Kinds of shapes beyond which a plot's shapes are letters. */
  private static final int MOST_KINDS = 300;

  private static boolean isSameKind(Shape a, Shape b) {
    return a.rgb() == b.rgb()
        && a.hollow() == b.hollow()
        && a.runs().size() == b.runs().size()
        && a.runs().get(0).size() == b.runs().get(0).size()
        && Math.abs(a.box().width() - b.box().width()) <= SAME_SIZE
        && Math.abs(a.box().height() - b.box().height()) <= SAME_SIZE
        && isSameOutline(a, b);
  }

  private static boolean isSameOutline(Shape a, Shape b) {
    List<Point> one = a.runs().get(0);
    List<Point> other = b.runs().get(0);
    for (int i = 0; i < one.size(); i++) {
      double dx = one.get(i).x() - a.centre().x() - other.get(i).x() + b.centre().x();
      double dy = one.get(i).y() - a.centre().y() - other.get(i).y() + b.centre().y();
      if (Math.hypot(dx, dy) > 2 * SAME_SIZE) {
        return false;
      }
    }
    return true;
  }

  static List<MarkerSeries> find(List<Shape> shapes, Box frame) {
    List<List<Shape>> kinds = new ArrayList<>();
    Box around = Geometry.grown(frame, frame.width() / 2);
    for (Shape shape : shapes) {
      if (Geometry.contains(around, shape.centre())) {
        addTo(kinds, shape);
      }
    }
    List<MarkerSeries> found = new ArrayList<>();
    for (List<Shape> same : kinds) {
      if (same.size() >= LEAST) {
        Shape first = same.get(0);
        double size = Math.max(first.box().width(), first.box().height());
        found.add(new MarkerSeries(same, Outline.marker(first), first.rgb(), size));
      }
    }
    return found;
  }

  private static void addTo(List<List<Shape>> kinds, Shape shape) {
    for (List<Shape> kind : kinds) {
      if (isSameKind(kind.get(0), shape)) {
        kind.add(shape);
        return;
      }
    }
    if (kinds.size() < MOST_KINDS) {
      kinds.add(new ArrayList<>(List.of(shape)));
    }
  }

  /** How many rows of markers could be curves by themselves. */
  static int rowsIn(List<Shape> shapes, Box frame) {
    int rows = 0;
    for (MarkerSeries series : find(shapes, frame)) {
      rows += series.isRow(frame) ? 1 : 0;
    }
    return rows;
  }

  /** The one of two series that has more markers. */
  MarkerSeries larger(MarkerSeries other) {
    return other.shapes.size() > shapes.size() ? other : this;
  }

  /** Whether its markers go on across the plot as a curve does, rather than as letters. */
  boolean isRow(Box frame) {
    List<Point> centres = centresIn(frame);
    if (centres.size() < ROW) {
      return false;
    }
    int onward = 0;
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    for (int i = 0; i < centres.size(); i++) {
      left = Math.min(left, centres.get(i).x());
      right = Math.max(right, centres.get(i).x());
      onward += i > 0 && centres.get(i).x() > centres.get(i - 1).x() ? 1 : 0;
    }
    return right - left >= WIDE * frame.width()
        && onward >= 0.7 * (centres.size() - 1)
        && marker != InkStyle.Marker.OTHER;
  }

  List<Point> centresIn(Box frame) {
    Box in = Geometry.grown(frame, 1);
    return shapes.stream().map(Shape::centre).filter(p -> Geometry.contains(in, p)).toList();
  }
}
