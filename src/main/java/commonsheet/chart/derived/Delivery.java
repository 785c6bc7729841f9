package commonsheet.chart.derived;

import commonsheet.discharge.DischargeCurve;
import commonsheet.discharge.Estimate;
import java.util.List;

/**
 * A discharge that reaches its cut-off, and the charge it gives until then.
 *
 * @param capacity in the unit of the curve's charge
 */
record Delivery(DischargeCurve curve, Estimate capacity) {
  /** Those of the discharges that reach their cut-off. */
  static List<Delivery> of(List<DischargeCurve> discharges) {
    return discharges.stream()
        .flatMap(c -> c.capacity().stream().map(capacity -> new Delivery(c, capacity)))
        .toList();
  }

  Double condition(String name) {
    return curve.condition(name);
  }

  boolean isSure() {
    return !Derivation.isUnsure(curve.curve());
  }

  boolean isInAmpereHours() {
    return curve.unit().equals(DischargeCurve.AMPERE_HOURS);
  }
}
