package commonsheet.chart;

import commonsheet.chart.plot.Plot;
import commonsheet.chart.text.ChartKind;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.Page;
import commonsheet.sheet.Recogniser;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** All charts of a sheet, in paths first, then in pictures. */
public final class SheetCharts {
  private final ChartReader reader;
  private final PagePlots plots;

  /**
   * @param reader what makes charts of plots
   * @param recogniser asked for only where a plot's words are not in the file, since it takes long
   *     to load; never for a sheet whose charts are all paths and text
   */
  public SheetCharts(ChartReader reader, Supplier<Recogniser> recogniser) {
    this.reader = reader;
    this.plots = new PagePlots(recogniser);
  }

  /**
   * The charts of a sheet, page by page, their curves called c1, c2, … through the sheet.
   *
   * @param open the file {@code sheet} was read from
   * @throws SheetException if a page cannot be drawn
   */
  public List<Chart> charts(OpenSheet open, Sheet sheet) throws SheetException {
    List<Chart> charts = new ArrayList<>();
    int next = 1;
    for (Page page : sheet.pages()) {
      for (Chart chart : chartsOf(open, page)) {
        charts.add(chart.numberedFrom(next));
        next += chart.curves().size();
      }
    }
    return charts;
  }

  /**
   * The charts of one page, their curves called c1, c2, … within each.
   *
   * @throws SheetException if the page cannot be drawn
   */
  public List<Chart> chartsOf(OpenSheet open, Page page) throws SheetException {
    List<Plot> found = plots.of(open, page);
    return reader.read(found).stream().filter(SheetCharts::isChart).toList();
  }

  /**
   * Lines in a box that neither a number nor a heading makes a chart are some other drawing, such
   * as one with dimensions.
   */
  private static boolean isChart(Chart chart) {
    return !chart.curves().isEmpty()
        || (chart.title() != null && ChartHeading.isOne(chart.title()))
        || !chart.kind().equals(ChartKind.OTHER.label());
  }
}
