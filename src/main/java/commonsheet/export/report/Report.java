package commonsheet.export.report;

import commonsheet.compare.Condition;
import commonsheet.compare.Contender;
import commonsheet.compare.Measure;
import commonsheet.compare.Shortlist;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A shortlist with what its charts show.
 *
 * @param shortlist what was compared
 * @param cells its contenders in the same order
 */
public record Report(Shortlist shortlist, List<ReportedCell> cells) {
  public Report {
    cells = List.copyOf(cells);
  }

  /** Gathers the curves of every cell and what it delivers between their currents. */
  public static Report of(Shortlist shortlist) {
    List<ReportedCell> cells = new ArrayList<>();
    for (Contender contender : shortlist.contenders()) {
      cells.add(ReportedCell.of(cells.size() + 1, contender));
    }
    return new Report(shortlist, cells);
  }

  Condition condition() {
    return shortlist.condition();
  }

  /** The rating each cell must have at least, in A: the load's peak where no machine is given. */
  double ratingAsked() {
    return shortlist.requirement() == null
        ? condition().load().peak()
        : shortlist.requirement().ratingPerCell();
  }

  boolean hasPacks() {
    return cells.stream().anyMatch(cell -> cell.contender().pack() != null);
  }

  /** The measures that any cell has a figure or a bound of, in their order. */
  List<Measure> measures() {
    return Stream.of(Measure.values())
        .filter(measure -> cells.stream().anyMatch(cell -> FigureWords.says(cell.figure(measure))))
        .toList();
  }
}
