package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.record.Method;
import commonsheet.sheet.Cell;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Goes down the rows of one table and makes entries of them; holds what was seen so far. */
final class TableRows {
  /** A value of so few words may stand beside a label that only says which one it is. */
  private static final int SHORT_VALUE_WORDS = 6;

  private static final int LONGEST_SECTION = 80;

  private final Grid grid;
  private final Columns columns;
  private final StatedHeadings stated;
  private final Vocabulary vocabulary;
  private final Figures parser;
  private final Naming naming;
  private final Passage context;
  private final List<Entry> entries = new ArrayList<>();
  private final SharesAtTemperature temperatures;
  private final Set<Cell> rivals = new HashSet<>();
  private String section;
  private Passage rowContext = Passage.EMPTY;
  private List<Passage> lastLabels = List.of();
  private List<Passage> lastNamed = List.of();

  TableRows(
      Grid grid,
      Vocabulary vocabulary,
      Figures parser,
      Naming naming,
      String section,
      Passage context) {
    this.grid = grid;
    this.columns = new Columns(grid, vocabulary, new ModelNames(parser, naming));
    this.stated = new StatedHeadings(grid, columns, naming);
    this.temperatures = new SharesAtTemperature(grid);
    this.vocabulary = vocabulary;
    this.parser = parser;
    this.naming = naming;
    this.section = section;
    this.context = context;
  }

  /** A table that has no heading of its own goes on with the columns of the one before. */
  void takeOver(Tables.Carry before) {
    if (!columns.isHeading(grid.row(0), 0)) {
      columns.takeOver(before.roles(), before.headings());
      lastLabels = before.labels();
      section = before.section();
    }
  }

  Tables.Carry carry() {
    return new Tables.Carry(
        grid.table().box().x(),
        grid.table().box().right(),
        columns.roles(),
        columns.headings(),
        lastLabels,
        section);
  }

  List<Entry> entries() {
    for (int row = 0; row < grid.rows(); row++) {
      List<Cell> cells = grid.row(row);
      boolean contents = cells.stream().anyMatch(c -> Clauses.CONTENTS.matcher(c.text()).find());
      if (cells.isEmpty() || contents) {
        continue;
      }
      if (columns.isHistory(cells)) {
        return entries;
      }
      if (row == 0 && (stated.isConditionTable(cells) || stated.isMatrix(cells))) {
        stated.takeColumnLabels(cells);
      } else if (columns.isHeading(cells, row)) {
        columns.takeHeading(cells);
      } else if (isSection(cells)) {
        section = cells.get(0).text().replace('\n', ' ');
      } else {
        takeRow(cells, row);
      }
    }
    return entries;
  }

  /**
   * A row of one cell over the whole table, or, where nothing is drawn, a numbered heading by
   * itself.
   */
  private boolean isSection(List<Cell> cells) {
    List<Cell> filled = Grid.filled(cells);
    if (filled.size() != 1 || grid.hasUnitFigure(filled.get(0))) {
      return false;
    }
    Cell only = filled.get(0);
    boolean numbered =
        !grid.table().ruled()
            && columns.known()
            && only.column() == 0
            && !grid.hasFigure(only)
            && Character.isDigit(only.text().charAt(0));
    return numbered
        || (only.columns() >= Math.max(2, grid.columns() - 1)
            && only.text().length() < LONGEST_SECTION);
  }

  private void takeRow(List<Cell> cells, int row) {
    if (!columns.known()) {
      columns.guess();
    }
    stated.endAt(cells);
    if (stated.takeList(cells, row)) {
      return;
    }
    if (stated.isStated(cells, row)) {
      stated.take(cells, row);
    } else {
      read(cells, row);
    }
  }

  // ---- one row ----

  /** What the cells of a row are: labels, values, conditions, a unit. */
  private final class Row {
    private final List<Passage> labels = new ArrayList<>();
    private final List<Cell> values = new ArrayList<>();
    private Passage conditions = Passage.EMPTY;
    private String unit = "";
    private boolean startsHere;

    Row(List<Cell> cells, int row) {
      for (Cell cell : Grid.filled(cells)) {
        Role role = stated.fitsList(cell) ? Role.VALUE : columns.role(cell);
        boolean starts = cell.row() == row;
        switch (role) {
          case NUMBER, OTHER -> {}
          case LABEL, SYMBOL -> {
            labels.add(grid.passage(cell));
            startsHere |= starts;
          }
          case UNIT -> takeUnit(cell);
          case CONDITION, REMARK -> conditions = conditions.then(grid.passage(cell));
          case UNKNOWN -> {
            takeUnknown(cell);
            startsHere |= starts;
          }
          default -> {
            values.add(cell);
            startsHere |= starts;
          }
        }
      }
    }

    private void takeUnit(Cell cell) {
      Columns.Unit given = columns.unit(cell);
      Passage passage = grid.passage(cell);
      unit = given.text();
      conditions =
          conditions.then(
              passage.part(
                  Math.min(given.end(), passage.text().length()), passage.text().length()));
    }

    /**
     * Without a heading: words before the first figure are labels, the figure is the value, the
     * rest conditions.
     */
    private void takeUnknown(Cell cell) {
      if ((grid.hasUnitFigure(cell) && values.isEmpty()) || grid.isBareNumber(cell)) {
        values.add(cell);
      } else if (values.isEmpty()) {
        labels.add(grid.passage(cell));
      } else {
        conditions = conditions.then(grid.passage(cell));
      }
    }
  }

  private void read(List<Cell> cells, int index) {
    Row row = new Row(cells, index);
    if (!row.startsHere) {
      return;
    }
    if (!stated.hasColumnLabels()) {
      splitValueSpan(row);
    }
    valueInRemark(row, cells);
    boolean speaksForItself =
        row.labels.isEmpty() && row.values.stream().anyMatch(this::namesItself);
    List<Passage> labels = speaksForItself ? List.of() : continued(row.labels);
    if (!row.values.isEmpty()) {
      add(grouped(labels, row.values, row.unit), row);
    } else if (!row.conditions.isBlank() && !labels.isEmpty()) {
      add(labels, row);
      rowContext = row.conditions;
    }
  }

  private boolean namesItself(Cell cell) {
    return naming.namesItself(grid.passage(cell), parser.find(cell.text()));
  }

  /**
   * Within a value column that spans several, what stands left of the value says more about the
   * label.
   */
  private void splitValueSpan(Row row) {
    List<Cell> plain =
        row.values.stream()
            .filter(c -> columns.role(c) == Role.VALUE || columns.role(c) == Role.UNKNOWN)
            .toList();
    List<Cell> withFigures = plain.stream().filter(grid::hasFigure).toList();
    if (plain.size() < 2) {
      return;
    }
    if (withFigures.size() > 1
        && withFigures.stream().map(grid::dimensions).distinct().count() == 1) {
      keepCellOverPack(row, plain);
      return;
    }
    Cell value =
        withFigures.isEmpty()
            ? plain.get(plain.size() - 1)
            : withFigures.get(withFigures.size() - 1);
    for (Cell cell : plain) {
      if (cell.column() != value.column()) {
        row.values.remove(cell);
        if (cell.column() < value.column()) {
          row.labels.add(grid.passage(cell));
        }
      }
    }
  }

  /**
   * Columns of a cell and of a pack built of it: the cell's counts. Where the headings do not tell,
   * all are rivals.
   */
  private void keepCellOverPack(Row row, List<Cell> plain) {
    List<Cell> ofCell =
        plain.stream()
            .filter(c -> vocabulary.conceptsOf(columns.headingText(c)).contains("cell"))
            .toList();
    if (!ofCell.isEmpty() && ofCell.size() < plain.size()) {
      plain.stream().filter(c -> !ofCell.contains(c)).forEach(row.values::remove);
    } else {
      rivals.addAll(plain);
    }
  }

  /**
   * "1 month | −20 to 60 °C" under "Specification | Remark": the value stands in the remark column.
   */
  private void valueInRemark(Row row, List<Cell> cells) {
    boolean onlyTimes =
        row.values.size() == 1
            && parser.find(row.values.get(0).text()).stream()
                .allMatch(f -> f.unit() != null && f.unit().dimension() == Dimension.TIME);
    List<Cell> remarks =
        Grid.filled(cells).stream().filter(c -> columns.role(c).holdsConditions()).toList();
    if (onlyTimes && remarks.size() == 1 && grid.isShortFigure(remarks.get(0))) {
      row.labels.add(grid.passage(row.values.get(0)));
      row.values.clear();
      row.values.add(remarks.get(0));
      row.conditions = Passage.EMPTY;
    }
  }

  // ---- labels that go on from rows above ----

  /**
   * A row without a label, or with one that only adds a condition, goes on with the label above.
   */
  private List<Passage> continued(List<Passage> labels) {
    if (labels.isEmpty()) {
      return lastLabels;
    }
    if (!lastLabels.isEmpty() && labels.stream().allMatch(TableRows::isBracketed)) {
      List<Passage> both = new ArrayList<>();
      both.add(withoutBrackets(lastLabels.get(0)));
      both.addAll(labels);
      return both;
    }
    lastLabels = List.copyOf(labels);
    return labels;
  }

  private static boolean isBracketed(Passage label) {
    String text = label.text().trim();
    return (text.startsWith("(") || text.startsWith("\uFF08"))
        && Naming.withoutBrackets(text).equals(text);
  }

  private static Passage withoutBrackets(Passage label) {
    int bracket = label.text().indexOf('(');
    return bracket > 0 ? label.part(0, bracket) : label;
  }

  /**
   * "Minimum" below "Capacity, typical": a label that says nothing by itself goes on with the group
   * above.
   */
  private List<Passage> grouped(List<Passage> labels, List<Cell> values, String unit) {
    Passage value = grid.passage(values.get(0));
    List<Figure> figures = grid.units().figures(value.text(), unit);
    if (naming.namesWith(labels, value, figures, section)) {
      lastNamed = labels;
      return labels;
    }
    List<Passage> both = new ArrayList<>(lastNamed);
    both.addAll(labels);
    boolean goesOn =
        !grid.table().ruled()
            && Tokens.of(value.text()).size() <= SHORT_VALUE_WORDS
            && naming.namesWith(both, value, figures, "");
    return goesOn ? both : labels;
  }

  // ---- entries ----

  private void add(List<Passage> labels, Row row) {
    if (!stated.hasColumnLabels()) {
      entries.add(entry(labels, row.values, row));
      return;
    }
    for (Cell cell : row.values) {
      List<Passage> both = new ArrayList<>(List.of(stated.columnLabel(cell)));
      both.addAll(labels);
      entries.add(entry(both, List.of(cell), row));
    }
  }

  private Entry entry(List<Passage> labels, List<Cell> valueCells, Row row) {
    boolean single = valueCells.size() == 1;
    List<Entry.Value> values = new ArrayList<>();
    for (Cell cell : valueCells) {
      List<Entry.Value> listed = stated.listValues(cell, row.unit);
      if (listed.isEmpty()) {
        values.add(value(cell, valueCells, row, single ? row.conditions : Passage.EMPTY));
      }
      values.addAll(listed);
    }
    boolean underStated =
        stated.hasColumnLabels() || values.stream().anyMatch(v -> v.role() == Role.STATED);
    Passage before = underStated ? context.then(rowContext) : Passage.EMPTY;
    if (!underStated) {
      rowContext = values.size() == 1 ? values.get(0).text() : Passage.EMPTY;
    }
    return new Entry(
        grid.page(),
        labels,
        values,
        single ? Passage.EMPTY : row.conditions,
        before,
        section,
        Method.TABLE_CELL,
        grid.table().ruled() ? "table" : "columns");
  }

  private Entry.Value value(Cell cell, List<Cell> valueCells, Row row, Passage beside) {
    if (rivals.contains(cell)) {
      return new Entry.Value(
          Role.UNKNOWN, Passage.EMPTY, grid.passage(cell), row.unit, Passage.EMPTY);
    }
    Role column = columns.role(cell);
    boolean plain =
        column == Role.UNKNOWN || column.holdsConditions() || isForAllModels(cell, valueCells);
    Passage heading =
        column == Role.STATED
            ? temperatures.under(cell, columns.heading(cell))
            : columns.heading(cell);
    Passage conditions =
        stated.hasColumnLabels() ? temperatures.inRow(cell, row.values, beside) : beside;
    return new Entry.Value(
        plain ? Role.VALUE : column, heading, grid.passage(cell), row.unit, conditions);
  }

  /**
   * Where only one of the models' cells is filled, set over the middle, it holds for all of them.
   */
  private boolean isForAllModels(Cell cell, List<Cell> valueCells) {
    return columns.modelColumns() > 1
        && Grid.filled(valueCells).size() == 1
        && (cell.columns() > 1 || !grid.table().ruled());
  }
}
