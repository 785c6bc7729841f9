package commonsheet.compare;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which of a record's discharge curves serve at a condition: those whose current is known, at the
 * temperature asked for, one for each current.
 *
 * @param curves every discharge curve whose current is known, at whatever temperature
 * @param notes why others are not among them, one sentence each
 */
record CurveChoice(List<CurveAtCurrent> curves, List<String> notes) {
  /** Rates and currents that are the same, as a share: sheets round one from the other. */
  static final double SAME_CURRENT = 0.02;

  /** Where a chart without a temperature is taken to be drawn, in °C: makers test indoors. */
  private static final double ROOM_LOW = 18;

  private static final double ROOM_HIGH = 28;

  static CurveChoice of(CellRecord record) {
    List<CurveAtCurrent> makers = new ArrayList<>();
    List<CurveAtCurrent> measured = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    for (Curve curve : record.curves()) {
      if (!isDischarge(curve)) {
        continue;
      }
      String why = unusable(curve);
      Optional<CurveAtCurrent> known =
          why == null ? CurveAtCurrent.of(curve, record) : Optional.empty();
      if (known.isEmpty()) {
        String reason = why == null ? "its current is not known" : why;
        notes.add("curve " + curve.id() + " is not used: " + reason);
      } else if (known.get().isMeasured()) {
        measured.add(known.get());
      } else {
        makers.add(known.get());
      }
    }
    if (makers.isEmpty()) {
      return new CurveChoice(
          measured.stream()
              .map(c -> c.doubted("measured by the user, not the sheet's own"))
              .toList(),
          notes);
    }
    measured.forEach(
        c ->
            notes.add(
                "curve " + c.curve().id() + " is not used: it is the user's, not the sheet's"));
    return new CurveChoice(makers, notes);
  }

  private static boolean isDischarge(Curve curve) {
    return curve.kind().startsWith("discharge")
        && curve.y().quantity().equals("voltage")
        && curve.standing() != Standing.REJECTED;
  }

  private static String unusable(Curve curve) {
    if (curve.points().size() < 2) {
      return "it has fewer than two points";
    }
    if (!curve.y().unit().equals("V")) {
      return "its voltage is not in volts";
    }
    return switch (curve.x().quantity() + " in " + curve.x().unit()) {
      case "capacity in A.h", "time in s" -> null;
      case "capacity in %" -> "its charge is a percentage, and of what is not said";
      default -> "it is not drawn over charge or time";
    };
  }

  /** The curves at a temperature, within a tolerance in K. */
  List<CurveAtCurrent> at(double temperature, double tolerance) {
    return curves.stream().flatMap(c -> at(c, temperature, tolerance).stream()).toList();
  }

  private static Optional<CurveAtCurrent> at(
      CurveAtCurrent curve, double temperature, double tolerance) {
    Conditions conditions = curve.curve().conditions();
    Double low = conditions.get(Conditions.TEMPERATURE_LOW);
    Double high = conditions.get(Conditions.TEMPERATURE_HIGH);
    if (curve.temperature() != null) {
      return Math.abs(curve.temperature() - temperature) <= tolerance
          ? Optional.of(curve)
          : Optional.empty();
    }
    if (low != null && high != null) {
      return temperature >= low - tolerance && temperature <= high + tolerance
          ? Optional.of(curve)
          : Optional.empty();
    }
    return temperature >= ROOM_LOW && temperature <= ROOM_HIGH
        ? Optional.of(curve.doubted("the chart names no temperature; taken as room temperature"))
        : Optional.empty();
  }

  /** The temperatures that the curves name, ascending, for people. */
  String temperatures() {
    return String.join(
        ", ",
        curves.stream()
            .map(CurveAtCurrent::temperature)
            .filter(t -> t != null)
            .distinct()
            .sorted(Comparator.naturalOrder())
            .map(t -> PlainNumber.of(t, 3) + " °C")
            .toList());
  }

  static boolean sameCurrent(double one, double other) {
    return Math.abs(one - other) <= SAME_CURRENT * Math.max(one, other);
  }
}
