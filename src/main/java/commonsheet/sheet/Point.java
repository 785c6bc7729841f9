package commonsheet.sheet;

/** A place on a page: points (1/72 in) from the top left of the page as displayed, y downwards. */
public record Point(double x, double y) {
  /** Distance in points. */
  public double distance(Point other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
