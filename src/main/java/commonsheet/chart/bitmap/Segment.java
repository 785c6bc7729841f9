package commonsheet.chart.bitmap;

/**
 * A straight line along an axis, in pixels.
 *
 * @param at where it lies across its direction
 * @param from where it begins along its direction
 * @param to where it ends
 * @param thickness of the line
 */
record Segment(double at, double from, double to, double thickness) {
  double length() {
    return to - from;
  }

  Segment scaled(int step) {
    double half = (step - 1) / 2.0;
    return new Segment(at * step + half, from * step, to * step + step - 1, thickness * step);
  }
}
