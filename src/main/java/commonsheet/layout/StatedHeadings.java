package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.sheet.Cell;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Rows and columns whose figures are no values but the conditions of others: "−10 °C | 25 °C | 60
 * °C" above shares of the capacity, "1 month | 3 months" above recoveries, a first column of
 * temperatures.
 */
final class StatedHeadings {
  private final Grid grid;
  private final Columns columns;
  private final Naming naming;
  private final Map<Integer, List<Passage>> lists = new HashMap<>();
  private final Map<Integer, Passage> columnLabels = new HashMap<>();
  private List<Role> rolesBefore = List.of();
  private List<Passage> headingsBefore = List.of();
  private int lastRow = -2;

  StatedHeadings(Grid grid, Columns columns, Naming naming) {
    this.grid = grid;
    this.columns = columns;
    this.naming = naming;
  }

  // ---- a row of conditions above the values ----

  boolean isStated(List<Cell> cells, int row) {
    String unit = grid.rowUnit(cells);
    List<Cell> figures =
        cells.stream()
            .filter(c -> dimension(c, unit) != null && columns.role(c) != Role.MODEL)
            .toList();
    if (figures.size() < 2 || row + 1 >= grid.rows() || isNamed(cells, figures.get(0), unit)) {
      return false;
    }
    Set<Dimension> kinds = new HashSet<>(figures.stream().map(c -> dimension(c, unit)).toList());
    List<Cell> below = grid.row(row + 1);
    String unitBelow = grid.rowUnit(below);
    long others =
        figures.stream()
            .filter(
                f ->
                    below.stream()
                        .anyMatch(b -> b.column() == f.column() && isOther(b, unitBelow, kinds)))
            .count();
    return kinds.size() == 1 && others >= 2;
  }

  private boolean isOther(Cell cell, String unit, Set<Dimension> kinds) {
    return !grid.unitFigures(cell, unit).isEmpty() && !kinds.contains(dimension(cell, unit));
  }

  /**
   * Whether the row's label makes its figures values of their own: "End-of-charge current | 50 mA |
   * 65 mA".
   */
  private boolean isNamed(List<Cell> cells, Cell figure, String unit) {
    Figure first = grid.unitFigures(figure, unit).get(0);
    return cells.stream()
        .anyMatch(c -> c.column() < figure.column() && naming.names(c.text(), first));
  }

  /** The kind of condition that a cell is, where it is one and nothing else. */
  private Dimension dimension(Cell cell, String rowUnit) {
    List<Figure> figures = grid.unitFigures(cell, rowUnit);
    if (figures.size() != 1
        || (figures.get(0).isRange() && figures.get(0).unit().dimension() != Dimension.TEMPERATURE)
        || cell.text().trim().length() > figures.get(0).text().length() + 8) {
      return null;
    }
    Dimension dimension = figures.get(0).unit().dimension();
    return switch (dimension) {
      case TEMPERATURE, TIME, RATE, CYCLES, CURRENT -> dimension;
      default -> null;
    };
  }

  void take(List<Cell> cells, int row) {
    boolean stacked = lastRow == row - 1;
    lastRow = row;
    if (rolesBefore.isEmpty()) {
      rolesBefore = columns.roles();
      headingsBefore = columns.headings();
    }
    String unit = grid.rowUnit(cells);
    for (Cell cell : cells) {
      if (dimension(cell, unit) != null) {
        Passage heading = withUnit(cell, unit, cells);
        columns.set(cell, Role.STATED, stacked ? columns.heading(cell).then(heading) : heading);
      }
    }
  }

  /** A bare number with the unit of its row's label: "Temperature (°C) | −20". */
  private Passage withUnit(Cell cell, String unit, List<Cell> cells) {
    Passage heading = grid.passage(cell);
    Cell first = Grid.filled(cells).get(0);
    if (first.column() < cell.column() && grid.hasUnitFigure(first)) {
      // "Temperature (1C discharge) | 0 \u00B0C": what the label adds holds for every column.
      heading = heading.then(grid.passage(first));
    }
    if (unit.isEmpty() || grid.hasUnitFigure(cell)) {
      return heading;
    }
    Passage label = grid.passage(first);
    int at = label.text().indexOf(unit);
    return heading.then(label.part(at, at + unit.length()));
  }

  /** Stated headings end where a cell spans several of their columns. */
  void endAt(List<Cell> cells) {
    boolean ends = cells.stream().anyMatch(this::spansSeveral);
    if (!rolesBefore.isEmpty() && ends) {
      columns.takeOver(rolesBefore, headingsBefore);
      rolesBefore = List.of();
    }
  }

  private boolean spansSeveral(Cell cell) {
    Set<Passage> headings = new HashSet<>();
    for (int c = cell.column(); c < Math.min(grid.columns(), cell.column() + cell.columns()); c++) {
      if (columns.roles().get(c) == Role.STATED) {
        headings.add(columns.headings().get(c));
      }
    }
    return headings.size() > 1;
  }

  // ---- several conditions in one cell above several values in one ----

  /**
   * Takes a cell that holds several conditions side by side, with as many figures of another kind
   * in the cell below.
   */
  boolean takeList(List<Cell> cells, int row) {
    if (row + 1 >= grid.rows()) {
      return false;
    }
    for (Cell cell : cells) {
      List<Figure> figures = grid.unitFigures(cell, "");
      Optional<Cell> below = grid.table().at(row + 1, cell.column());
      if (below.isPresent() && isList(cell, figures) && isListBelow(below.get(), figures)) {
        Passage text = grid.passage(cell);
        lists.put(cell.column(), figures.stream().map(f -> text.part(f.start(), f.end())).toList());
        return true;
      }
    }
    return false;
  }

  private static boolean isList(Cell cell, List<Figure> figures) {
    return figures.size() > 1
        && cell.lines().size() == 1
        && figures.stream().map(f -> f.unit().dimension()).distinct().count() == 1
        && Tokens.of(cell.text()).size() <= 3 * figures.size();
  }

  private boolean isListBelow(Cell below, List<Figure> above) {
    List<Figure> figures = grid.unitFigures(below, "");
    Dimension kind = above.get(0).unit().dimension();
    return figures.size() == above.size()
        && figures.stream().noneMatch(f -> f.unit().dimension() == kind);
  }

  boolean fitsList(Cell cell) {
    List<Passage> stated = lists.get(cell.column());
    return stated != null && grid.unitFigures(cell, "").size() == stated.size();
  }

  /** A value under each condition of the list above; none where the cell does not fit it. */
  List<Entry.Value> listValues(Cell cell, String unit) {
    if (!fitsList(cell)) {
      lists.remove(cell.column());
      return List.of();
    }
    List<Passage> stated = lists.get(cell.column());
    List<Figure> figures = grid.unitFigures(cell, "");
    Passage text = grid.passage(cell);
    List<Entry.Value> values = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      Passage figure = text.part(figures.get(i).start(), figures.get(i).end());
      values.add(new Entry.Value(Role.STATED, stated.get(i), figure, unit, Passage.EMPTY));
    }
    return values;
  }

  // ---- a first column of conditions ----

  /**
   * Below a heading without figures, a first column of nothing but temperatures, rates or times.
   */
  boolean isConditionTable(List<Cell> heading) {
    if (grid.rows() < 3
        || heading.stream().anyMatch(grid::hasUnitFigure)
        || Grid.filled(heading).size() < 2) {
      return false;
    }
    for (int row = 1; row < grid.rows(); row++) {
      Optional<Cell> first = grid.table().at(row, 0);
      if (first.isEmpty() || dimension(first.get(), "") == null) {
        return false;
      }
    }
    return true;
  }

  /**
   * Headings that say which quantity of the row is meant: "Standard | Maximum | End | Temperature"
   * beside "Charge" and "Discharge". The figures of a row are then of different kinds.
   */
  boolean isMatrix(List<Cell> heading) {
    List<Cell> filled = Grid.filled(heading);
    if (grid.rows() < 3
        || filled.size() < 3
        || filled.get(0).column() == 0
        || filled.stream().anyMatch(grid::hasFigure)
        || filled.stream().anyMatch(c -> !naming.isKnown(c.text()))) {
      return false;
    }
    for (int row = 1; row < grid.rows(); row++) {
      List<Cell> cells = grid.row(row).stream().filter(c -> c.column() > 0).toList();
      if (cells.stream().flatMap(c -> grid.dimensions(c).stream()).distinct().count() < 2) {
        return false;
      }
    }
    return true;
  }

  void takeColumnLabels(List<Cell> heading) {
    columns.allValuesButFirst();
    for (Cell cell : heading) {
      for (int c = cell.column();
          c < Math.min(grid.columns(), cell.column() + cell.columns());
          c++) {
        columnLabels.put(c, grid.passage(cell));
      }
    }
  }

  boolean hasColumnLabels() {
    return !columnLabels.isEmpty();
  }

  Passage columnLabel(Cell cell) {
    return columnLabels.getOrDefault(cell.column(), Passage.EMPTY);
  }
}
