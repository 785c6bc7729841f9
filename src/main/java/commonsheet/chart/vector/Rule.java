package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;

/**
 * A straight line along an axis of the page.
 *
 * @param level whether it lies level; otherwise it stands upright
 * @param at y of a level line, x of an upright one
 * @param from its lower end: left or top
 * @param to its higher end: right or bottom
 */
record Rule(boolean level, double at, double from, double to, Look look, int order) {
  /** Points by which a line may leave its axis and still lie along it. */
  static final double STRAIGHT = 0.12;

  static boolean isAlongAxis(Point a, Point b) {
    return Math.abs(a.x() - b.x()) <= STRAIGHT || Math.abs(a.y() - b.y()) <= STRAIGHT;
  }

  static Rule between(Point a, Point b, Look look, int order) {
    boolean level = Math.abs(a.x() - b.x()) >= Math.abs(a.y() - b.y());
    return level
        ? new Rule(
            true, (a.y() + b.y()) / 2, Math.min(a.x(), b.x()), Math.max(a.x(), b.x()), look, order)
        : new Rule(
            false,
            (a.x() + b.x()) / 2,
            Math.min(a.y(), b.y()),
            Math.max(a.y(), b.y()),
            look,
            order);
  }

  double length() {
    return to - from;
  }

  Box box() {
    return level ? new Box(from, at, to - from, 0) : new Box(at, from, 0, to - from);
  }

  Point start() {
    return level ? new Point(from, at) : new Point(at, from);
  }

  Point end() {
    return level ? new Point(to, at) : new Point(at, to);
  }

  /** Whether a line across this one meets it, within a distance. */
  boolean meets(Rule across, double within) {
    return across.at >= from - within
        && across.at <= to + within
        && at >= across.from - within
        && at <= across.to + within;
  }
}
