package commonsheet.chart.derived;

import commonsheet.chart.Chart;
import commonsheet.chart.ChartReader;
import commonsheet.chart.SheetCharts;
import commonsheet.discharge.ReferenceCapacity;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.RecordIds;
import commonsheet.record.Review;
import commonsheet.record.Severity;
import commonsheet.record.Source;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.Page;
import commonsheet.sheet.Recogniser;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** The charts of a sheet, and the curves they give the sheet's records. */
public final class Tracing {
  private final Supplier<Recogniser> recogniser;

  /**
   * @param recogniser asked for only where the words of a chart are not in the file
   */
  public Tracing(Supplier<Recogniser> recogniser) {
    this.recogniser = recogniser;
  }

  /**
   * Reads the charts of a sheet. A file on whose pages nothing is drawn that can be a chart is not
   * even opened.
   *
   * @param file the file that {@code sheet} was read from
   * @param records of the sheet; their one rated or nominal capacity makes currents of rates
   * @param page the only page to look at, from 1; null for all
   * @return the charts page by page; those without curves have a finding that says why
   * @throws SheetException if the file cannot be opened again or a page cannot be drawn
   */
  public List<Chart> charts(Path file, Sheet sheet, List<CellRecord> records, Integer page)
      throws SheetException {
    List<Page> pages =
        sheet.pages().stream()
            .filter(p -> p.mayShowChart() && (page == null || p.number() == page))
            .toList();
    if (pages.isEmpty()) {
      return List.of();
    }
    ChartReader reader = new ChartReader(ReferenceCapacity.of(records).orElse(null));
    SheetCharts finder = new SheetCharts(reader, recogniser);
    List<Chart> charts = new ArrayList<>();
    try (OpenSheet open = OpenSheet.open(file)) {
      for (Page drawn : pages) {
        charts.addAll(finder.chartsOf(open, drawn));
      }
    }
    return charts;
  }

  /**
   * The records of a sheet with the curves of its charts and what these give. Where a sheet
   * describes several cells, a chart that names none of them comes to all of them, unsure.
   *
   * @param page the only page that was looked at; null for all
   */
  public static List<CellRecord> applied(
      List<CellRecord> records, List<Chart> charts, Integer page) {
    return records.stream()
        .map(r -> CurvesOfRecord.traced(r, ChartOwners.of(r, records, charts), page))
        .toList();
  }

  /**
   * A record for the curves of a sheet that is pictures throughout, so that its words give none: it
   * is named after the file and says nothing else.
   */
  public static CellRecord ofPictures(Sheet sheet) {
    Finding finding =
        new Finding(
            "sheet/pictures-only",
            Severity.WARNING,
            List.of(),
            "The sheet is pictures throughout: only its charts were read; type in what its tables"
                + " say.",
            null);
    return new CellRecord(
        CellRecord.SCHEMA,
        RecordIds.of(null, null, sheet.file()),
        new Cell(null, null, null, null, null, null, null),
        new Source(
            null, null, null, null, sheet.file(), sheet.sha256(), sheet.pages().size(), null, null),
        List.of(),
        List.of(),
        List.of(finding),
        Review.DRAFT);
  }

  /** The records of a sheet whose charts could not be looked at, with a finding that says so. */
  public static List<CellRecord> failed(List<CellRecord> records, String reason) {
    Finding finding =
        new Finding(
            "chart/not-looked-at",
            Severity.WARNING,
            List.of(),
            "The charts of the sheet were not read: " + reason + ".",
            null);
    return records.stream().map(record -> CurvesOfRecord.told(record, finding)).toList();
  }
}
