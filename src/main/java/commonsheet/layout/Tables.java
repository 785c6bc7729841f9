package commonsheet.layout;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.record.Method;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Table;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns the rows of a table into entries: what each column holds, which labels a row has, what stands beside it. */
final class Tables {
  private static final Pattern CLAUSE_NUMBER = Pattern.compile("\\(?\\d{1,2}([.．]\\d{1,2}){0,3}[.)]?|[IVX]{1,4}|[a-z][.)]");
  private static final Pattern MODEL_CODE =
      Pattern.compile("(?=.*\\p{L})(?=.*\\d)([\\p{L}\\d][\\p{L}\\d\\-/.+]{3,24}|\\p{Lu}{2,6} \\d{3,6}[\\p{L}\\d\\-]{0,6})( ?\\d{1,5} ?mAh)?");

  /** "[mAh] at 0.2 C": the unit, then what it is measured at. */
  private static final Pattern BRACKETED_UNIT = Pattern.compile("\\s*\\[([^\\]\\d]{1,8})\\]");

  private final Vocabulary vocabulary;
  private final FigureParser parser;
  private final Naming naming;

  Tables(Vocabulary vocabulary, FigureParser parser, Naming naming) {
    this.vocabulary = vocabulary;
    this.parser = parser;
    this.naming = naming;
  }

  /**
   * @param section the heading above the table
   * @param context the paragraph above the table
   */
  Result entries(int page, Table table, String section, Passage context, Carry before) {
    Table read = modelsInRows(table) ? turned(table) : table;
    Reading reading = new Reading(page, read, section, context);
    if (before != null && before.goesOnIn(read)) {
      reading.takeOver(before);
    }
    List<Entry> entries = reading.entries();
    return new Result(entries, reading.carry());
  }

  /** A selection guide: a model in every row, a quantity at the head of every column. */
  private boolean modelsInRows(Table table) {
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
        table.cells().stream().filter(c -> c.row() == 0 && c.column() > 0 && naming.standsAlone(c.text())).count();
    return named >= 2;
  }

  /** Rows for columns; the places of the cells on the page stay as they are. */
  private static Table turned(Table table) {
    List<Cell> cells = new ArrayList<>();
    for (Cell c : table.cells()) {
      cells.add(new Cell(c.column(), c.row(), c.columns(), c.rows(), c.box(), c.lines()));
    }
    return new Table(table.box(), table.ruled(), table.columns(), table.rows(), cells);
  }

  /** What a table gave, and what a continuation of it on the next page must know. */
  record Result(List<Entry> entries, Carry carry) {}

  /** The columns and the last labels of a table that may go on on the next page. */
  record Carry(double left, double right, List<Role> roles, List<Passage> headings, List<Passage> labels, String section) {
    /** Columns of several models hold for the tables below on the same page. */
    boolean hasModels() {
      return roles.contains(Role.MODEL);
    }

    boolean goesOnIn(Table table) {
      return table.columns() == roles.size()
          && Math.abs(table.box().x() - left) < 12
          && (Math.abs(table.box().right() - right) < 12 || hasModels() && Math.abs(table.box().right() - right) < 60);
    }
  }

  /** Whether a text is a name such as "BF18-26"; a figure with a unit ("0.5C") is none. */
  private boolean looksLikeModel(String text) {
    String name = text.trim();
    return MODEL_CODE.matcher(name).matches() && parser.find(name).stream().allMatch(f -> f.unit() == null);
  }

  /** The reading of one table; holds what was seen so far while going down its rows. */
  private final class Reading {
    private final int page;
    private final Table table;
    private final Passage context;
    private final Role[] roles;
    private final Passage[] headings;
    private final List<Entry> entries = new ArrayList<>();
    private String section;
    private Passage rowContext = Passage.EMPTY;
    private List<Passage> lastLabels = List.of();
    private List<Passage> lastNamed = List.of();
    private boolean headed;
    private Role[] rolesBefore;
    private final List<Passage>[] lists;
    private final Passage[] columnLabels;
    private final String[] headingTexts;
    private final Set<Cell> rivals = new HashSet<>();
    private int lastStatedRow = -2;

    Reading(int page, Table table, String section, Passage context) {
      this.page = page;
      this.table = table;
      this.section = section;
      this.context = context;
      this.roles = new Role[table.columns()];
      this.headings = new Passage[table.columns()];
      this.lists = newLists(table.columns());
      this.columnLabels = new Passage[table.columns()];
      this.headingTexts = new String[table.columns()];
      Arrays.fill(roles, Role.UNKNOWN);
      Arrays.fill(headings, Passage.EMPTY);
    }

    @SuppressWarnings("unchecked")
    private static List<Passage>[] newLists(int size) {
      return new List[size];
    }

    /** A table that has no heading of its own goes on with the columns of the one before. */
    void takeOver(Carry before) {
      if (isHeader(row(0), 0)) {
        return;
      }
      headed = true;
      for (int c = 0; c < roles.length; c++) {
        roles[c] = before.roles().get(c);
        headings[c] = before.headings().get(c);
      }
      lastLabels = before.labels();
      section = before.section();
    }

    Carry carry() {
      return new Carry(
          table.box().x(), table.box().right(), List.of(roles), List.of(headings), lastLabels, section);
    }

    List<Entry> entries() {
      for (int row = 0; row < table.rows(); row++) {
        List<Cell> cells = row(row);
        if (cells.isEmpty() || cells.stream().anyMatch(c -> Clauses.CONTENTS.matcher(c.text()).find())) {
          continue;
        }
        if (row == 0 && isConditionTable(cells)) {
          takeColumnLabels(cells);
          continue;
        }
        if (isHistory(cells)) {
          return entries;
        }
        if (isHeader(cells, row)) {
          takeHeader(cells);
        } else if (isSection(cells)) {
          section = cells.get(0).text().replace('\n', ' ');
        } else {
          if (!headed) {
            guessRoles();
          }
          endStated(cells);
          if (takeStatedList(cells, row)) {
            continue;
          }
          if (isStated(cells, row)) {
            takeStated(cells, row);
          } else {
            read(cells, row);
          }
        }
      }
      return entries;
    }

    /** The cells that cover a row, left to right, each once, empty ones included. */
    private List<Cell> row(int row) {
      List<Cell> cells = new ArrayList<>();
      for (int column = 0; column < table.columns(); column++) {
        Optional<Cell> cell = table.at(row, column);
        if (cell.isPresent() && !cells.contains(cell.get())) {
          cells.add(cell.get());
        }
      }
      return cells.stream().allMatch(Cell::isEmpty) ? List.of() : cells;
    }

    private Passage passage(Cell cell) {
      return Passage.of(page, cell.lines());
    }

    // ---- columns ----

    private boolean isHeader(List<Cell> cells, int row) {
      List<Cell> filled = cells.stream().filter(c -> !c.isEmpty()).toList();
      List<Role> known =
          filled.stream().map(c -> vocabulary.role(c.text())).flatMap(Optional::stream).distinct().toList();
      if (known.size() >= 2 && filled.stream().noneMatch(this::hasUnitFigure)) {
        return true;
      }
      boolean models = filled.size() >= 3 && filled.stream().skip(1).filter(c -> looksLikeModel(c.text())).count() >= 2;
      boolean labels = known.size() == 1 && known.get(0) == Role.LABEL && filled.size() >= 2;
      models |= namesModels(filled);
      boolean cellAndPack = filled.stream().anyMatch(c -> isOf(c, "cell")) && filled.stream().anyMatch(c -> isOf(c, "pack") && !isOf(c, "cell"));
      models |= cellAndPack && filled.stream().noneMatch(this::hasUnitFigure);
      return row == 0 && (models || labels && filled.stream().noneMatch(this::hasFigure));
    }

    /** Below a heading without figures, a first column of nothing but temperatures, rates or times. */
    private boolean isConditionTable(List<Cell> heading) {
      if (table.rows() < 3 || heading.stream().anyMatch(this::hasUnitFigure) || heading.stream().filter(c -> !c.isEmpty()).count() < 2) {
        return false;
      }
      for (int row = 1; row < table.rows(); row++) {
        Optional<Cell> first = table.at(row, 0);
        if (first.isEmpty() || statedDimension(first.get()) == null) {
          return false;
        }
      }
      return true;
    }

    private void takeColumnLabels(List<Cell> heading) {
      headed = true;
      Arrays.fill(roles, Role.VALUE);
      roles[0] = Role.LABEL;
      for (Cell cell : heading) {
        for (int c = cell.column(); c < cell.column() + cell.columns() && c < roles.length; c++) {
          columnLabels[c] = passage(cell);
        }
      }
    }

    /** "Version | Date | Remarks": a table of the document's own revisions. */
    private boolean isHistory(List<Cell> cells) {
      return cells.stream().map(c -> vocabulary.identityHits(c.text())).filter(h -> h.stream().anyMatch(x -> x.means("revision") || x.means("date"))).count() >= 2
          && cells.stream().noneMatch(this::hasUnitFigure);
    }

    /** "Type | EZ 503450 | EZ 604878": the label says that what stands beside it are models. */
    private boolean namesModels(List<Cell> filled) {
      List<Hit> hits = vocabulary.identityHits(filled.get(0).text());
      return filled.size() >= 3
          && hits.stream().anyMatch(h -> h.means("model"))
          && filled.stream().skip(1).allMatch(c -> c.text().chars().anyMatch(Character::isDigit) && !hasUnitFigure(c));
    }

    private void takeHeader(List<Cell> cells) {
      headed = true;
      Arrays.fill(roles, Role.UNKNOWN);
      Arrays.fill(headings, Passage.EMPTY);
      boolean models = namesModels(cells.stream().filter(c -> !c.isEmpty()).toList());
      int firstFilled = cells.stream().filter(c -> !c.isEmpty()).findFirst().map(Cell::column).orElse(0);
      for (Cell cell : cells) {
        Optional<Role> role = role(cell);
        boolean named = models && cell.column() > firstFilled && !cell.isEmpty();
        boolean model = named || role.isEmpty() && looksLikeModel(cell.text());
        for (int c = cell.column(); c < cell.column() + cell.columns() && c < roles.length; c++) {
          headingTexts[c] = cell.text();
          roles[c] = model ? Role.MODEL : role.orElse(Role.UNKNOWN);
          if (model || roles[c].holdsValues()) {
            headings[c] = passage(cell);
          }
        }
      }
      setPackAside(cells);
      guessNumbersAndUnits();
      if (Arrays.stream(roles).noneMatch(r -> r == Role.LABEL)) {
        nameLabelColumn();
      }
      if (Arrays.stream(roles).noneMatch(Role::holdsValues)) {
        nameValueColumn(cells);
      }
    }

    /** Two headings in one cell ("Typ Max" over an empty column): the one that stands over the figures counts. */
    private Optional<Role> role(Cell heading) {
      List<Hit> hits = vocabulary.roleHits(heading.text());
      if (hits.stream().map(Hit::means).distinct().count() < 2 || heading.lines().size() > 1) {
        return vocabulary.role(heading.text());
      }
      Passage passage = passage(heading);
      double centre =
          table.cells().stream()
              .filter(c -> c.column() == heading.column() && c.row() > heading.row() && !c.isEmpty())
              .mapToDouble(c -> Passage.of(page, c.lines()).box().centreX())
              .average()
              .orElse(heading.box().centreX());
      return hits.stream()
          .min(Comparator.comparingDouble(h -> Math.abs(passage.box(h.start(), h.end()).centreX() - centre)))
          .map(h -> Role.named(h.means().get(0)));
    }

    /** "Single cell | Battery pack": the pack's column says nothing about the cell. */
    private void setPackAside(List<Cell> cells) {
      boolean aCell = cells.stream().anyMatch(c -> isOf(c, "cell"));
      for (Cell cell : cells) {
        if (aCell && isOf(cell, "pack") && !isOf(cell, "cell")) {
          Arrays.fill(roles, cell.column(), Math.min(roles.length, cell.column() + cell.columns()), Role.OTHER);
        }
      }
    }

    private boolean isOf(Cell cell, String concept) {
      return vocabulary.conceptsOf(cell.text()).contains(concept);
    }

    /** "Item | Characteristics | Remark": of two headings that could head the labels, the later heads the values. */
    private void nameValueColumn(List<Cell> cells) {
      List<Cell> labels = cells.stream().filter(c -> roles[c.column()] == Role.LABEL).toList();
      if (labels.size() < 2) {
        return;
      }
      Cell last = labels.get(labels.size() - 1);
      Arrays.fill(roles, last.column(), Math.min(roles.length, last.column() + last.columns()), Role.VALUE);
    }

    private void nameLabelColumn() {
      for (int c = 0; c < roles.length; c++) {
        if (roles[c] == Role.UNKNOWN) {
          roles[c] = Role.LABEL;
          return;
        }
      }
      for (int c = 0; c < roles.length; c++) {
        if (roles[c] == Role.SYMBOL) {
          roles[c] = Role.LABEL;
          return;
        }
      }
    }

    private void guessRoles() {
      headed = true;
      guessNumbersAndUnits();
      nameLabelColumn();
    }

    /** A first column of clause numbers, a later one of units: told by what stands in them, headed or not. */
    private void guessNumbersAndUnits() {
      for (int c = 0; c < roles.length; c++) {
        List<String> texts = columnTexts(c);
        if (roles[c] == Role.UNKNOWN && !texts.isEmpty()) {
          long numbers = texts.stream().filter(t -> CLAUSE_NUMBER.matcher(t).matches()).count();
          long units = texts.stream().filter(this::isUnit).count();
          if (c == 0 && numbers * 10 >= texts.size() * 6L) {
            roles[c] = Role.NUMBER;
          } else if (c > 0 && units * 10 >= texts.size() * 6L) {
            roles[c] = Role.UNIT;
          }
        }
      }
    }

    private List<String> columnTexts(int column) {
      return table.cells().stream()
          .filter(c -> c.column() == column && !c.isEmpty())
          .map(c -> c.text().trim())
          .toList();
    }

    private boolean isUnit(String text) {
      if (BRACKETED_UNIT.matcher(text).lookingAt()) {
        return true;
      }
      List<Figure> figures = parser.find("1 " + text);
      return figures.size() == 1 && figures.get(0).unit() != null && figures.get(0).end() >= text.length() + 1
          && !Character.isDigit(text.charAt(0));
    }

    private boolean hasFigure(Cell cell) {
      return !parser.find(cell.text()).isEmpty();
    }

    private boolean hasUnitFigure(Cell cell) {
      return parser.find(cell.text()).stream().anyMatch(f -> f.unit() != null);
    }

    private boolean isSection(List<Cell> cells) {
      List<Cell> filled = cells.stream().filter(c -> !c.isEmpty()).toList();
      if (filled.size() == 1 && !table.ruled() && !hasFigure(filled.get(0)) && filled.get(0).column() == 0 && headed && startsClause(filled.get(0).text())) {
        return true;
      }
      return filled.size() == 1 && filled.get(0).columns() >= Math.max(2, table.columns() - 1) && !hasUnitFigure(filled.get(0))
          && filled.get(0).text().length() < 80;
    }

    private boolean startsClause(String text) {
      return Character.isDigit(text.charAt(0));
    }

    // ---- rows whose figures are conditions of the rows below ----

    private boolean isStated(List<Cell> cells, int row) {
      List<Cell> figures = cells.stream().filter(c -> statedDimension(c) != null && roles[c.column()] != Role.MODEL).toList();
      if (figures.size() < 2 || row + 1 >= table.rows() || isNamed(cells, figures.get(0))) {
        return false;
      }
      Set<Dimension> kinds = new HashSet<>(figures.stream().map(this::statedDimension).toList());
      if (kinds.size() != 1) {
        return false;
      }
      List<Cell> below = row(row + 1);
      long others =
          figures.stream()
              .filter(
                  f ->
                      below.stream()
                          .anyMatch(
                              b -> b.column() == f.column() && hasUnitFigure(b) && !kinds.contains(statedDimension(b))))
              .count();
      return others >= 2;
    }

    /** Whether the row's label makes its figures values of their own: "End-of-charge current | 50 mA | 65 mA". */
    private boolean isNamed(List<Cell> cells, Cell figure) {
      Figure first = parser.find(figure.text()).get(0);
      return cells.stream().anyMatch(c -> c.column() < figure.column() && naming.names(c.text(), first));
    }

    private Dimension statedDimension(Cell cell) {
      List<Figure> figures = parser.find(cell.text()).stream().filter(f -> f.unit() != null).toList();
      if (figures.size() != 1 || figures.get(0).isRange() || cell.text().trim().length() > figures.get(0).text().length() + 8) {
        return null;
      }
      Dimension dimension = figures.get(0).unit().dimension();
      return switch (dimension) {
        case TEMPERATURE, TIME, RATE, CYCLES, CURRENT -> dimension;
        default -> null;
      };
    }

    /** A cell that holds several stated figures side by side, with as many figures of another kind in the cell below. */
    private boolean takeStatedList(List<Cell> cells, int row) {
      if (row + 1 >= table.rows()) {
        return false;
      }
      for (Cell cell : cells) {
        List<Figure> figures = parser.find(cell.text()).stream().filter(f -> f.unit() != null).toList();
        Set<Dimension> kinds = new HashSet<>(figures.stream().map(f -> f.unit().dimension()).toList());
        Optional<Cell> below = table.at(row + 1, cell.column());
        if (figures.size() < 2 || cell.lines().size() > 1 || kinds.size() != 1 || below.isEmpty() || Tokens.of(cell.text()).size() > 3 * figures.size()) {
          continue;
        }
        List<Figure> under = parser.find(below.get().text()).stream().filter(f -> f.unit() != null).toList();
        if (under.size() == figures.size() && under.stream().noneMatch(f -> kinds.contains(f.unit().dimension()))) {
          Passage text = passage(cell);
          lists[cell.column()] = figures.stream().map(f -> text.part(f.start(), f.end())).toList();
          return true;
        }
      }
      return false;
    }

    private void takeStated(List<Cell> cells, int row) {
      boolean stacked = lastStatedRow == row - 1;
      lastStatedRow = row;
      if (rolesBefore == null) {
        rolesBefore = roles.clone();
      }
      for (Cell cell : cells) {
        if (statedDimension(cell) != null) {
          for (int c = cell.column(); c < cell.column() + cell.columns() && c < roles.length; c++) {
            roles[c] = Role.STATED;
            headings[c] = stacked ? headings[c].then(passage(cell)) : passage(cell);
          }
        }
      }
    }

    /** Stated headings end where a cell spans several of their columns. */
    private void endStated(List<Cell> cells) {
      if (rolesBefore == null) {
        return;
      }
      for (Cell cell : cells) {
        long stated = 0;
        for (int c = cell.column(); c < cell.column() + cell.columns() && c < roles.length; c++) {
          stated += roles[c] == Role.STATED ? 1 : 0;
        }
        boolean sameHeading = headings[cell.column()].box() != null
            && cell.columns() > 1
            && headings[cell.column()] == headings[Math.min(roles.length, cell.column() + cell.columns()) - 1];
        if (stated > 1 && !sameHeading) {
          System.arraycopy(rolesBefore, 0, roles, 0, roles.length);
          Arrays.fill(headings, Passage.EMPTY);
          rolesBefore = null;
          return;
        }
      }
    }

    // ---- rows ----

    private void read(List<Cell> cells, int row) {
      List<Passage> labels = new ArrayList<>();
      List<Cell> valueCells = new ArrayList<>();
      Passage conditions = Passage.EMPTY;
      String unit = "";
      boolean startsHere = false;
      boolean figureSeen = false;
      for (Cell cell : cells) {
        if (cell.isEmpty()) {
          continue;
        }
        Role role = fitsList(cell) ? Role.VALUE : roles[cell.column()];
        switch (role) {
          case NUMBER, OTHER -> {}
          case LABEL, SYMBOL -> {
            labels.add(passage(cell));
            startsHere |= cell.row() == row;
          }
          case UNIT -> {
            Matcher bracketed = BRACKETED_UNIT.matcher(cell.text());
            if (bracketed.lookingAt()) {
              unit = bracketed.group(1);
              conditions = conditions.then(passage(cell).part(bracketed.end(), passage(cell).text().length()));
            } else {
              unit = cell.text().trim();
            }
          }
          case CONDITION, REMARK -> conditions = conditions.then(passage(cell));
          case UNKNOWN -> {
            if (hasUnitFigure(cell) && !figureSeen || isBareNumber(cell)) {
              valueCells.add(cell);
              figureSeen = true;
            } else if (figureSeen) {
              conditions = conditions.then(passage(cell));
            } else {
              labels.add(passage(cell));
            }
            startsHere |= cell.row() == row;
          }
          default -> {
            valueCells.add(cell);
            startsHere |= cell.row() == row;
          }
        }
      }
      if (!startsHere) {
        return;
      }
      splitValueSpan(labels, valueCells);
      conditions = valueInRemark(labels, valueCells, conditions, cells);
      labels = valueCells.stream().anyMatch(this::namesItself) && labels.isEmpty() ? List.of() : continued(labels);
      if (valueCells.isEmpty()) {
        if (!conditions.isBlank() && !labels.isEmpty()) {
          add(labels, List.of(), conditions, unit);
          rowContext = conditions;
        }
        return;
      }
      add(grouped(labels, valueCells, unit), valueCells, conditions, unit);
    }

    /** "Minimum" below "Capacity, typical": a label that says nothing by itself goes on with the group above. */
    private List<Passage> grouped(List<Passage> labels, List<Cell> valueCells, String unit) {
      Passage value = passage(valueCells.get(0));
      List<Figure> figures = EntryReader.withUnits(parser, parser.find(value.text()), unit);
      if (naming.namesWith(labels, value, figures, section)) {
        lastNamed = labels;
        return labels;
      }
      List<Passage> both = new ArrayList<>(lastNamed);
      both.addAll(labels);
      boolean short0 = Tokens.of(value.text()).size() <= 6;
      return short0 && !table.ruled() && naming.namesWith(both, value, figures, "") ? both : labels;
    }

    private boolean namesItself(Cell cell) {
      return naming.namesItself(passage(cell), parser.find(cell.text()));
    }

    /** "1 month | −20 to 60 °C" under "Specification | Remark": the value stands in the remark column. */
    private Passage valueInRemark(List<Passage> labels, List<Cell> valueCells, Passage conditions, List<Cell> cells) {
      boolean onlyTimes =
          valueCells.size() == 1
              && parser.find(valueCells.get(0).text()).stream()
                  .allMatch(f -> f.unit() != null && f.unit().dimension() == Dimension.TIME);
      List<Cell> remarks = cells.stream().filter(c -> !c.isEmpty() && roles[c.column()].holdsConditions()).toList();
      if (!onlyTimes || remarks.size() != 1 || !isShortFigure(remarks.get(0))) {
        return conditions;
      }
      labels.add(passage(valueCells.get(0)));
      valueCells.clear();
      valueCells.add(remarks.get(0));
      return Passage.EMPTY;
    }

    private boolean isShortFigure(Cell cell) {
      List<Figure> figures = parser.find(cell.text());
      return figures.size() == 1
          && figures.get(0).unit() != null
          && figures.get(0).text().length() + 6 >= cell.text().trim().length();
    }

    private boolean isBareNumber(Cell cell) {
      return parser.find(cell.text()).size() == 1 && cell.text().trim().length() <= 12;
    }

    /** Within a value column that spans several, what stands left of the value says more about the label. */
    private void splitValueSpan(List<Passage> labels, List<Cell> valueCells) {
      List<Cell> plain = valueCells.stream().filter(c -> roles[c.column()] == Role.VALUE || roles[c.column()] == Role.UNKNOWN).toList();
      if (plain.size() < 2) {
        return;
      }
      if (plain.stream().filter(this::hasFigure).map(this::dimensions).distinct().count() == 1 && plain.stream().filter(this::hasFigure).count() > 1) {
        keepCellOverPack(valueCells, plain);
        return;
      }
      Cell last = plain.get(plain.size() - 1);
      for (int i = plain.size() - 1; i >= 0; i--) {
        if (hasFigure(plain.get(i))) {
          last = plain.get(i);
          break;
        }
      }
      for (Cell cell : plain) {
        if (cell.column() != last.column()) {
          if (cell.column() < last.column()) {
            labels.add(passage(cell));
          }
          valueCells.remove(cell);
        }
      }
    }

    private Set<Dimension> dimensions(Cell cell) {
      Set<Dimension> dimensions = new HashSet<>();
      parser.find(cell.text()).stream().filter(f -> f.unit() != null).forEach(f -> dimensions.add(f.unit().dimension()));
      return dimensions;
    }

    /** Columns of a cell and of a pack built of it: the cell's counts. Where the headings do not tell, all are rivals. */
    private void keepCellOverPack(List<Cell> valueCells, List<Cell> plain) {
      List<Cell> ofCell = plain.stream().filter(c -> conceptsOfHeading(c).contains("cell")).toList();
      if (!ofCell.isEmpty() && ofCell.size() < plain.size()) {
        plain.stream().filter(c -> !ofCell.contains(c)).forEach(valueCells::remove);
        return;
      }
      plain.forEach(c -> rivals.add(c));
    }

    private Set<String> conceptsOfHeading(Cell cell) {
      return vocabulary.conceptsOf(headingTexts[cell.column()] == null ? "" : headingTexts[cell.column()]);
    }

    /** A row without a label, or with one that only adds a condition, goes on with the label above. */
    private List<Passage> continued(List<Passage> labels) {
      boolean onlyCondition = !labels.isEmpty() && labels.stream().allMatch(Reading::isBracketed);
      if (labels.isEmpty()) {
        return lastLabels;
      }
      if (onlyCondition && !lastLabels.isEmpty()) {
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
      return (text.startsWith("(") || text.startsWith("\uFF08")) && Naming.withoutBrackets(text).equals(text);
    }

    private Passage withoutBrackets(Passage label) {
      int bracket = label.text().indexOf('(');
      return bracket > 0 ? label.part(0, bracket) : label;
    }

    /** Where only one of the models' cells is filled, set over the middle, it holds for all of them. */
    private boolean isForAllModels(Cell cell, List<Cell> valueCells) {
      long models = Arrays.stream(roles).filter(r -> r == Role.MODEL).count();
      long filled = valueCells.stream().filter(c -> !c.isEmpty()).count();
      return models > 1 && filled == 1 && (cell.columns() > 1 || !table.ruled());
    }

    private boolean fitsList(Cell cell) {
      List<Passage> stated = lists[cell.column()];
      return stated != null
          && parser.find(cell.text()).stream().filter(f -> f.unit() != null).count() == stated.size();
    }

    /** "90 % 85 % 80 %" in one cell below "1 month 3 months 6 months" in one cell: a value under each heading. */
    private boolean addList(List<Entry.Value> values, Cell cell, String unit) {
      List<Passage> stated = lists[cell.column()];
      List<Figure> figures = parser.find(cell.text()).stream().filter(f -> f.unit() != null).toList();
      if (stated == null || stated.size() != figures.size()) {
        lists[cell.column()] = null;
        return false;
      }
      Passage text = passage(cell);
      for (int i = 0; i < figures.size(); i++) {
        Passage figure = text.part(figures.get(i).start(), figures.get(i).end());
        values.add(new Entry.Value(Role.STATED, stated.get(i), figure, unit, Passage.EMPTY));
      }
      return true;
    }

    private void add(List<Passage> labels, List<Cell> valueCells, Passage conditions, String unit) {
      if (columnLabels[0] != null && valueCells.size() > 1) {
        valueCells.forEach(cell -> add(labels, List.of(cell), conditions, unit));
        return;
      }
      if (columnLabels[0] != null && valueCells.size() == 1) {
        List<Passage> both = new ArrayList<>(List.of(columnLabels[valueCells.get(0).column()]));
        both.addAll(labels);
        entries.add(entry(both, valueCells, conditions, unit));
        return;
      }
      entries.add(entry(labels, valueCells, conditions, unit));
    }

    private Entry entry(List<Passage> labels, List<Cell> valueCells, Passage conditions, String unit) {
      List<Entry.Value> values = new ArrayList<>();
      for (Cell cell : valueCells) {
        Role column = roles[cell.column()];
        if (rivals.contains(cell)) {
          values.add(new Entry.Value(Role.UNKNOWN, Passage.EMPTY, passage(cell), unit, Passage.EMPTY));
          continue;
        }
        Role role = column == Role.UNKNOWN || column.holdsConditions() || isForAllModels(cell, valueCells) ? Role.VALUE : column;
        if (addList(values, cell, unit)) {
          continue;
        }
        Passage beside = valueCells.size() > 1 ? Passage.EMPTY : conditions;
        values.add(new Entry.Value(role, headings[cell.column()], passage(cell), unit, beside));
      }
      Passage common = valueCells.size() == 1 ? Passage.EMPTY : conditions;
      boolean stated = columnLabels[0] != null || values.stream().anyMatch(v -> v.role() == Role.STATED);
      Passage before = stated ? context.page() == page || context.isBlank() ? context.then(rowContext) : rowContext : Passage.EMPTY;
      if (!stated) {
        rowContext = values.size() == 1 ? values.get(0).text() : Passage.EMPTY;
      }
      return new Entry(
          page, labels, values, common, before, section, Method.TABLE_CELL, table.ruled() ? "table" : "columns");
    }
  }
}
