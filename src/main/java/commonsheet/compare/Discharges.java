package commonsheet.compare;

import commonsheet.discharge.Estimate;
import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The discharges of a cell at a cut-off and temperature, by current.
 *
 * @param reaching those that reach the cut-off, by ascending current, one for each
 * @param cut those that end above it, by ascending current
 * @param notes on what is not used and what does not agree, one sentence each
 * @param absence why there are none, or null
 */
record Discharges(
    List<Discharge> reaching, List<CurveAtCurrent> cut, List<String> notes, String absence) {

  static Discharges of(CellRecord record, Condition condition) {
    CurveChoice choice = CurveChoice.of(record);
    List<String> notes = new ArrayList<>(choice.notes());
    List<Discharge> reaching = new ArrayList<>();
    List<CurveAtCurrent> cut = new ArrayList<>();
    String above = null;
    for (CurveAtCurrent curve :
        choice.at(condition.temperature(), condition.tolerance().temperature())) {
      Optional<Discharge> discharge = Discharge.of(curve, condition.cutoffVoltage());
      if (discharge.isPresent()) {
        reaching.add(discharge.get());
      } else if (curve.curve().points().get(0).get(1) <= condition.cutoffVoltage()) {
        above = "the cut-off " + volts(condition) + " lies above the voltage it begins at";
        notes.add("curve " + curve.curve().id() + " is not used: " + above);
      } else {
        cut.add(curve);
      }
    }
    if (reaching.isEmpty() && cut.isEmpty()) {
      reaching.addAll(BetweenTemperatures.of(choice.curves(), condition));
    }
    cut.sort(Comparator.comparingDouble(CurveAtCurrent::current));
    List<Discharge> kept = onePerCurrent(reaching, condition, notes);
    return new Discharges(
        kept,
        List.copyOf(cut),
        List.copyOf(notes),
        kept.isEmpty() && above == null ? absence(choice, condition) : above);
  }

  private static String volts(Condition condition) {
    return PlainNumber.of(condition.cutoffVoltage(), 4) + " V";
  }

  private static String absence(CurveChoice choice, Condition condition) {
    if (choice.curves().isEmpty()) {
      return choice.notes().isEmpty()
          ? "the record holds no discharge curve"
          : "no discharge curve serves: " + choice.notes().get(0);
    }
    String temperatures = choice.temperatures();
    return "no curve at "
        + PlainNumber.of(condition.temperature(), 3)
        + " °C"
        + (temperatures.isEmpty() ? "" : "; the sheet shows " + temperatures);
  }

  private static List<Discharge> onePerCurrent(
      List<Discharge> all, Condition condition, List<String> notes) {
    List<Discharge> best =
        all.stream()
            .sorted(
                Comparator.comparing(Discharge::isUnsure)
                    .thenComparingDouble(d -> fromAsked(d, condition))
                    .thenComparing(d -> d.curves().get(0)))
            .toList();
    List<Discharge> kept = new ArrayList<>();
    for (Discharge discharge : best) {
      Optional<Discharge> same =
          kept.stream()
              .filter(k -> CurveChoice.sameCurrent(k.current(), discharge.current()))
              .findFirst();
      if (same.isEmpty()) {
        kept.add(discharge);
      } else if (!agree(same.get().capacity(), discharge.capacity())) {
        notes.add(
            String.format(
                Locale.ROOT,
                "curves %s and %s of one current do not agree: %s and %s A·h; %s is used",
                same.get().curves().get(0),
                discharge.curves().get(0),
                PlainNumber.of(same.get().capacity().value(), 4),
                PlainNumber.of(discharge.capacity().value(), 4),
                same.get().curves().get(0)));
      }
    }
    kept.sort(Comparator.comparingDouble(Discharge::current));
    return List.copyOf(kept);
  }

  private static boolean agree(Estimate one, Estimate other) {
    return Math.abs(one.value() - other.value()) <= one.halfWidth() + other.halfWidth();
  }

  private static double fromAsked(Discharge discharge, Condition condition) {
    Double temperature = discharge.temperature();
    return temperature == null ? 0 : Math.abs(temperature - condition.temperature());
  }
}
