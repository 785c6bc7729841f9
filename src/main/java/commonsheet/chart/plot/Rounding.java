package commonsheet.chart.plot;

import commonsheet.record.Curve;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Numbers of curves without digits that say nothing. */
public final class Rounding {
  /** Steps within an uncertainty, so that the rounding adds nothing to speak of. */
  private static final double STEPS = 50;

  private static final int EXACT = 10;

  private Rounding() {}

  /** The points of a curve, to a small part of its uncertainty. */
  public static List<List<Double>> points(List<double[]> points, Curve.Uncertainty uncertainty) {
    List<List<Double>> rounded = new ArrayList<>();
    for (double[] point : points) {
      rounded.add(List.of(within(point[0], uncertainty.x()), within(point[1], uncertainty.y())));
    }
    return rounded;
  }

  /** A coordinate to a small part of how far it may be off. */
  public static double within(double value, double error) {
    return to(value, error / STEPS);
  }

  /** To the power of ten at or below a step; as it is for a step of 0. */
  public static double to(double value, double step) {
    if (!(step > 0) || !Double.isFinite(value)) {
      return value;
    }
    int decimals = (int) Math.ceil(-Math.log10(step));
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).doubleValue();
  }

  /** An uncertainty to two digits, never smaller than it was but for what binary sums make up. */
  public static double twoDigits(double value) {
    return value == 0
        ? 0
        : new BigDecimal(value)
            .round(new MathContext(EXACT, RoundingMode.HALF_EVEN))
            .round(new MathContext(2, RoundingMode.UP))
            .doubleValue();
  }
}
