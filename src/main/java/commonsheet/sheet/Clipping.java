package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/** Cuts what is drawn to the rectangle that is left open. */
final class Clipping {
  /** Points by which a line may lie outside and still be seen, by its width and by rounding. */
  private static final double SLACK = 0.01;

  private Clipping() {}

  /** What two boxes share; without extent if nothing. */
  static Box common(Box a, Box b) {
    double left = Math.max(a.x(), b.x());
    double top = Math.max(a.y(), b.y());
    double right = Math.min(a.right(), b.right());
    double bottom = Math.min(a.bottom(), b.bottom());
    return new Box(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
  }

  /** The connected pieces of a line within a box. */
  static List<List<Point>> cutLine(Subpath line, Box box) {
    Box open =
        new Box(
            box.x() - SLACK, box.y() - SLACK, box.width() + 2 * SLACK, box.height() + 2 * SLACK);
    List<List<Point>> runs = new ArrayList<>();
    List<Point> run = null;
    for (int i = 1; i < line.points(); i++) {
      double[] kept = kept(line, i, open);
      if (kept.length == 0) {
        run = null;
        continue;
      }
      Point from = at(line, i, kept[0]);
      Point to = at(line, i, kept[1]);
      if (run == null || kept[0] > 0) {
        run = new ArrayList<>();
        runs.add(run);
        run.add(from);
      }
      run.add(to);
      if (kept[1] < 1) {
        run = null;
      }
    }
    return runs;
  }

  private static Point at(Subpath line, int i, double t) {
    if (t == 0) {
      return new Point(line.x(i - 1), line.y(i - 1));
    }
    if (t == 1) {
      return new Point(line.x(i), line.y(i));
    }
    return new Point(
        line.x(i - 1) + t * (line.x(i) - line.x(i - 1)),
        line.y(i - 1) + t * (line.y(i) - line.y(i - 1)));
  }

  /**
   * From where to where, 0 to 1, a straight piece lies within a box; empty if it does not (Liang
   * and Barsky, "A New Concept and Method for Line Clipping", 1984, from memory).
   */
  private static double[] kept(Subpath line, int i, Box box) {
    double x = line.x(i - 1);
    double y = line.y(i - 1);
    double dx = line.x(i) - x;
    double dy = line.y(i) - y;
    double[] slopes = {-dx, dx, -dy, dy};
    double[] rooms = {x - box.x(), box.right() - x, y - box.y(), box.bottom() - y};
    double from = 0;
    double to = 1;
    for (int side = 0; side < 4; side++) {
      double t = rooms[side] / slopes[side];
      if (slopes[side] == 0) {
        from = rooms[side] < 0 ? 2 : from;
      } else if (slopes[side] < 0) {
        from = Math.max(from, t);
      } else {
        to = Math.min(to, t);
      }
    }
    return from <= to ? new double[] {from, to} : new double[0];
  }

  /**
   * The part of an area within a box (Sutherland and Hodgman, "Reentrant Polygon Clipping", 1974,
   * from memory); empty if there is none.
   */
  static List<Point> cutArea(Subpath area, Box box) {
    List<Point> corners = new ArrayList<>(area.points());
    for (int i = 0; i < area.points(); i++) {
      corners.add(new Point(area.x(i), area.y(i)));
    }
    Box bounds = area.bounds();
    boolean whole =
        bounds.x() >= box.x()
            && bounds.y() >= box.y()
            && bounds.right() <= box.right()
            && bounds.bottom() <= box.bottom();
    if (whole) {
      return corners;
    }
    for (Side side : Side.values()) {
      corners = cut(corners, side, box);
    }
    if (!corners.isEmpty() && !corners.get(0).equals(corners.get(corners.size() - 1))) {
      corners.add(corners.get(0));
    }
    return corners;
  }

  private static List<Point> cut(List<Point> corners, Side side, Box box) {
    List<Point> kept = new ArrayList<>(corners.size());
    for (int i = 0; i < corners.size(); i++) {
      Point from = corners.get(i == 0 ? corners.size() - 1 : i - 1);
      Point to = corners.get(i);
      double before = side.room(from, box);
      double after = side.room(to, box);
      if (before * after < 0) {
        double t = before / (before - after);
        kept.add(new Point(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y())));
      }
      if (after >= 0) {
        kept.add(to);
      }
    }
    return kept;
  }

  private enum Side {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM;

    /** How far within this side of a box a point lies. */
    double room(Point p, Box box) {
      return switch (this) {
        case LEFT -> p.x() - box.x();
        case RIGHT -> box.right() - p.x();
        case TOP -> p.y() - box.y();
        case BOTTOM -> box.bottom() - p.y();
      };
    }
  }
}
