package commonsheet.chart.derived;

import commonsheet.discharge.DischargeCurve;
import commonsheet.discharge.Estimate;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;

/** Statements without an id yet, each of one value that curves give. */
final class Derivation {
  private static final String RULE = "curve/";

  private Derivation() {}

  /** A value of one curve, or of one against another. */
  static Statement of(
      String quantity, String unit, Estimate value, String note, List<DischargeCurve> origins) {
    DischargeCurve first = origins.get(0);
    Conditions conditions =
        first.curve().conditions().with(Conditions.CUTOFF_VOLTAGE, first.cutOff().voltage());
    return statement(quantity, unit, value, conditions, note, origins);
  }

  /** A value of several curves at one temperature, whatever their loads. */
  static Statement ofLoads(
      String quantity, String unit, Estimate value, String note, List<DischargeCurve> origins) {
    DischargeCurve first = origins.get(0);
    Conditions conditions =
        Conditions.NONE.with(Conditions.CUTOFF_VOLTAGE, first.cutOff().voltage());
    Double temperature = first.curve().conditions().get(Conditions.TEMPERATURE);
    return statement(
        quantity,
        unit,
        value,
        temperature == null ? conditions : conditions.with(Conditions.TEMPERATURE, temperature),
        note,
        origins);
  }

  private static Statement statement(
      String quantity,
      String unit,
      Estimate value,
      Conditions conditions,
      String note,
      List<DischargeCurve> origins) {
    List<String> from = new ArrayList<>();
    List<String> doubts = new ArrayList<>();
    for (DischargeCurve origin : origins) {
      from.add(origin.id());
      if (isUnsure(origin.curve())) {
        doubts.add("Curve " + origin.id() + ", from which it comes, is unsure.");
      }
    }
    Statement cutOff = origins.get(0).cutOff().from();
    if (cutOff != null) {
      from.add(cutOff.id());
      if (cutOff.standing() == Standing.UNSURE) {
        doubts.add("The cut-off voltage " + cutOff.id() + ", down to which it counts, is unsure.");
      }
    }
    return new Statement(
        null,
        quantity,
        null,
        value.value(),
        value.low(),
        value.high(),
        unit,
        conditions,
        Evidence.derived(RULE + quantity, note, from),
        doubts.isEmpty() ? Standing.READ : Standing.UNSURE,
        doubts);
  }

  static boolean isUnsure(Curve curve) {
    return curve.standing() == Standing.UNSURE;
  }
}
