package commonsheet.roundtrip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A curve as it was drawn: straight between its points, on scales of a known span. */
final class TrueLine {
  /** Steeper than this, in shares of the scales, a curve is judged by its nearest point only. */
  private static final double STEEP = 3;

  private final double[] x;
  private final double[] y;
  private final double xSpan;
  private final double ySpan;
  private final String quantity;

  TrueLine(double[] x, double[] y, double xSpan, double ySpan, String quantity) {
    this.x = x;
    this.y = y;
    this.xSpan = xSpan;
    this.ySpan = ySpan;
    this.quantity = quantity;
  }

  boolean sameScales(TrueLine other) {
    return quantity.equals(other.quantity);
  }

  /** The shortest way from a point to the line, as a share of the scales. */
  double distance(double px, double py) {
    return nearest(px, py, xSpan, ySpan);
  }

  /** Whether the line passes through the box of a point's half-widths. */
  boolean within(double px, double py, double halfX, double halfY) {
    for (int i = 1; i < x.length; i++) {
      if (meets(
          (x[i - 1] - px) / Math.max(halfX, 1e-12),
          (y[i - 1] - py) / Math.max(halfY, 1e-12),
          (x[i] - px) / Math.max(halfX, 1e-12),
          (y[i] - py) / Math.max(halfY, 1e-12))) {
        return true;
      }
    }
    return false;
  }

  /** Whether a segment meets the square from -1 to 1, clipped one side after another. */
  private static boolean meets(double ax, double ay, double bx, double by) {
    double from = 0;
    double to = 1;
    double[][] sides = {{bx - ax, ax}, {by - ay, ay}};
    for (double[] side : sides) {
      double step = side[0];
      double start = side[1];
      if (step == 0) {
        if (Math.abs(start) > 1) {
          return false;
        }
      } else {
        double one = (-1 - start) / step;
        double two = (1 - start) / step;
        from = Math.max(from, Math.min(one, two));
        to = Math.min(to, Math.max(one, two));
      }
    }
    return from <= to;
  }

  /**
   * The error in y at the same x, as a share of the scale; NaN where the line is steep or has no
   * such x, or goes by it more than once.
   */
  double errorAt(double px, double py) {
    double error = Double.NaN;
    for (int i = 1; i < x.length; i++) {
      if (Math.min(x[i - 1], x[i]) <= px && px <= Math.max(x[i - 1], x[i]) && x[i] != x[i - 1]) {
        double slope = (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
        if (Math.abs(slope) * xSpan / ySpan > STEEP) {
          return Double.NaN;
        }
        error = Math.abs(py - y[i - 1] - slope * (px - x[i - 1])) / ySpan;
      }
    }
    return error;
  }

  /** So many points spread evenly along the line, as one sees it. */
  List<double[]> spread(int count) {
    double[] along = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      along[i] = along[i - 1] + Math.hypot((x[i] - x[i - 1]) / xSpan, (y[i] - y[i - 1]) / ySpan);
    }
    List<double[]> points = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      double at = along[along.length - 1] * k / (count - 1);
      int i = Arrays.binarySearch(along, at);
      i = Math.min(Math.max(i < 0 ? -i - 1 : i, 1), x.length - 1);
      double step = along[i] - along[i - 1];
      double share = step == 0 ? 0 : (at - along[i - 1]) / step;
      points.add(
          new double[] {
            x[i - 1] + share * (x[i] - x[i - 1]), y[i - 1] + share * (y[i] - y[i - 1])
          });
    }
    return points;
  }

  /** A line with the same scales through other points. */
  TrueLine through(List<List<Double>> points) {
    return new TrueLine(
        points.stream().mapToDouble(p -> p.get(0)).toArray(),
        points.stream().mapToDouble(p -> p.get(1)).toArray(),
        xSpan,
        ySpan,
        quantity);
  }

  private double nearest(double px, double py, double unitX, double unitY) {
    double best = Math.hypot((px - x[0]) / unitX, (py - y[0]) / unitY);
    for (int i = 1; i < x.length; i++) {
      double dx = (x[i] - x[i - 1]) / unitX;
      double dy = (y[i] - y[i - 1]) / unitY;
      double qx = (px - x[i - 1]) / unitX;
      double qy = (py - y[i - 1]) / unitY;
      double length = dx * dx + dy * dy;
      double t = length == 0 ? 0 : Math.min(1, Math.max(0, (qx * dx + qy * dy) / length));
      best = Math.min(best, Math.hypot(qx - t * dx, qy - t * dy));
    }
    return best;
  }
}
