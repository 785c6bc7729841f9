package commonsheet.chart.bitmap;

/**
 * A line across the whole plot: axis, side of the frame or grid line.
 *
 * @param at where it lies across its direction, in pixels
 * @param thickness in pixels
 * @param rgb its colour
 */
record Rule(double at, double thickness, int rgb) {
  /** First row (or column) that it can colour. */
  int first() {
    return (int) Math.floor(at - thickness / 2 - 0.25);
  }

  /** Last row (or column) that it can colour. */
  int last() {
    return (int) Math.ceil(at + thickness / 2 + 0.25);
  }
}
