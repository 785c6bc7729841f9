package commonsheet.score;

import commonsheet.record.Curve;
import java.util.List;

/**
 * A read curve measured in shares of its scales, so that a steep end and a flat middle count the
 * same. A scale is what the truth says of it, else the span of the read ticks, else that of the
 * points.
 */
final class CurveLine {
  private final double[] x;
  private final double[] y;
  private final double xSpan;
  private final double ySpan;

  CurveLine(Curve curve, CurveTruth truth) {
    List<List<Double>> points = curve.points();
    x = points.stream().mapToDouble(p -> p.get(0)).toArray();
    y = points.stream().mapToDouble(p -> p.get(1)).toArray();
    xSpan = span(truth.x(), curve.x(), x);
    ySpan = span(truth.y(), curve.y(), y);
  }

  private static double span(CurveTruth.Axis truth, Curve.Axis read, double[] points) {
    if (truth.low() != null && truth.high() != null) {
      return truth.high() - truth.low();
    }
    double[] values = read.ticks().stream().mapToDouble(Curve.Tick::value).toArray();
    double span = span(values);
    return span > 0 ? span : Math.max(span(points), 1e-12);
  }

  private static double span(double[] values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return high - low;
  }

  /** The shortest way from a point to the curve, as a share of the scales. */
  double distance(double px, double py) {
    double best = Math.hypot((px - x[0]) / xSpan, (py - y[0]) / ySpan);
    for (int i = 1; i < x.length; i++) {
      best = Math.min(best, toSegment(i, px, py));
    }
    return best;
  }

  private double toSegment(int i, double px, double py) {
    double dx = (x[i] - x[i - 1]) / xSpan;
    double dy = (y[i] - y[i - 1]) / ySpan;
    double qx = (px - x[i - 1]) / xSpan;
    double qy = (py - y[i - 1]) / ySpan;
    double length = dx * dx + dy * dy;
    double along = length == 0 ? 0 : Math.min(1, Math.max(0, (qx * dx + qy * dy) / length));
    return Math.hypot(qx - along * dx, qy - along * dy);
  }
}
