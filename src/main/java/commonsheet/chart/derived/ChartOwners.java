package commonsheet.chart.derived;

import commonsheet.chart.Chart;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Which charts of a sheet are of which of its cells. */
final class ChartOwners {
  private static final String DOUBT =
      "The sheet describes several cells, and the chart does not say which of them it is of.";

  private ChartOwners() {}

  /**
   * The charts of one cell: those that name it, and, with unsure curves, those that name none of
   * the sheet's cells. All of them where the sheet describes one cell only.
   */
  static List<Chart> of(CellRecord record, List<CellRecord> all, List<Chart> charts) {
    if (all.size() == 1) {
      return charts;
    }
    List<Chart> own = new ArrayList<>();
    for (Chart chart : charts) {
      if (names(chart, record)) {
        own.add(chart);
      } else if (all.stream().noneMatch(other -> names(chart, other))) {
        own.add(unsure(chart));
      }
    }
    return own;
  }

  private static boolean names(Chart chart, CellRecord record) {
    String model = letters(record.cell().model());
    return !model.isEmpty() && letters(chart.title()).contains(model);
  }

  private static String letters(String text) {
    return text == null ? "" : text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
  }

  private static Chart unsure(Chart chart) {
    List<Curve> curves = chart.curves().stream().map(curve -> curve.doubted(DOUBT)).toList();
    return new Chart(
        chart.page(),
        chart.box(),
        chart.title(),
        chart.kind(),
        chart.conditions(),
        curves,
        chart.findings());
  }
}
