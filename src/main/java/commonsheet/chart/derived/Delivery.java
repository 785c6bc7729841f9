package commonsheet.chart.derived;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A discharge that reaches its cut-off, and the charge it gives until then.
 *
 * @param capacity in the unit of the curve's charge
 */
record Delivery(DischargeCurve curve, Estimate capacity) {
  /** Every such discharge of a record, in the order of its curves. */
  static List<Delivery> of(CellRecord record) {
    return record.curves().stream()
        .flatMap(
            curve ->
                CutOff.of(curve, record).flatMap(end -> DischargeCurve.of(curve, end)).stream())
        .flatMap(c -> c.capacity().stream().map(capacity -> new Delivery(c, capacity)))
        .toList();
  }

  Double condition(String name) {
    return curve.curve().conditions().get(name);
  }

  boolean isSure() {
    return !Derivation.isUnsure(curve.curve());
  }

  boolean isInAmpereHours() {
    return curve.unit().equals(DischargeCurve.AMPERE_HOURS);
  }

  /** Whether another curve is drawn in the same plot and counts to the same cut-off. */
  boolean sharesPlotWith(Delivery other) {
    Evidence mine = curve.curve().evidence();
    Evidence theirs = other.curve.curve().evidence();
    return Objects.equals(mine.page(), theirs.page())
        && mine.box().equals(theirs.box())
        && Objects.equals(mine.file(), theirs.file())
        && curve.unit().equals(other.curve.unit())
        && curve.cutOff().voltage() == other.curve.cutOff().voltage();
  }

  /** Whether both are discharged at one temperature, or neither says at which. */
  boolean sharesTemperatureWith(Delivery other) {
    return Stream.of(
            Conditions.TEMPERATURE, Conditions.TEMPERATURE_LOW, Conditions.TEMPERATURE_HIGH)
        .allMatch(name -> Objects.equals(condition(name), other.condition(name)));
  }

  /** Whether both are discharged by one current, told in the same way. */
  boolean sharesLoadWith(Delivery other) {
    return Objects.equals(
            condition(Conditions.DISCHARGE_RATE), other.condition(Conditions.DISCHARGE_RATE))
        && Objects.equals(
            condition(Conditions.DISCHARGE_CURRENT), other.condition(Conditions.DISCHARGE_CURRENT));
  }
}
