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
 * @param cells its contenders in the same order, or the first of them
 * @param compared how many there are in all
 * @param licence name or address of the licence that its reader gives the figures on; null where
 *     none was named
 */
public record Report(Shortlist shortlist, List<ReportedCell> cells, int compared, String licence) {
  public Report {
    cells = List.copyOf(cells);
  }

  /** A report that tells of every cell. */
  Report(Shortlist shortlist, List<ReportedCell> cells) {
    this(shortlist, cells, cells.size(), null);
  }

  /** Gathers what is told of every cell. */
  public static Report of(Shortlist shortlist) {
    List<ReportedCell> cells = new ArrayList<>();
    for (Contender contender : shortlist.contenders()) {
      cells.add(ReportedCell.of(cells.size() + 1, contender));
    }
    return new Report(shortlist, cells);
  }

  /** The same of the first cells in rank only. */
  Report ofFirst(int most) {
    return cells.size() <= most
        ? this
        : new Report(shortlist, cells.subList(0, most), compared, licence);
  }

  /**
   * The same under a licence.
   *
   * @param name of a licence, such as {@code CC-BY-4.0}, or its address on the web; null for none
   */
  public Report licensed(String name) {
    return new Report(shortlist, cells, compared, name);
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
