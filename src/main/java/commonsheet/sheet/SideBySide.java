package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/** Recognises two lists of labels and values that stand side by side, as leaflets set them. */
final class SideBySide {
  /** Share of cells that must be a label, or hold a figure, for their column to be of that sort. */
  private static final double MOST = 0.7;

  /** Letters of a label on average at least; units and symbols are shorter. */
  private static final double LABEL_LENGTH = 5;

  private SideBySide() {}

  /**
   * Whether four columns are label, value, label, value, and the two lists do not share their rows:
   * one has a heading or an end of its own.
   */
  static boolean isPairOfLists(List<RowDraft> rows, int columns) {
    return columns == 4
        && isLabels(rows, 0)
        && isLabels(rows, 2)
        && isFigures(rows, 1)
        && isFigures(rows, 3)
        && rows.stream().anyMatch(SideBySide::isApart);
  }

  /** A row that only one of the lists has, or that holds nothing but headings. */
  private static boolean isApart(RowDraft row) {
    boolean left = row.has(0) || row.has(1);
    boolean right = row.has(2) || row.has(3);
    return left != right || (!row.has(1) && !row.has(3));
  }

  private static boolean isLabels(List<RowDraft> rows, int column) {
    List<RowDraft> filled = rows.stream().filter(r -> r.has(column)).toList();
    double length = filled.stream().mapToInt(r -> text(r, column).length()).average().orElse(0);
    long labels = filled.stream().filter(r -> !startsWithDigit(r, column)).count();
    return length >= LABEL_LENGTH && labels >= MOST * filled.size();
  }

  private static boolean startsWithDigit(RowDraft row, int column) {
    return Character.isDigit(row.words(column).get(0).text().codePointAt(0));
  }

  private static boolean isFigures(List<RowDraft> rows, int column) {
    List<RowDraft> filled = rows.stream().filter(r -> r.has(column)).toList();
    long figures =
        filled.stream()
            .filter(r -> text(r, column).codePoints().anyMatch(Character::isDigit))
            .count();
    return filled.size() >= 2 && figures >= MOST * filled.size();
  }

  private static String text(RowDraft row, int column) {
    return Line.text(row.words(column));
  }

  /** The words of the left and of the right list. */
  static List<List<Word>> halves(List<List<Line>> lines, Columns columns) {
    List<Word> left = new ArrayList<>();
    List<Word> right = new ArrayList<>();
    for (List<Line> line : lines) {
      for (Line fragment : line) {
        for (Word word : fragment.words()) {
          (columns.of(word.box()) < 2 ? left : right).add(word);
        }
      }
    }
    return List.of(left, right);
  }
}
