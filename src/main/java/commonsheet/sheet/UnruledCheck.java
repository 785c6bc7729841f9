package commonsheet.sheet;

import java.util.List;

/**
 * Tells aligned words that are a table from running text, numbered paragraphs and the scales of
 * charts.
 */
final class UnruledCheck {
  private static final int LEAST_ROWS = 3;

  /** Share of rows in which at least two columns are filled. */
  private static final double LEAST_FILLED = 0.5;

  /** Words per cell from which a column is running text; a table has at most one such column. */
  private static final double PROSE_WORDS = 7;

  /** Share of cells of bare numbers from which the block is a chart's scales. */
  private static final double BARE_NUMBERS = 0.8;

  private UnruledCheck() {}

  static boolean isTable(List<RowDraft> rows, int columns) {
    long filled = rows.stream().filter(r -> r.filled() >= 2).count();
    if (rows.size() < LEAST_ROWS || filled < LEAST_FILLED * rows.size()) {
      return false;
    }
    int prose = 0;
    for (int c = 0; c < columns; c++) {
      prose += meanWords(rows, c) >= PROSE_WORDS ? 1 : 0;
    }
    boolean longLabels = columns == 2 && meanWords(rows, 0) >= PROSE_WORDS;
    return prose < 2
        && !longLabels
        && !isNumberedText(rows, columns)
        && !isScale(rows, columns)
        && !isContents(rows, columns);
  }

  private static double meanWords(List<RowDraft> rows, int column) {
    return rows.stream()
        .filter(r -> r.has(column))
        .mapToInt(r -> r.words(column).size())
        .average()
        .orElse(0);
  }

  /** Numbers or bullets in front of paragraphs. */
  private static boolean isNumberedText(List<RowDraft> rows, int columns) {
    return columns == 2
        && rows.stream().allMatch(r -> r.words(0).stream().allMatch(w -> isMark(w.text())));
  }

  private static boolean isMark(String text) {
    return (text.length() <= 6 && text.codePoints().noneMatch(Character::isLetter))
        || (text.length() <= 3
            && "().\u3001\uFF09\uFF0E".indexOf(text.charAt(text.length() - 1)) >= 0);
  }

  private static boolean isScale(List<RowDraft> rows, int columns) {
    int cells = 0;
    int bare = 0;
    for (RowDraft row : rows) {
      for (int c = 0; c < columns; c++) {
        if (row.has(c)) {
          cells++;
          boolean numbers =
              row.words(c).stream()
                  .allMatch(w -> w.text().codePoints().allMatch(UnruledCheck::isOfNumber));
          bare += numbers ? 1 : 0;
        }
      }
    }
    return bare >= BARE_NUMBERS * cells;
  }

  /** A table of contents: leaders, and whole page numbers in the last column. */
  private static boolean isContents(List<RowDraft> rows, int columns) {
    int led = 0;
    int pages = 0;
    for (RowDraft row : rows) {
      boolean leads = false;
      for (int c = 0; c < columns; c++) {
        leads |= row.words(c).stream().anyMatch(w -> isLeader(w.text()));
      }
      led += leads ? 1 : 0;
      pages +=
          row.words(columns - 1).stream()
                  .allMatch(w -> w.text().length() <= 4 && isDigits(w.text()))
              ? 1
              : 0;
    }
    return led * 2 > rows.size() && pages * 2 > rows.size();
  }

  private static boolean isLeader(String text) {
    return text.contains("....") || text.contains("\u2026\u2026");
  }

  private static boolean isDigits(String text) {
    return text.codePoints().allMatch(Character::isDigit);
  }

  private static boolean isOfNumber(int c) {
    return Character.isDigit(c) || c == '.' || c == ',' || c == '-' || c == '\u2212' || c == '%';
  }
}
