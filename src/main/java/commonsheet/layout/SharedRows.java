package commonsheet.layout;

import commonsheet.sheet.Box;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Line;
import commonsheet.sheet.Table;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts rows that a table draws as one: several labels under one number, each with its value level
 * with it. A row is parted only where every line of the label says a thing by itself, so that a
 * wrapped label stays whole.
 */
final class SharedRows {
  /** Lines whose centres differ by less than this share of their height stand level. */
  private static final double LEVEL = 0.6;

  /** Tells whether a line of a label says a thing by itself. */
  interface LabelTest {
    boolean standsAlone(String line);
  }

  private final LabelTest labels;

  SharedRows(LabelTest labels) {
    this.labels = labels;
  }

  Table parted(Table table) {
    List<Cell> cells = new ArrayList<>(table.cells());
    int rows = table.rows();
    for (int row = table.rows() - 1; row >= 0; row--) {
      List<Line> label = sharedLabel(cells, row);
      if (!label.isEmpty()) {
        cells = part(cells, row, label);
        rows += label.size() - 1;
      }
    }
    return rows == table.rows()
        ? table
        : new Table(table.box(), table.ruled(), rows, table.columns(), cells);
  }

  /** The lines of a label cell in this row that share the row; empty where none does. */
  private List<Line> sharedLabel(List<Cell> cells, int row) {
    for (Cell cell : cells) {
      if (cell.row() == row
          && cell.rows() == 1
          && cell.lines().size() > 1
          && isShared(cell, cells)) {
        return cell.lines();
      }
    }
    return List.of();
  }

  private boolean isShared(Cell label, List<Cell> cells) {
    if (!label.lines().stream().allMatch(l -> labels.standsAlone(l.text()))) {
      return false;
    }
    return cells.stream()
        .anyMatch(
            c ->
                c.row() == label.row()
                    && c.column() > label.column()
                    && c.rows() == 1
                    && level(c.lines(), label.lines())
                    && c.lines().stream().allMatch(SharedRows::hasDigit));
  }

  private static boolean hasDigit(Line line) {
    return line.text().chars().anyMatch(Character::isDigit);
  }

  private static boolean level(List<Line> a, List<Line> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      Box one = a.get(i).box();
      if (Math.abs(one.centreY() - b.get(i).box().centreY()) > LEVEL * one.height()) {
        return false;
      }
    }
    return true;
  }

  private static List<Cell> part(List<Cell> cells, int row, List<Line> label) {
    int more = label.size() - 1;
    List<Cell> parted = new ArrayList<>();
    for (Cell cell : cells) {
      if (cell.row() > row) {
        parted.add(
            new Cell(
                cell.row() + more,
                cell.column(),
                cell.rows(),
                cell.columns(),
                cell.box(),
                cell.lines()));
      } else if (cell.row() == row && cell.rows() == 1 && level(cell.lines(), label)) {
        for (int i = 0; i < label.size(); i++) {
          Line line = cell.lines().get(i);
          parted.add(
              new Cell(row + i, cell.column(), 1, cell.columns(), line.box(), List.of(line)));
        }
      } else if (cell.row() + cell.rows() > row) {
        parted.add(
            new Cell(
                cell.row(),
                cell.column(),
                cell.rows() + more,
                cell.columns(),
                cell.box(),
                cell.lines()));
      } else {
        parted.add(cell);
      }
    }
    return parted;
  }
}
