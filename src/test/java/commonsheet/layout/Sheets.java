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
import java.util.List;

/** Sheets put together by hand: a page of lines and one table. */
final class Sheets {
  private Sheets() {}

  /**
   * A page of lines of text above a table.
   *
   * @param rows of the table, each with as many texts
   */
  static Sheet of(List<String> lines, String[]... rows) {
    List<Line> text = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      text.add(line(lines.get(i), 50, 50 + 20 * i));
    }
    List<Cell> cells = new ArrayList<>();
    for (int row = 0; row < rows.length; row++) {
      for (int column = 0; column < rows[row].length; column++) {
        double x = 50 + 120 * column;
        double y = 300 + 20 * row;
        List<Line> content =
            rows[row][column].isEmpty()
                ? List.of()
                : List.of(line(rows[row][column], x + 2, y + 4));
        cells.add(new Cell(row, column, 1, 1, new Box(x, y, 120, 20), content));
      }
    }
    List<Table> tables =
        rows.length == 0
            ? List.of()
            : List.of(
                new Table(
                    new Box(50, 300, 120 * rows[0].length, 20 * rows.length),
                    true,
                    rows.length,
                    rows[0].length,
                    cells));
    List<Word> words = new ArrayList<>();
    text.forEach(line -> words.addAll(line.words()));
    cells.forEach(cell -> cell.lines().forEach(line -> words.addAll(line.words())));
    Page page = new Page(1, 595, 842, words, text, tables, List.of(), PageKind.WORDS);
    return new Sheet("sheet.pdf", "0".repeat(64), null, List.of(page));
  }

  private static Line line(String text, double x, double y) {
    List<Word> words = new ArrayList<>();
    double at = x;
    for (String word : text.split(" ")) {
      double width = 5.0 * word.length();
      words.add(new Word(word, new Box(at, y, width, 10), 10, false, 0, 0, false, 1));
      at += width + 3;
    }
    return new Line(words);
  }
}
