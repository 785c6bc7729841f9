package commonsheet.layout;

import commonsheet.sheet.Cell;
import commonsheet.sheet.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Names of models in tables, and tables that give each model a row. */
final class ModelNames {
  private static final Pattern CODE =
      Pattern.compile(
          "(?=.*\\p{L})(?=.*\\d)([\\p{L}\\d][\\p{L}\\d\\-/.+]{3,24}|\\p{Lu}{2,6} \\d{3,6}[\\p{L}\\d\\-]{0,6})"
              + "( ?\\d{1,5} ?mAh)?");

  private final Figures parser;
  private final Naming naming;

  ModelNames(Figures parser, Naming naming) {
    this.parser = parser;
    this.naming = naming;
  }

  /** Whether a text is a name such as "BF18-26"; a figure with a unit ("0.5C") is none. */
  boolean looksLikeModel(String text) {
    String name = text.trim();
    return CODE.matcher(name).matches()
        && parser.find(name).stream().allMatch(f -> f.unit() == null);
  }

  /**
   * The table with models at the head of columns: a selection guide, which gives each model a row,
   * is turned.
   */
  Table inColumns(Table table) {
    return areInRows(table) ? turned(table) : table;
  }

  /** A selection guide has a model in every row and a quantity at the head of every column. */
  private boolean areInRows(Table table) {
    int headingRows = table.at(0, 0).map(Cell::rows).orElse(1);
    if (table.columns() < 4 || table.rows() - headingRows < 2) {
      return false;
    }
    for (int row = headingRows; row < table.rows(); row++) {
      Optional<Cell> first = table.at(row, 0);
      if (first.isEmpty() || !looksLikeModel(first.get().text())) {
        return false;
      }
    }
    long named =
        table.cells().stream()
            .filter(c -> c.row() == 0 && c.column() > 0 && naming.standsAlone(c.text()))
            .count();
    return named >= 2;
  }

  /** Rows for columns; the places of the cells on the page stay as they are. */
  private static Table turned(Table table) {
    List<Cell> cells = new ArrayList<>();
    for (Cell c : table.cells()) {
      int row = c.column();
      int column = c.row();
      int rows = c.columns();
      int columns = c.rows();
      cells.add(new Cell(row, column, rows, columns, c.box(), c.lines()));
    }
    int rows = table.columns();
    int columns = table.rows();
    return new Table(table.box(), table.ruled(), rows, columns, cells);
  }
}
