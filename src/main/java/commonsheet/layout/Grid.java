package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A table's cells by row and column, and the figures in them. */
final class Grid {
  private final int page;
  private final Table table;
  private final Figures parser;
  private final LabelUnits units;
  private final Cell[][] byPlace;

  Grid(int page, Table table, Figures parser) {
    this.page = page;
    this.table = table;
    this.parser = parser;
    this.units = new LabelUnits(parser);
    this.byPlace = new Cell[table.rows()][table.columns()];
    for (Cell cell : table.cells()) {
      for (int row = cell.row(); row < Math.min(table.rows(), cell.row() + cell.rows()); row++) {
        Arrays.fill(
            byPlace[row],
            cell.column(),
            Math.min(table.columns(), cell.column() + cell.columns()),
            cell);
      }
    }
  }

  int page() {
    return page;
  }

  Table table() {
    return table;
  }

  int rows() {
    return table.rows();
  }

  int columns() {
    return table.columns();
  }

  LabelUnits units() {
    return units;
  }

  Passage passage(Cell cell) {
    return Passage.of(page, cell.lines());
  }

  /**
   * The cells that cover a row, left to right, each once, empty ones included; none for a row
   * without words.
   */
  List<Cell> row(int row) {
    List<Cell> cells = new ArrayList<>();
    for (int column = 0; column < byPlace[row].length; column++) {
      Cell cell = byPlace[row][column];
      if (cell != null && cell.column() == column) {
        cells.add(cell);
      }
    }
    return cells.stream().allMatch(Cell::isEmpty) ? List.of() : cells;
  }

  static List<Cell> filled(List<Cell> cells) {
    return cells.stream().filter(c -> !c.isEmpty()).toList();
  }

  List<String> columnTexts(int column) {
    return table.cells().stream()
        .filter(c -> c.column() == column && !c.isEmpty())
        .map(c -> c.text().trim())
        .toList();
  }

  boolean hasFigure(Cell cell) {
    return !parser.find(cell.text()).isEmpty();
  }

  boolean hasUnitFigure(Cell cell) {
    return !unitFigures(cell, "").isEmpty();
  }

  /** The figures of a cell that have a unit, their own or that of their row. */
  List<Figure> unitFigures(Cell cell, String rowUnit) {
    return units.figures(cell.text(), rowUnit).stream().filter(f -> f.unit() != null).toList();
  }

  Set<Dimension> dimensions(Cell cell) {
    Set<Dimension> dimensions = new HashSet<>();
    unitFigures(cell, "").forEach(f -> dimensions.add(f.unit().dimension()));
    return dimensions;
  }

  boolean isBareNumber(Cell cell) {
    return parser.find(cell.text()).size() == 1 && cell.text().trim().length() <= 12;
  }

  /** Whether a cell holds one figure with a unit and little else. */
  boolean isShortFigure(Cell cell) {
    List<Figure> figures = parser.find(cell.text());
    return figures.size() == 1
        && figures.get(0).unit() != null
        && figures.get(0).text().length() + 6 >= cell.text().trim().length();
  }

  /**
   * The unit that the first cell of a row gives in brackets for the numbers beside it; empty where
   * it gives none.
   */
  String rowUnit(List<Cell> cells) {
    List<Cell> filled = filled(cells);
    return filled.isEmpty() ? "" : units.inBrackets(filled.get(0).text());
  }
}
