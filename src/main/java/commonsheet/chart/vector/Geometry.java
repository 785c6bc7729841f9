package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.List;

/** Distances and directions on the page, in points. */
final class Geometry {
  /** Points within which two ends are the same place: files round to a hundredth. */
  static final double SAME_PLACE = 0.03;

  private Geometry() {}

  static double distanceToLine(Point p, Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = Math.hypot(dx, dy);
    if (length == 0) {
      return p.distance(from);
    }
    return Math.abs((p.x() - from.x()) * dy - (p.y() - from.y()) * dx) / length;
  }

  static double distanceToSegment(Point p, Point from, Point to) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double square = dx * dx + dy * dy;
    double t = square == 0 ? 0 : ((p.x() - from.x()) * dx + (p.y() - from.y()) * dy) / square;
    double s = Math.max(0, Math.min(1, t));
    return Math.hypot(p.x() - from.x() - s * dx, p.y() - from.y() - s * dy);
  }

  /** Whether a place lies on a line through points, within a distance. */
  static boolean isOn(Point p, List<Point> line, double within) {
    for (int i = 1; i < line.size(); i++) {
      Point a = line.get(i - 1);
      Point b = line.get(i);
      boolean beside =
          Math.max(a.x(), b.x()) < p.x() - within
              || Math.min(a.x(), b.x()) > p.x() + within
              || Math.max(a.y(), b.y()) < p.y() - within
              || Math.min(a.y(), b.y()) > p.y() + within;
      if (!beside && distanceToSegment(p, a, b) <= within) {
        return true;
      }
    }
    return false;
  }

  /** Direction from one place to another, of length 1; (0, 0) if they are the same. */
  static Point direction(Point from, Point to) {
    double length = from.distance(to);
    if (length == 0) {
      return new Point(0, 0);
    }
    return new Point((to.x() - from.x()) / length, (to.y() - from.y()) / length);
  }

  /** Cosine of the angle between two directions of length 1. */
  static double cosine(Point a, Point b) {
    return a.x() * b.x() + a.y() * b.y();
  }

  /** The last point of a line that lies at least a length before its end. */
  static Point before(List<Point> line, double length) {
    Point end = line.get(line.size() - 1);
    int i = line.size() - 2;
    while (i > 0 && line.get(i).distance(end) < length) {
      i--;
    }
    return line.get(i);
  }

  /** The first point of a line that lies at least a length after its beginning. */
  static Point after(List<Point> line, double length) {
    Point start = line.get(0);
    int i = 1;
    while (i < line.size() - 1 && line.get(i).distance(start) < length) {
      i++;
    }
    return line.get(i);
  }

  static Box grown(Box box, double by) {
    return new Box(box.x() - by, box.y() - by, box.width() + 2 * by, box.height() + 2 * by);
  }

  static boolean contains(Box box, Point p) {
    return box.contains(p.x(), p.y());
  }

  static boolean contains(Box outer, Box inner) {
    return inner.x() >= outer.x()
        && inner.right() <= outer.right()
        && inner.y() >= outer.y()
        && inner.bottom() <= outer.bottom();
  }

  static boolean touch(Box a, Box b) {
    return a.x() <= b.right() && b.x() <= a.right() && a.y() <= b.bottom() && b.y() <= a.bottom();
  }

  static Point centre(Box box) {
    return new Point(box.centreX(), box.centreY());
  }

  /** The distance of a place from a box; 0 inside. */
  static double distance(Point p, Box box) {
    double dx = Math.max(0, Math.max(box.x() - p.x(), p.x() - box.right()));
    double dy = Math.max(0, Math.max(box.y() - p.y(), p.y() - box.bottom()));
    return Math.hypot(dx, dy);
  }
}
