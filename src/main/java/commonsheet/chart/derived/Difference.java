package commonsheet.chart.derived;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;

/**
 * How far a value from a curve lies from a printed one.
 *
 * @param share of the printed value; negative where the curve gives less
 * @param tolerance the share within which both can hold
 * @param fits whether the printed value is a bound on the side of which the curve's value lies
 */
record Difference(double share, double tolerance, boolean fits) {
  /** Rounding of a printed value, as a share; makers round capacities to 10 mAh or so. */
  private static final double ROUNDING = 0.005;

  /**
   * How much one cell differs from another of its type, as a share. A curve is of one cell, a
   * printed value of all. Common practice, no source.
   */
  private static final double SPREAD = 0.03;

  /** From this many tolerances on, one of the two is read or printed wrong. */
  private static final double WRONG = 4;

  /** Below this share nothing is worth telling: printed values have fewer digits. */
  private static final double NONE = 0.0005;

  private static final double PER_CENT = 100;

  /** Of two values of one quantity. */
  static Difference of(Statement curve, Statement printed) {
    double low = printed.low() == null ? printed.value() : printed.low();
    double high = printed.high() == null ? printed.value() : printed.high();
    double middle = printed.value() == null ? (low + high) / 2 : printed.value();
    double share = curve.value() / middle - 1;
    boolean fits =
        (printed.statistic() == Statistic.MINIMUM || printed.statistic() == Statistic.RATED)
            ? share > 0
            : printed.statistic() == Statistic.MAXIMUM && share < 0;
    return new Difference(
        share, tolerance(halfWidth(curve) / middle, (high - low) / 2 / middle), fits);
  }

  /** Of a share and the share that one printed value is of another. */
  static Difference ofShare(Statement curve, Statement part, Statement whole) {
    double printed = PER_CENT * part.value() / whole.value();
    return new Difference(
        curve.value() / printed - 1, tolerance(halfWidth(curve) / printed, ROUNDING), false);
  }

  private static double tolerance(double curve, double printed) {
    return Math.hypot(curve, Math.max(printed, ROUNDING)) + SPREAD;
  }

  private static double halfWidth(Statement curve) {
    return (curve.high() - curve.low()) / 2;
  }

  /** A note where both can hold, an error where that is out of the question. */
  Severity severity() {
    double size = Math.abs(share);
    if (fits && size <= WRONG * tolerance || size <= tolerance) {
      return Severity.NOTE;
    }
    return size <= WRONG * tolerance ? Severity.WARNING : Severity.ERROR;
  }

  /** Such as {@code 1.2 % less, within what both leave open}. */
  String sentence() {
    String amount = PlainNumber.of(Math.abs(PER_CENT * share), 2) + " %";
    String size = share < 0 ? amount + " less" : amount + " more";
    if (Math.abs(share) < NONE) {
      return "no difference";
    }
    return switch (severity()) {
      case NOTE -> size + (fits ? ", as fits a bound" : ", within what both leave open");
      case WARNING -> size + ", beyond what both leave open; compare both with the sheet";
      case ERROR -> size + "; one of the two is read or printed wrong, compare both with the sheet";
    };
  }
}
