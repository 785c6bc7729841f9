package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A current in ampere that is not the multiple of C printed with it. */
final class RateAgainstCurrent extends NamedRule {
  /** Sheets round currents, and take C of the rated or of the typical capacity; a share. */
  private static final double TOLERANCE = 0.06;

  /** An end current of more is none: the rate is that of the charge which it ends. */
  private static final double GREATEST_END_RATE = 0.15;

  /** The rate that a current is printed with, by the quantity. */
  private static final Map<String, String> RATES =
      Map.of(
          "standardChargeCurrent", Conditions.CHARGE_RATE,
          "maximumChargeCurrent", Conditions.CHARGE_RATE,
          "chargeCutoffCurrent", Conditions.CHARGE_RATE,
          "standardDischargeCurrent", Conditions.DISCHARGE_RATE,
          "maximumContinuousDischargeCurrent", Conditions.DISCHARGE_RATE,
          "maximumPulseDischargeCurrent", Conditions.DISCHARGE_RATE);

  RateAgainstCurrent() {
    super(
        "relation/rate-and-current",
        Severity.WARNING,
        "IEC 61434: the reference current of a cell is its capacity over one hour");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    Optional<Known> capacity = new CellFacts(record).capacity();
    if (capacity.isEmpty()) {
      return Stream.empty();
    }
    List<Finding> findings = new ArrayList<>();
    Interval one = capacity.get().range().widened(TOLERANCE);
    Readings.of(record).forEach(statement -> ofStatement(statement, one, findings));
    for (Curve curve : record.curves()) {
      if (curve.standing() != Standing.REJECTED && curve.standing() != Standing.UNSURE) {
        ofConditions(curve.id(), curve.conditions(), one, findings);
      }
    }
    return findings.stream();
  }

  private void ofStatement(Statement statement, Interval one, List<Finding> findings) {
    String name = RATES.get(statement.quantity());
    Double rate = name == null ? null : statement.conditions().get(name);
    if (rate != null && rate > 0 && statement.value() != null && isItsOwn(statement, rate)) {
      Interval expected = one.times(rate);
      if (!expected.holds(statement.value())) {
        findings.add(
            finding(
                List.of(statement.id()),
                "The "
                    + Wording.name(statement)
                    + " of "
                    + Wording.valueAndPage(statement)
                    + " is not the "
                    + Wording.number(rate)
                    + " C printed with it, which is "
                    + told(expected, statement.value())));
      }
    } else if (name == null) {
      ofConditions(statement.id(), statement.conditions(), one, findings);
    }
  }

  private static boolean isItsOwn(Statement statement, double rate) {
    return !statement.quantity().equals("chargeCutoffCurrent") || rate <= GREATEST_END_RATE;
  }

  private void ofConditions(
      String id, Conditions conditions, Interval one, List<Finding> findings) {
    pair(id, conditions, Conditions.DISCHARGE_RATE, Conditions.DISCHARGE_CURRENT, one, findings);
    pair(id, conditions, Conditions.CHARGE_RATE, Conditions.CHARGE_CURRENT, one, findings);
  }

  private void pair(
      String id,
      Conditions conditions,
      String rateName,
      String currentName,
      Interval one,
      List<Finding> findings) {
    Double rate = conditions.get(rateName);
    Double current = conditions.get(currentName);
    if (rate != null && rate > 0 && current != null && !one.times(rate).holds(current)) {
      findings.add(
          finding(
              List.of(id),
              "The condition of "
                  + Wording.number(current)
                  + " A is not the "
                  + Wording.number(rate)
                  + " C given with it, which is "
                  + told(one.times(rate), current)));
    }
  }

  private static String told(Interval expected, double current) {
    double middle = (expected.low() + expected.high()) / 2;
    return Wording.withUnit(expected.text(3), "A")
        + " by the sheet's capacity; "
        + Slips.hint(current / middle, "compare both with the sheet")
        + ".";
  }
}
