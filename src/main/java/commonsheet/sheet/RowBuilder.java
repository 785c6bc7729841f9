package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes rows of the lines of an unruled table: lines that continue a cell go with the row they
 * continue.
 */
final class RowBuilder {
  /**
   * White between lines of one cell, in em, in any case; rows stand further apart or have a label.
   */
  private static final double TIGHT = 0.3;

  /** White between lines of one cell beyond the least of the block, and at most, in em. */
  private static final double HARDLY_MORE = 0.12;

  private static final double LOOSEST = 0.8;

  /** Share of their height lines of one row have in common when cells are centred on each other. */
  private static final double OVERLAP = 0.15;

  private final Columns columns;
  private final List<Ruling> rules;
  private final boolean ruledRows;
  private double tight = TIGHT;

  /**
   * Prepares for a block of lines.
   *
   * @param rules level lines drawn across the block
   */
  RowBuilder(Columns columns, List<Ruling> rules, int lines) {
    this.columns = columns;
    this.rules = rules;
    this.ruledRows = rules.size() >= 4 && rules.size() * 4 >= lines;
  }

  List<RowDraft> rows(List<List<Line>> lines) {
    List<RowDraft> drafts = lines.stream().map(l -> new RowDraft(l, columns)).toList();
    double least = leastGap(drafts);
    tight = Math.min(LOOSEST, Math.max(TIGHT, least + HARDLY_MORE));
    List<RowDraft> rows = new ArrayList<>();
    for (RowDraft line : drafts) {
      RowDraft last = rows.isEmpty() ? null : rows.get(rows.size() - 1);
      if (last != null && isBesideSharedLabel(last, line)) {
        line.shareLabelAbove();
        rows.add(line);
      } else if (last != null && continues(last, line)) {
        last.join(line);
      } else {
        rows.add(line);
      }
    }
    return rows;
  }

  /**
   * Whether a label stands half-way between the row and the line, for both. A number there counts a
   * row of cells with two lines instead.
   */
  private static boolean isBesideSharedLabel(RowDraft row, RowDraft line) {
    int shared = 0;
    for (int column = 1; column <= row.lastColumn(); column++) {
      boolean both = row.has(column) && line.has(column);
      if (row.has(column) != line.has(column)
          || (both && row.bottom(column) > line.top() + OVERLAP * line.size())) {
        return false;
      }
      shared += both ? 1 : 0;
    }
    return shared >= 2
        && row.has(0)
        && !line.has(0)
        && row.bottom(0) > line.top() + OVERLAP * line.size()
        && row.words(0).stream().anyMatch(w -> Character.isLetter(w.text().codePointAt(0)));
  }

  /** The least white between lines of one column, in em. */
  private double leastGap(List<RowDraft> lines) {
    double least = Double.MAX_VALUE;
    for (int column = 0; column < columns.count(); column++) {
      double bottom = Double.NaN;
      for (RowDraft line : lines) {
        if (line.has(column)) {
          double gap = (line.top() - bottom) / line.size();
          least = gap > 0 ? Math.min(least, gap) : least;
          bottom = line.bottom();
        }
      }
    }
    return least;
  }

  private boolean continues(RowDraft row, RowDraft line) {
    double em = Math.min(row.size(), line.size());
    double gap = line.top() - row.bottom();
    if (gap < -OVERLAP * em) {
      return true;
    }
    boolean ruled =
        rules.stream()
            .anyMatch(r -> r.at() > row.bottom() - em / 2 && r.at() < line.top() + em / 2);
    if (ruled) {
      return false;
    }
    if (ruledRows) {
      return true;
    }
    if (gap > tight * em) {
      return false;
    }
    if (!line.has(0)) {
      return line.filled() == 1;
    }
    if (line.filled() == 1) {
      return startsWithinSentence(line.words(0).get(0).text());
    }
    boolean labelAlone = row.has(0) && row.filled() == 1;
    return labelAlone;
  }

  private static boolean startsWithinSentence(String text) {
    int first = text.codePointAt(0);
    return Character.isLowerCase(first) || "(@/&\uFF08".indexOf(first) >= 0;
  }
}
