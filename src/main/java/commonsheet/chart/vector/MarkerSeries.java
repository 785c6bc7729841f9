package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

  private record Kind(boolean hollow, int rgb, long width, long height, int runs, int points) {
    static Kind of(Shape shape) {
      int points = shape.runs().stream().mapToInt(List::size).sum();
      return new Kind(
          shape.hollow(),
          shape.rgb(),
          Math.round(shape.box().width() * 4),
          Math.round(shape.box().height() * 4),
          shape.runs().size(),
          points);
    }
  }

  static List<MarkerSeries> find(List<Shape> shapes, Box frame) {
    Map<Kind, List<Shape>> kinds = new LinkedHashMap<>();
    Box around = Geometry.grown(frame, frame.width() / 2);
    for (Shape shape : shapes) {
      if (Geometry.contains(around, shape.centre())) {
        kinds.computeIfAbsent(Kind.of(shape), kind -> new ArrayList<>()).add(shape);
      }
    }
    List<MarkerSeries> found = new ArrayList<>();
    for (List<Shape> same : kinds.values()) {
      if (same.size() >= LEAST) {
        Shape first = same.get(0);
        double size = Math.max(first.box().width(), first.box().height());
        found.add(new MarkerSeries(same, Outline.marker(first), first.rgb(), size));
      }
    }
    return found;
  }

  /** How many rows of markers could be curves by themselves. */
  static int rowsIn(List<Shape> shapes, Box frame) {
    int rows = 0;
    for (MarkerSeries series : find(shapes, frame)) {
      rows += series.isRow(frame) ? 1 : 0;
    }
    return rows;
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
