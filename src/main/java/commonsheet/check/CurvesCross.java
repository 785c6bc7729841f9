package commonsheet.check;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Two curves of a family that differ by load only and cross: a trace went over to another line. */
final class CurvesCross extends NamedRule {
  private static final int PLACES = 60;

  /**
   * The first part of a discharge is steep, and curves start in one point; a share of the charge.
   */
  private static final double FROM = 0.08;

  /** Near their ends curves come together; a share of the shorter one's charge. */
  private static final double TO = 0.92;

  /** Differences below this say nothing, in V. */
  private static final double LEAST = 0.015;

  CurvesCross() {
    super("curve/crossing", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Trace> traces = Trace.of(record);
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < traces.size(); i++) {
      for (Trace other : traces.subList(i + 1, traces.size())) {
        Trace one = traces.get(i);
        boolean family = one.sharesPlotWith(other) && one.sharesTemperatureWith(other);
        if (family && (one.isHarderThan(other) || other.isHarderThan(one))) {
          double place = crossing(one, other);
          if (!Double.isNaN(place)) {
            findings.add(finding(one, other, place));
          }
        }
      }
    }
    return findings.stream();
  }

  /**
   * Where the one that was above is below for the first time; not a number where they keep order.
   */
  private static double crossing(Trace one, Trace other) {
    double most = Math.min(one.end(), other.end());
    double least = LEAST + one.errorVoltage() + other.errorVoltage();
    double sign = 0;
    for (int i = 0; i <= PLACES; i++) {
      double charge = most * (FROM + (TO - FROM) * i / PLACES);
      double difference = one.voltageAt(charge) - other.voltageAt(charge);
      if (Math.abs(difference) > least) {
        if (sign * difference < 0) {
          return charge;
        }
        sign = Math.signum(difference);
      }
    }
    return Double.NaN;
  }

  private Finding finding(Trace one, Trace other, double place) {
    return finding(
        List.of(one.id(), other.id()),
        "Curves "
            + one.name()
            + " and "
            + other.name()
            + " cross near "
            + PlainNumber.of(place, 3)
            + (one.curve().x().unit().equals("%") ? " %" : " Ah")
            + ", which curves of different load do not; compare both with the chart there.");
  }
}
