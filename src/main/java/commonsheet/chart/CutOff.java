package commonsheet.chart;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.List;

/** A cut-off voltage stated by a chart whose curves go on below it is no condition of theirs. */
final class CutOff {
  /** Volts that a curve may pass its cut-off by where lines end a little late. */
  private static final double SLACK = 0.1;

  private CutOff() {}

  static boolean isPassed(Curve curve) {
    Double cutOff = curve.conditions().get(Conditions.CUTOFF_VOLTAGE);
    if (cutOff == null || !curve.y().unit().equals("V")) {
      return false;
    }
    double least = curve.points().stream().mapToDouble(p -> p.get(1)).min().orElse(cutOff);
    return least < cutOff - SLACK - curve.uncertainty().y();
  }

  static Curve without(Curve curve) {
    return curve.with(curve.conditions().without(Conditions.CUTOFF_VOLTAGE));
  }

  static Finding finding(int page, List<String> curves, Conditions common) {
    Double cutOff = common.get(Conditions.CUTOFF_VOLTAGE);
    return new Finding(
        "chart/cut-off",
        Severity.WARNING,
        curves,
        "A chart on page "
            + page
            + " states a cut-off at "
            + (cutOff == null ? "a voltage" : PlainNumber.of(cutOff, 4) + " V")
            + ", but its curves go on below it; the cut-off is not taken as their condition.",
        "common practice, no source");
  }
}
