package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A condition under which no cell is tested: a unit or a decimal sign went wrong. */
final class ImplausibleCondition extends NamedRule {
  /** In the units of the conditions. Wide by judgement. */
  private static final Map<String, Interval> POSSIBLE =
      Map.ofEntries(
          Map.entry(Conditions.DISCHARGE_CURRENT, new Interval(0.00005, 10000)),
          Map.entry(Conditions.DISCHARGE_RATE, new Interval(0.001, 200)),
          Map.entry(Conditions.CHARGE_CURRENT, new Interval(0.00005, 3000)),
          Map.entry(Conditions.CHARGE_RATE, new Interval(0.001, 50)),
          Map.entry(Conditions.CUTOFF_VOLTAGE, new Interval(0.9, 4.2)),
          Map.entry(Conditions.CHARGE_VOLTAGE, new Interval(2.3, 5.0)),
          Map.entry(Conditions.TEMPERATURE, new Interval(-80, 200)),
          Map.entry(Conditions.TEMPERATURE_LOW, new Interval(-80, 200)),
          Map.entry(Conditions.TEMPERATURE_HIGH, new Interval(-80, 200)),
          Map.entry(Conditions.RETENTION, new Interval(1, 100)),
          Map.entry(Conditions.STATE_OF_CHARGE, new Interval(0, 100)));

  ImplausibleCondition() {
    super("reach/condition", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    Stream<Finding> ofStatements = Readings.of(record).flatMap(s -> within(s.id(), s.conditions()));
    Stream<Finding> ofCurves =
        record.curves().stream()
            .filter(c -> c.standing() != Standing.REJECTED)
            .flatMap((Curve c) -> within(c.id(), c.conditions()));
    return Stream.concat(ofStatements, ofCurves);
  }

  private Stream<Finding> within(String id, Conditions conditions) {
    return conditions.values().entrySet().stream()
        .filter(c -> POSSIBLE.containsKey(c.getKey()))
        .filter(c -> !POSSIBLE.get(c.getKey()).holds(c.getValue()))
        .map(
            c ->
                finding(
                    List.of(id),
                    "The "
                        + Wording.words(c.getKey())
                        + " of "
                        + Wording.number(c.getValue())
                        + " that "
                        + id
                        + " holds under is none of a lithium-ion cell's; look at its unit and"
                        + " decimal sign."));
  }
}
