package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/** Finds tables set by alignment alone within a region of text that is read as one. */
final class UnruledTables {
  /**
   * Gap within a line that may part two cells, in em: squeezed tables leave little more than two
   * spaces.
   */
  private static final double CELL_GAP = 0.7;

  /** Gap within a line that lets one look for a table, in em. */
  private static final double CLEAR_GAP = 1.0;

  /** White between lines at which a table ends, in em. */
  private static final double BREAK = 2.2;

  private static final int LEAST_ROWS = 3;

  /** Words from which a line that runs on over the next column is running text. */
  private static final int PROSE_WORDS = 6;

  private final List<Ruling> rules;
  private final List<Box> curves;

  /**
   * Prepares for a page.
   *
   * @param rules level lines that belong to no ruled table
   * @param curves boxes of slanted and curved strokes, which tell charts from tables
   */
  UnruledTables(List<Ruling> rules, List<Box> curves) {
    this.rules = rules;
    this.curves = curves;
  }

  List<Table> find(List<Word> region) {
    List<List<Line>> lines = new ArrayList<>();
    for (Line line : LineBuilder.lines(region)) {
      lines.add(LineBuilder.fragments(line.words(), CELL_GAP));
    }
    List<Table> tables = new ArrayList<>();
    int i = 0;
    while (i < lines.size()) {
      int end = hasClearGap(lines.get(i)) ? blockEnd(lines, i) : i;
      List<Table> found =
          end - i < LEAST_ROWS ? List.of() : tables(lines.subList(begin(lines, i), end));
      tables.addAll(found);
      i = found.isEmpty() ? i + 1 : end;
    }
    return tables;
  }

  private static boolean hasClearGap(List<Line> line) {
    for (int i = 1; i < line.size(); i++) {
      double gap = line.get(i).box().x() - line.get(i - 1).box().right();
      if (gap >= CLEAR_GAP * line.get(i).words().get(0).size()) {
        return true;
      }
    }
    return false;
  }

  /** A line centred on the first row, or the first half of its label, may stand just above it. */
  private static int begin(List<List<Line>> lines, int first) {
    if (first == 0) {
      return first;
    }
    double bottom = box(lines.get(first - 1)).bottom();
    Box own = box(lines.get(first));
    return bottom > own.y() + 0.15 * own.height() ? first - 1 : first;
  }

  private static Box box(List<Line> fragments) {
    return Box.around(fragments.stream().map(Line::box).toList());
  }

  private static int blockEnd(List<List<Line>> lines, int from) {
    double second = lines.get(from).get(1).box().x();
    double left = lines.get(from).get(0).box().x();
    double bottom = box(lines.get(from)).bottom();
    int i = from + 1;
    while (i < lines.size()) {
      List<Line> line = lines.get(i);
      Word first = line.get(0).words().get(0);
      Box box = box(line);
      boolean apart = box.y() - bottom > BREAK * first.size();
      if (apart || isHeading(lines, i, left) || isProse(line, left, second)) {
        return i;
      }
      left = Math.min(left, box.x());
      if (line.size() > 1) {
        second = Math.max(second, line.get(1).box().x());
      }
      bottom = box.bottom();
      i++;
    }
    return i;
  }

  private static boolean isHeading(List<List<Line>> lines, int i, double left) {
    List<Line> line = lines.get(i);
    Word first = line.get(0).words().get(0);
    Word above = lines.get(i - 1).get(0).words().get(0);
    boolean alone = line.size() == 1 && Math.abs(first.box().x() - left) < 2 * first.size();
    boolean stronger = (first.bold() && !above.bold()) || first.size() > 1.15 * above.size();
    return alone && stronger;
  }

  private static boolean isProse(List<Line> line, double left, double second) {
    Line only = line.get(0);
    double size = only.words().get(0).size();
    return line.size() == 1
        && only.words().size() >= PROSE_WORDS
        && only.box().x() < left + 2 * size
        && only.box().right() > second + 3 * size;
  }

  /**
   * The tables of a block: one as a rule, several where lists of labels and values stand side by
   * side.
   */
  private List<Table> tables(List<List<Line>> lines) {
    Columns columns = Columns.of(lines);
    if (columns.count() < 2) {
      return List.of();
    }
    Box all = Box.around(lines.stream().map(UnruledTables::box).toList());
    List<Ruling> across =
        rules.stream()
            .filter(
                r ->
                    r.at() > all.y()
                        && r.at() < all.bottom()
                        && Math.min(r.to(), all.right()) - Math.max(r.from(), all.x())
                            > all.width() / 2)
            .toList();
    List<RowDraft> rows = withoutNotes(new RowBuilder(columns, across, lines.size()).rows(lines));
    if (!UnruledCheck.isTable(rows, columns.count()) || isChart(all)) {
      return List.of();
    }
    if (SideBySide.isPairOfLists(rows, columns.count())) {
      List<Table> halves = new ArrayList<>();
      SideBySide.halves(lines, columns).forEach(half -> halves.addAll(find(half)));
      return halves;
    }
    List<Cell> cells = cells(rows, columns);
    Box box = Box.around(cells.stream().map(Cell::box).toList());
    return List.of(new Table(box, false, rows.size(), columns.count(), cells));
  }

  /** Lines above or below that fill the first column only are captions and notes. */
  private static List<RowDraft> withoutNotes(List<RowDraft> rows) {
    int from = 0;
    int to = rows.size();
    while (from < to && isNote(rows.get(from))) {
      from++;
    }
    while (to > from && isNote(rows.get(to - 1))) {
      to--;
    }
    return rows.subList(from, to);
  }

  private static boolean isNote(RowDraft row) {
    return row.filled() == 1 && row.has(0);
  }

  private boolean isChart(Box all) {
    return curves.stream()
        .anyMatch(
            c ->
                c.width() > all.width() * 0.3
                    && c.height() > 4
                    && all.contains(c.centreX(), c.centreY()));
  }

  private static List<Cell> cells(List<RowDraft> rows, Columns columns) {
    List<Cell> cells = new ArrayList<>();
    for (int r = 0; r < rows.size(); r++) {
      RowDraft row = rows.get(r);
      int c = row.sharesLabelAbove() ? 1 : 0;
      while (c < columns.count()) {
        int span = row.span(c, columns.count());
        int last = r;
        while (c == 0 && last + 1 < rows.size() && rows.get(last + 1).sharesLabelAbove()) {
          last++;
        }
        double left = columns.lefts().get(c);
        double right = columns.rights().get(c + span - 1);
        Box place = new Box(left, row.top(), right - left, rows.get(last).bottom() - row.top());
        List<Line> lines = LineBuilder.lines(row.words(c));
        Box box = lines.isEmpty() ? place : Box.around(lines.stream().map(Line::box).toList());
        cells.add(new Cell(r, c, last - r + 1, span, box, lines));
        c += span;
      }
    }
    return cells;
  }
}
