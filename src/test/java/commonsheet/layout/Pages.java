package commonsheet.layout;

import commonsheet.sheet.Box;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.PageKind;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A page put together from texts, top to bottom. In a line a tab leaves a gap as between columns.
 * Table rows are written {@code "Item | Value"}: a line feed starts a new line within a cell, a
 * cell {@code ^} belongs to the one above it, a cell {@code <} to the one left of it.
 */
final class Pages {
  private static final double LEFT = 50;
  private static final double LINE = 14;
  private static final double LETTER = 5;
  private static final double GAP = 120;

  private static final List<String> ORDINARY =
      List.of(
          "Nominal capacity | 2600 mAh",
          "Nominal voltage | 3.6 V",
          "Discharge cut-off voltage | 2.75 V",
          "Standard charge current | 1.3 A",
          "Max. charge current | 2.6 A");

  private final List<Word> words = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private final List<Table> tables = new ArrayList<>();
  private double y = 50;

  private Pages() {}

  static Pages page() {
    return new Pages();
  }

  /**
   * What an ordinary cell's sheet says besides, so that the sheet passes for one.
   *
   * @param but labels of the rows to leave out, for the test to write its own
   */
  static Pages rest(String... but) {
    List<String> rows = new ArrayList<>(List.of("Item | Value"));
    ORDINARY.stream().filter(r -> Arrays.stream(but).noneMatch(r::startsWith)).forEach(rows::add);
    return page().table(rows.toArray(String[]::new));
  }

  static Sheet sheet(Pages... pages) {
    List<Page> numbered = new ArrayList<>();
    for (Pages page : pages) {
      numbered.add(page.numbered(numbered.size() + 1));
    }
    return new Sheet("lake-cell.pdf", "0".repeat(64), null, numbered);
  }

  private Page numbered(int number) {
    return new Page(number, 595, 842, words, lines, tables, List.of(), PageKind.WORDS);
  }

  Pages line(String text) {
    return line(text, LEFT, false);
  }

  /** A line set in from the left by so many points. */
  Pages line(String text, double indent) {
    return line(text, LEFT + indent, false);
  }

  Pages heading(String text) {
    return line(text, LEFT, true);
  }

  private Pages line(String text, double x, boolean bold) {
    Line line = line(text, x, y, bold);
    if (!line.words().isEmpty()) {
      lines.add(line);
    }
    words.addAll(line.words());
    y += LINE;
    return this;
  }

  /** A blank line. */
  Pages gap() {
    y += 2 * LINE;
    return this;
  }

  /** Words of a drawing, which stand in no line. */
  Pages lettered(String text) {
    y += 3 * LINE;
    words.addAll(line(text, 300, y, false).words());
    y += 3 * LINE;
    return this;
  }

  Pages table(String... rows) {
    return table(true, rows);
  }

  /** A table without drawn lines. */
  Pages columns(String... rows) {
    return table(false, rows);
  }

  private Pages table(boolean ruled, String... rows) {
    String[][] texts =
        Arrays.stream(rows).map(row -> row.split(" *\\| *", -1)).toArray(String[][]::new);
    double[] x = edges(texts);
    double[] tops = new double[rows.length + 1];
    tops[0] = y + LINE;
    for (int row = 0; row < rows.length; row++) {
      int most = Arrays.stream(texts[row]).mapToInt(t -> t.split("\n").length).max().orElse(1);
      tops[row + 1] = tops[row] + LINE * most + 6;
    }
    List<Cell> cells = new ArrayList<>();
    for (int row = 0; row < rows.length; row++) {
      for (int column = 0; column < texts[row].length; column++) {
        if (!texts[row][column].equals("^") && !texts[row][column].equals("<")) {
          cells.add(cell(texts, row, column, x, tops));
        }
      }
    }
    cells.forEach(cell -> cell.lines().forEach(line -> words.addAll(line.words())));
    Box box = new Box(x[0], tops[0], x[x.length - 1] - x[0], tops[rows.length] - tops[0]);
    tables.add(new Table(box, ruled, rows.length, x.length - 1, cells));
    y = tops[rows.length] + LINE;
    return this;
  }

  private static double[] edges(String[][] texts) {
    double[] x = new double[texts[0].length + 1];
    x[0] = LEFT;
    for (int column = 0; column < texts[0].length; column++) {
      int at = column;
      int longest =
          Arrays.stream(texts)
              .flatMap(row -> Arrays.stream(row[at].split("\n")))
              .mapToInt(String::length)
              .max()
              .orElse(0);
      x[column + 1] = x[column] + Math.max(24, longest) * (LETTER + 1);
    }
    return x;
  }

  private static Cell cell(String[][] texts, int row, int column, double[] x, double[] tops) {
    int right = column + 1;
    while (right < texts[row].length && texts[row][right].equals("<")) {
      right++;
    }
    int below = row + 1;
    while (below < texts.length && texts[below][column].equals("^")) {
      below++;
    }
    Box box = new Box(x[column], tops[row], x[right] - x[column], tops[below] - tops[row]);
    List<Line> content = new ArrayList<>();
    String text = texts[row][column];
    if (!text.isEmpty()) {
      String[] parts = text.split("\n");
      IntStream.range(0, parts.length)
          .mapToObj(i -> line(parts[i], x[column] + 2, tops[row] + 3 + LINE * i, false))
          .filter(line -> !line.words().isEmpty())
          .forEach(content::add);
    }
    return new Cell(row, column, below - row, right - column, box, content);
  }

  private static Line line(String text, double x, double y, boolean bold) {
    List<Word> words = new ArrayList<>();
    double at = x;
    for (String run : text.split("\t")) {
      for (String word : run.split("[\\s\\h\\p{Cntrl}]+")) {
        if (word.isEmpty()) {
          continue;
        }
        double width = LETTER * word.length();
        words.add(new Word(word, new Box(at, y, width, 10), 10, bold, 0, 0, false, 1));
        at += width + 3;
      }
      at += GAP;
    }
    return new Line(words);
  }
}
