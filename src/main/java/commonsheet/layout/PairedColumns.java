package commonsheet.layout;

import commonsheet.quantity.Figure;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Table;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Brings tables that set labels and values side by side, or labels over values, into one column of
 * labels and one of values: "Voltage: | 3.2 V | Capacity: | 3300 mAh", or a row of names above a
 * row of figures.
 */
final class PairedColumns {
  /** So many labels must name the figure that would be theirs before a table is rearranged. */
  private static final int ENOUGH = 2;

  private final Figures parser;
  private final Naming naming;

  PairedColumns(Figures parser, Naming naming) {
    this.parser = parser;
    this.naming = naming;
  }

  /** The table with its labels in the first column; the table itself where they stand there. */
  Table inOnePair(Table table) {
    if (isSideBySide(table)) {
      return sideBySide(table);
    }
    return isLabelOverValue(table) ? labelOverValue(table) : table;
  }

  // ---- label, value, label, value ----

  private boolean isSideBySide(Table table) {
    if (table.columns() != 4 || table.cells().stream().anyMatch(c -> c.rows() > 1)) {
      return false;
    }
    int pairs = 0;
    int others = 0;
    for (int row = 0; row < table.rows(); row++) {
      boolean labels = isLabel(table, row, 0) && isLabel(table, row, 2);
      boolean named = labels && names(table, row, 0, row, 1) && names(table, row, 2, row, 3);
      pairs += named ? 1 : 0;
      others += labels || isBlank(table, row, 2) ? 0 : 1;
    }
    return pairs >= ENOUGH && others <= pairs / 2;
  }

  private static Table sideBySide(Table table) {
    List<Cell> cells = new ArrayList<>();
    for (Cell c : table.cells()) {
      int row = 2 * c.row() + (c.column() >= 2 ? 1 : 0);
      cells.add(
          new Cell(
              row,
              c.column() % 2,
              1,
              Math.min(c.columns(), 2 - c.column() % 2),
              c.box(),
              c.lines()));
    }
    return table(table, 2 * table.rows(), cells);
  }

  // ---- a row of labels over a row of values ----

  private boolean isLabelOverValue(Table table) {
    boolean spans = table.cells().stream().anyMatch(c -> c.rows() > 1 || c.columns() > 1);
    if (spans || table.rows() % 2 != 0 || table.columns() < ENOUGH || table.rows() == 0) {
      return false;
    }
    for (int row = 0; row < table.rows(); row += 2) {
      int named = 0;
      for (int column = 0; column < table.columns(); column++) {
        named += names(table, row, column, row + 1, column) ? 1 : 0;
      }
      if (named < ENOUGH || !names(table, row, 0, row + 1, 0)) {
        return false;
      }
    }
    return true;
  }

  private static Table labelOverValue(Table table) {
    List<Cell> cells = new ArrayList<>();
    for (Cell c : table.cells()) {
      int row = c.row() / 2 * table.columns() + c.column();
      cells.add(new Cell(row, c.row() % 2, 1, 1, c.box(), c.lines()));
    }
    return table(table, table.rows() / 2 * table.columns(), cells);
  }

  private static Table table(Table of, int rows, List<Cell> cells) {
    cells.sort(Comparator.comparingInt(Cell::row).thenComparingInt(Cell::column));
    return new Table(of.box(), of.ruled(), rows, 2, cells);
  }

  // ---- what a cell is ----

  private boolean isLabel(Table table, int row, int column) {
    return table
        .at(row, column)
        .filter(c -> !c.isEmpty())
        .filter(c -> unitFigures(c).isEmpty())
        .isPresent();
  }

  private static boolean isBlank(Table table, int row, int column) {
    return table.at(row, column).map(Cell::isEmpty).orElse(true);
  }

  private boolean names(Table table, int row, int column, int valueRow, int valueColumn) {
    Optional<Cell> label = table.at(row, column);
    Optional<Cell> value = table.at(valueRow, valueColumn);
    return label.isPresent()
        && value.isPresent()
        && unitFigures(value.get()).stream()
            .limit(1)
            .anyMatch(f -> naming.names(label.get().text(), f));
  }

  private List<Figure> unitFigures(Cell cell) {
    return parser.find(cell.text()).stream().filter(f -> f.unit() != null).toList();
  }
}
