package commonsheet.compare;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.util.Precision;

/**
 * A discharge curve whose current is known.
 *
 * @param curve with its current among its conditions where its charge follows from it
 * @param current in A
 * @param temperature in °C, or null where the chart does not say
 * @param from ids of the curve and of the statement that its current comes from
 * @param doubts why it is unsure, one sentence each
 */
record CurveAtCurrent(
    Curve curve, double current, Double temperature, List<String> from, List<String> doubts) {
  /** Of a current in A: finer than any sheet prints. */
  private static final int DECIMALS = 6;

  boolean isMeasured() {
    return curve.method() == Method.MEASURED;
  }

  /** A curve of a record at its current; nothing where its load is not known in amperes. */
  static Optional<CurveAtCurrent> of(Curve curve, CellRecord record) {
    List<String> doubts = new ArrayList<>();
    List<String> from = new ArrayList<>(List.of(curve.id()));
    if (curve.standing() == Standing.UNSURE) {
      doubts.add(
          "curve "
              + curve.id()
              + " is unsure"
              + (curve.doubts().isEmpty() ? "" : ": " + curve.doubts().get(0)));
    }
    Double current = curve.conditions().get(Conditions.DISCHARGE_CURRENT);
    if (current == null) {
      Double rate = curve.conditions().get(Conditions.DISCHARGE_RATE);
      Optional<RateBasis> basis = rate == null ? Optional.empty() : RateBasis.of(record);
      if (basis.isEmpty()) {
        return Optional.empty();
      }
      current = Precision.round(rate * basis.get().capacity(), DECIMALS);
      from.add(basis.get().statement());
      basis.get().doubt().ifPresent(doubts::add);
    }
    if (!(current > 0)) {
      return Optional.empty();
    }
    Double temperature = curve.conditions().get(Conditions.TEMPERATURE);
    return Optional.of(
        new CurveAtCurrent(knowing(current, curve), current, temperature, from, doubts));
  }

  private static Curve knowing(double current, Curve curve) {
    boolean counts = curve.x().quantity().equals("time");
    return counts
        ? curve.with(curve.conditions().with(Conditions.DISCHARGE_CURRENT, current))
        : curve;
  }

  /** The same, unsure for one more reason. */
  CurveAtCurrent doubted(String doubt) {
    List<String> more = new ArrayList<>(doubts);
    more.add(doubt);
    return new CurveAtCurrent(curve, current, temperature, from, more);
  }

  /** For people: {@code curve c3 (4.8 A)}. */
  String named() {
    return "curve " + curve.id() + " (" + PlainNumber.of(current, 4) + " A)";
  }

  /** For people: {@code curve c3 (4.8 A, 25 °C)}. */
  String namedWithTemperature() {
    String at = temperature == null ? "" : ", " + PlainNumber.of(temperature, 3) + " °C";
    return "curve " + curve.id() + " (" + PlainNumber.of(current, 4) + " A" + at + ")";
  }
}
