package commonsheet.export.report;

import commonsheet.compare.DischargeFamily;
import commonsheet.compare.DischargeLine;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What a cell gives at one constant current.
 *
 * @param current in A
 * @param digitised whether a curve of this current is on the sheet; else it lies between two
 * @param capacity in A.h
 * @param energy in W.h
 */
public record Delivered(double current, boolean digitised, Figure capacity, Figure energy) {
  /** Parts into which the way from one curve's current to the next is divided. */
  private static final int PARTS = 4;

  /** From the lowest to the highest digitised current; nothing where there are no curves. */
  static List<Delivered> across(DischargeFamily family, List<DischargeLine> lines) {
    TreeSet<Double> digitised = new TreeSet<>();
    lines.forEach(line -> digitised.add(line.current()));
    TreeSet<Double> currents = new TreeSet<>(digitised);
    for (double current : digitised) {
      Double next = digitised.higher(current);
      for (int part = 1; next != null && part < PARTS; part++) {
        currents.add(current + (next - current) * part / PARTS);
      }
    }
    return currents.stream()
        .map(current -> at(current, digitised.contains(current), family))
        .toList();
  }

  private static Delivered at(double current, boolean digitised, DischargeFamily family) {
    Map<Measure, Figure> figures = family.delivered(current);
    return new Delivered(
        current,
        digitised,
        figures.get(Measure.DELIVERED_CAPACITY),
        figures.get(Measure.DELIVERED_ENERGY));
  }
}
