package commonsheet.cli;

import commonsheet.chart.Chart;
import commonsheet.chart.overlay.Figure;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;

/** The charts of a sheet and their curves, in lines for people. */
final class ChartLines {
  private final PrintWriter out;

  ChartLines(PrintWriter out) {
    this.out = out;
  }

  /** A chart, its curves, and why some are unsure. */
  void print(Figure figure) {
    out.println(
        "page "
            + figure.page()
            + ": "
            + figure.kind()
            + (figure.title() == null ? "" : " \"" + figure.title() + "\"")
            + ", "
            + SheetLine.count(figure.curves().size(), "curve"));
    figure.curves().forEach(this::print);
  }

  /** The curves of a record that stand on no page: what the user measured or gave by values. */
  void printOwn(CellRecord record) {
    for (Curve curve : record.curves()) {
      if (curve.evidence().page() == null) {
        out.println(curve.evidence().file() + ": " + curve.kind());
        print(curve);
      }
    }
  }

  /** What a person should look at among the charts. */
  void printFindings(CellRecord record) {
    for (Finding finding : record.findings()) {
      boolean ofCharts =
          List.of("chart/", "curve/", "agreement/").stream().anyMatch(finding.rule()::startsWith);
      if (ofCharts) {
        out.println(finding.severity().name().toLowerCase(Locale.ROOT) + ": " + finding.message());
      }
    }
  }

  /** Such as {@code chart: discharge, 4 curves}. */
  static String inShort(Chart chart) {
    return "chart: " + chart.kind() + ", " + SheetLine.count(chart.curves().size(), "curve");
  }

  private void print(Curve curve) {
    out.println("  " + CurveLine.of(curve));
    curve.doubts().forEach(doubt -> out.println("      ? " + doubt));
  }
}
