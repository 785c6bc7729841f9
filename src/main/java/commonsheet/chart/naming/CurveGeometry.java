package commonsheet.chart.naming;

import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.List;

/** Where curves run, on the page. */
public final class CurveGeometry {
  /** Places across which two curves are compared. */
  private static final int PLACES = 24;

  private CurveGeometry() {}

  /** Distance of a place from a curve, in points. */
  public static double distance(Trace trace, Point place) {
    List<Point> points = trace.points();
    double least = Double.MAX_VALUE;
    for (int i = 1; i < points.size(); i++) {
      least = Math.min(least, distance(points.get(i - 1), points.get(i), place));
    }
    return least;
  }

  /** Distance of a box from a curve; 0 where the curve runs through it. */
  public static double distance(Trace trace, Box box) {
    double least = Double.MAX_VALUE;
    List<Point> points = trace.points();
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      double step = Math.max(0.5, box.height() / 4);
      int pieces = (int) Math.min(2000, Math.ceil(from.distance(to) / step));
      for (int k = 0; k <= pieces; k++) {
        double share = pieces == 0 ? 0 : (double) k / pieces;
        Point at =
            new Point(
                from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
        least = Math.min(least, CurveLabels.distance(box, at));
      }
    }
    return least;
  }

  /** Distance of a place from the straight piece between two others. */
  public static double distance(Point from, Point to, Point place) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = dx * dx + dy * dy;
    double along =
        length == 0
            ? 0
            : Math.max(
                0,
                Math.min(1, ((place.x() - from.x()) * dx + (place.y() - from.y()) * dy) / length));
    return place.distance(new Point(from.x() + along * dx, from.y() + along * dy));
  }

  /** Height of a curve on the page at a place across it; NaN beyond its ends. */
  public static double heightAt(Trace trace, double x) {
    List<Point> points = trace.points();
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      if (from.x() <= x && x <= to.x() && to.x() > from.x()) {
        return from.y() + (x - from.x()) / (to.x() - from.x()) * (to.y() - from.y());
      }
    }
    return Double.NaN;
  }

  /**
   * How much higher on the page one curve runs than another, over the middle of what they share
   * across, in points; where they share little, by where they end.
   */
  public static double above(Trace one, Trace other) {
    double left = Math.max(first(one).x(), first(other).x());
    double right = Math.min(last(one).x(), last(other).x());
    double sum = 0;
    int count = 0;
    for (int i = 0; i < PLACES; i++) {
      double x = left + (right - left) * (0.1 + 0.8 * i / (PLACES - 1));
      double difference = heightAt(other, x) - heightAt(one, x);
      if (!Double.isNaN(difference)) {
        sum += difference;
        count++;
      }
    }
    return count < PLACES / 2 ? last(one).x() - last(other).x() : sum / count;
  }

  public static Point first(Trace trace) {
    return trace.points().get(0);
  }

  public static Point last(Trace trace) {
    return trace.points().get(trace.points().size() - 1);
  }
}
