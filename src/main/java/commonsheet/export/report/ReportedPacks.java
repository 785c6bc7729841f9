package commonsheet.export.report;

import java.util.List;
import java.util.stream.Stream;

/**
 * The packs of a machine, as a table shows them.
 *
 * @param cells those that packs are built of, in order of rank; none where no machine is given
 * @param measures those that any of them has a figure or a bound of
 */
record ReportedPacks(List<ReportedCell> cells, List<PackMeasure> measures) {
  static ReportedPacks of(Report report) {
    List<ReportedCell> built =
        report.cells().stream().filter(cell -> cell.contender().pack() != null).toList();
    return new ReportedPacks(
        built,
        Stream.of(PackMeasure.values())
            .filter(measure -> built.stream().anyMatch(cell -> says(measure, cell)))
            .toList());
  }

  /** The head of a column: title and unit. */
  static String head(PackMeasure measure) {
    return measure.title() + ", " + measure.shownUnit();
  }

  private static boolean says(PackMeasure measure, ReportedCell cell) {
    return FigureWords.says(measure.of(cell.contender().pack()));
  }
}
