package commonsheet.sheet;

import java.util.Arrays;

/** One connected piece of a path while it is being drawn, in the page's own coordinates. */
final class Subpath {
  private double[] xs = new double[8];
  private double[] ys = new double[8];
  private int points;
  private int curves;

  void lineTo(double x, double y) {
    if (points == xs.length) {
      xs = Arrays.copyOf(xs, points * 2);
      ys = Arrays.copyOf(ys, points * 2);
    }
    xs[points] = x;
    ys[points++] = y;
  }

  /** A curve counts by its end point: its exact course matters to no word and no rule. */
  void curveTo(double x, double y) {
    lineTo(x, y);
    curves++;
  }

  void close() {
    if (points > 0 && (xs[0] != xs[points - 1] || ys[0] != ys[points - 1])) {
      lineTo(xs[0], ys[0]);
    }
  }

  int points() {
    return points;
  }

  double x(int i) {
    return xs[i];
  }

  double y(int i) {
    return ys[i];
  }

  double lastX() {
    return xs[points - 1];
  }

  double lastY() {
    return ys[points - 1];
  }

  boolean isCurved() {
    return curves > 0;
  }

  /** Whether it has no more than the corners of a rectangle, or of a border with slanted ends. */
  boolean isFourSided() {
    return curves == 0 && points >= 2 && points <= 5;
  }

  /** Whether every side runs along an axis. */
  boolean isUpright() {
    for (int i = 1; i < points; i++) {
      if (Math.abs(xs[i] - xs[i - 1]) > STRAIGHT && Math.abs(ys[i] - ys[i - 1]) > STRAIGHT) {
        return false;
      }
    }
    return true;
  }

  Box bounds() {
    double left = Double.MAX_VALUE;
    double low = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (int i = 0; i < points; i++) {
      left = Math.min(left, xs[i]);
      right = Math.max(right, xs[i]);
      low = Math.min(low, ys[i]);
      high = Math.max(high, ys[i]);
    }
    return new Box(left, low, right - left, high - low);
  }

  /** Points by which a line may leave its axis and still be a rule. */
  static final double STRAIGHT = 0.5;
}
