package commonsheet.sheet;

/**
 * A direction of reading, and the coordinates in which text of that direction reads left to right.
 *
 * @param degrees counter-clockwise from left to right
 */
record Turn(int degrees) {
  private double cos() {
    return degrees % 90 == 0 ? new int[] {1, 0, -1, 0}[degrees / 90] : Math.cos(radians());
  }

  private double sin() {
    return degrees % 90 == 0 ? new int[] {0, 1, 0, -1}[degrees / 90] : Math.sin(radians());
  }

  private double radians() {
    return Math.toRadians(degrees);
  }

  /** Where a point of the displayed page lies along the lines of text. */
  double along(double x, double y) {
    return x * cos() - y * sin();
  }

  /** Where a point of the displayed page lies across the lines of text, downwards. */
  double across(double x, double y) {
    return x * sin() + y * cos();
  }

  /** The displayed box around a box in reading coordinates. */
  Box back(Box own) {
    return corner(own.x(), own.y())
        .union(corner(own.right(), own.y()))
        .union(corner(own.x(), own.bottom()))
        .union(corner(own.right(), own.bottom()));
  }

  private Box corner(double along, double across) {
    return new Box(along * cos() + across * sin(), across * cos() - along * sin(), 0, 0);
  }
}
