package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A connected line as drawn, or the middle of a thin area that shows as one.
 *
 * @param points two or more
 * @param order place in the order of painting
 * @param box around the points
 * @param length along the points
 */
record Stroke(List<Point> points, Look look, int order, Box box, double length) {

  static Stroke of(List<Point> points, Look look, int order) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    double length = 0;
    Point before = points.get(0);
    for (Point p : points) {
      left = Math.min(left, p.x());
      right = Math.max(right, p.x());
      top = Math.min(top, p.y());
      bottom = Math.max(bottom, p.y());
      length += before.distance(p);
      before = p;
    }
    Box box = new Box(left, top, right - left, bottom - top);
    return new Stroke(List.copyOf(points), look, order, box, length);
  }

  Point first() {
    return points.get(0);
  }

  Point last() {
    return points.get(points.size() - 1);
  }

  /** The larger side of the box around it. */
  double extent() {
    return Math.max(box.width(), box.height());
  }

  boolean isClosed() {
    return points.size() > 3 && first().distance(last()) < Geometry.SAME_PLACE;
  }

  /** Whether every point lies on the straight line between the ends, within a distance. */
  boolean isStraight(double tolerance) {
    if (first().distance(last()) < Geometry.SAME_PLACE) {
      return extent() < Geometry.SAME_PLACE;
    }
    for (Point p : points) {
      if (Geometry.distanceToLine(p, first(), last()) > tolerance) {
        return false;
      }
    }
    return true;
  }

  Stroke reversed() {
    List<Point> back = new ArrayList<>(points);
    Collections.reverse(back);
    return new Stroke(List.copyOf(back), look, order, box, length);
  }

  Stroke withLook(Look other) {
    return new Stroke(points, other, order, box, length);
  }

  /** The direction in which it leaves its last point, of length 1; (0, 0) for a dot. */
  Point heading() {
    return Geometry.direction(Geometry.before(points, HEADING_OVER), last());
  }

  /** The direction in which it sets out from its first point, of length 1; (0, 0) for a dot. */
  Point setOut() {
    return Geometry.direction(first(), Geometry.after(points, HEADING_OVER));
  }

  /** Points of length over which the direction at an end is taken, so that jitter evens out. */
  private static final double HEADING_OVER = 1.5;
}
