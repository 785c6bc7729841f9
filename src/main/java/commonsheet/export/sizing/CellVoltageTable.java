package commonsheet.export.sizing;

import commonsheet.compare.VoltageTable;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * The look-up grid of one cell as it is exchanged: what a voltage table file holds.
 *
 * @param origin which cell, from which sheet
 * @param pages of the sheet on which its curves stand; none for curves from elsewhere
 * @param table numbers of at most eight significant digits, so that a file gives back the same
 */
public record CellVoltageTable(CellOrigin origin, List<Integer> pages, VoltageTable table) {
  private static final MathContext DIGITS = new MathContext(JsonFields.DIGITS);

  public CellVoltageTable {
    pages = List.copyOf(pages);
  }

  /** The table of a record's cell, made ready for exchange. */
  public static CellVoltageTable of(CellRecord record, VoltageTable table) {
    List<Integer> pages =
        record.curves().stream()
            .filter(curve -> table.from().contains(curve.id()))
            .map(Curve::evidence)
            .filter(Objects::nonNull)
            .map(evidence -> evidence.page())
            .filter(Objects::nonNull)
            .distinct()
            .sorted()
            .toList();
    return new CellVoltageTable(CellOrigin.of(record), pages, rounded(table));
  }

  private static VoltageTable rounded(VoltageTable table) {
    List<Double> charges = rounded(table.charges());
    List<Double> apart = charges.stream().distinct().toList();
    return new VoltageTable(
        rounded(table.currents()),
        apart,
        table.voltages().stream().map(row -> merged(rounded(row), charges, apart)).toList(),
        rounded(table.uncertainty()),
        rounded(table.cutoffVoltage()),
        table.temperature() == null ? null : rounded(table.temperature().doubleValue()),
        table.from(),
        table.unsure());
  }

  /**
   * Where two places became one, the later voltage, or the earlier where a discharge ends there.
   */
  private static List<Double> merged(List<Double> row, List<Double> places, List<Double> apart) {
    List<Double> merged = new ArrayList<>(Collections.nCopies(apart.size(), null));
    for (int i = 0; i < row.size(); i++) {
      if (row.get(i) != null) {
        merged.set(apart.indexOf(places.get(i)), row.get(i));
      }
    }
    return merged;
  }

  private static List<Double> rounded(List<Double> numbers) {
    List<Double> rounded = new ArrayList<>();
    numbers.forEach(number -> rounded.add(number == null ? null : rounded(number.doubleValue())));
    return rounded;
  }

  private static Double rounded(double number) {
    return BigDecimal.valueOf(number).round(DIGITS).doubleValue();
  }

  /** Up to which charge each current's voltages go, in A.h: the last place that has one. */
  public List<Double> capacities() {
    List<Double> ends = new ArrayList<>();
    for (List<Double> row : table.voltages()) {
      int last = row.size() - 1;
      while (last > 0 && row.get(last) == null) {
        last--;
      }
      ends.add(table.charges().get(last));
    }
    return List.copyOf(ends);
  }
}
