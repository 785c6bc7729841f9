package commonsheet.sheet;

/**
 * A straight drawn line along an axis of the displayed page.
 *
 * @param level whether it runs from left to right; otherwise from top to bottom
 * @param at where it lies across its direction: y of a level one, x of an upright one
 * @param from where it begins
 * @param to where it ends
 */
record Ruling(boolean level, double at, double from, double to) {
  static Ruling of(Box line) {
    return line.width() >= line.height()
        ? new Ruling(true, line.centreY(), line.x(), line.right())
        : new Ruling(false, line.centreX(), line.y(), line.bottom());
  }

  double length() {
    return to - from;
  }

  Ruling moved(double newAt, double newFrom, double newTo) {
    return new Ruling(level, newAt, newFrom, newTo);
  }

  /** Whether the two, one level and one upright, cross or come within a distance of it. */
  boolean meets(Ruling other, double slack) {
    return level != other.level
        && at >= other.from - slack
        && at <= other.to + slack
        && other.at >= from - slack
        && other.at <= to + slack;
  }

  Box box() {
    return level ? new Box(from, at, to - from, 0) : new Box(at, from, 0, to - from);
  }
}
