package commonsheet.layout;

import commonsheet.sheet.Cell;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the columns of a table hold: told by a heading row, by what stands in them, or by the table
 * before.
 */
final class Columns {
  private static final Pattern CLAUSE_NUMBER =
      Pattern.compile("\\(?\\d{1,2}([.\uFF0E]\\d{1,2}){0,3}[.)]?|[IVX]{1,4}|[a-z][.)]");

  /** "[mAh] at 0.2 C": the unit, then what it is measured at. */
  private static final Pattern BRACKETED_UNIT = Pattern.compile("\\s*\\[([^\\]\\d]{1,8})\\]");

  /** A model's name has no more words than this. Common practice, no source. */
  private static final int LONGEST_NAME_WORDS = 3;

  /** A column is what this share of its cells, in tenths, are. */
  private static final int MOSTLY = 6;

  private final Grid grid;
  private final Vocabulary vocabulary;
  private final ModelNames models;
  private final Role[] roles;
  private final Passage[] headings;
  private final String[] headingTexts;
  private boolean known;

  Columns(Grid grid, Vocabulary vocabulary, ModelNames models) {
    this.grid = grid;
    this.vocabulary = vocabulary;
    this.models = models;
    this.roles = new Role[grid.columns()];
    this.headings = new Passage[grid.columns()];
    this.headingTexts = new String[grid.columns()];
    forget();
  }

  private void forget() {
    Arrays.fill(roles, Role.UNKNOWN);
    Arrays.fill(headings, Passage.EMPTY);
    Arrays.fill(headingTexts, "");
  }

  boolean known() {
    return known;
  }

  Role role(Cell cell) {
    return roles[cell.column()];
  }

  Passage heading(Cell cell) {
    return headings[cell.column()];
  }

  String headingText(Cell cell) {
    return headingTexts[cell.column()];
  }

  List<Role> roles() {
    return List.of(roles);
  }

  List<Passage> headings() {
    return List.of(headings);
  }

  long modelColumns() {
    return Arrays.stream(roles).filter(r -> r == Role.MODEL).count();
  }

  /** Sets what the columns under a cell hold. */
  void set(Cell cell, Role role, Passage heading) {
    for (int c = cell.column(); c < end(cell); c++) {
      roles[c] = role;
      headings[c] = heading;
    }
  }

  private int end(Cell cell) {
    return Math.min(roles.length, cell.column() + cell.columns());
  }

  /** The columns of a table that has no heading of its own are those of the one before. */
  void takeOver(List<Role> otherRoles, List<Passage> otherHeadings) {
    known = true;
    for (int c = 0; c < roles.length; c++) {
      roles[c] = otherRoles.get(c);
      headings[c] = otherHeadings.get(c);
    }
  }

  void allValuesButFirst() {
    known = true;
    Arrays.fill(roles, Role.VALUE);
    roles[0] = Role.LABEL;
  }

  // ---- by a heading ----

  boolean isHeading(List<Cell> cells, int row) {
    List<Cell> filled = Grid.filled(cells);
    if (filled.isEmpty()) {
      return false;
    }
    List<Role> named =
        filled.stream()
            .map(c -> vocabulary.role(c.text()))
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    boolean noFigures = filled.stream().noneMatch(grid::hasUnitFigure);
    if (named.size() >= 2 && noFigures) {
      return true;
    }
    boolean labels =
        named.size() == 1
            && named.get(0) == Role.LABEL
            && filled.size() >= 2
            && filled.stream().noneMatch(grid::hasFigure);
    return row == 0 && (labels || headsModels(filled) || (noFigures && headsCellAndPack(filled)));
  }

  private boolean headsModels(List<Cell> filled) {
    boolean codes =
        filled.size() >= 3
            && filled.stream().skip(1).filter(c -> models.looksLikeModel(c.text())).count() >= 2;
    return codes || announcesModels(filled);
  }

  /** "Type | EZ 503450 | EZ 604878": the label says that what stands beside it are models. */
  private boolean announcesModels(List<Cell> filled) {
    return filled.size() >= 3
        && vocabulary.identityHits(filled.get(0).text()).stream().anyMatch(h -> h.means("model"))
        && filled.stream()
            .skip(1)
            .allMatch(
                c ->
                    c.text().chars().anyMatch(Character::isDigit)
                        && !grid.hasUnitFigure(c)
                        && Tokens.of(c.text()).size() <= LONGEST_NAME_WORDS);
  }

  private boolean headsCellAndPack(List<Cell> filled) {
    return filled.stream().anyMatch(c -> isOf(c, "cell"))
        && filled.stream().anyMatch(c -> isOf(c, "pack") && !isOf(c, "cell"));
  }

  private boolean isOf(Cell cell, String concept) {
    return vocabulary.conceptsOf(cell.text()).contains(concept);
  }

  /** "Version | Date | Remarks": a table of the document's own revisions. */
  boolean isHistory(List<Cell> cells) {
    long named =
        cells.stream()
            .filter(
                c ->
                    vocabulary.identityHits(c.text()).stream()
                        .anyMatch(h -> h.means("revision") || h.means("date")))
            .count();
    return named >= 2 && cells.stream().noneMatch(grid::hasUnitFigure);
  }

  void takeHeading(List<Cell> cells) {
    known = true;
    forget();
    List<Cell> filled = Grid.filled(cells);
    boolean announced = announcesModels(filled);
    for (Cell cell : cells) {
      Optional<Role> role = role(cell, cells);
      boolean named = announced && !cell.isEmpty() && cell.column() > filled.get(0).column();
      boolean model = named || (role.isEmpty() && models.looksLikeModel(cell.text()));
      Role held = model ? Role.MODEL : role.orElse(Role.UNKNOWN);
      set(cell, held, held.holdsValues() ? grid.passage(cell) : Passage.EMPTY);
      Arrays.fill(headingTexts, cell.column(), end(cell), cell.text());
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

  /**
   * Two headings in one cell ("Typ Max" over an empty column): the one that stands over the figures
   * counts.
   */
  private Optional<Role> role(Cell heading, List<Cell> row) {
    List<Hit> hits = vocabulary.roleHits(heading.text());
    if (hits.stream().map(Hit::means).distinct().count() < 2
        || heading.lines().size() > 1
        || row.size() < 2) {
      return vocabulary.role(heading.text());
    }
    Passage passage = grid.passage(heading);
    double centre =
        grid.table().cells().stream()
            .filter(c -> c.column() == heading.column() && c.row() > heading.row() && !c.isEmpty())
            .mapToDouble(c -> grid.passage(c).box().centreX())
            .average()
            .orElse(heading.box().centreX());
    return hits.stream()
        .min(
            Comparator.comparingDouble(
                h -> Math.abs(passage.box(h.start(), h.end()).centreX() - centre)))
        .map(h -> Role.named(h.means().get(0)));
  }

  /** "Single cell | Battery pack": the pack's column says nothing about the cell. */
  private void setPackAside(List<Cell> cells) {
    if (headsCellAndPack(cells)) {
      cells.stream()
          .filter(c -> isOf(c, "pack") && !isOf(c, "cell"))
          .forEach(c -> set(c, Role.OTHER, Passage.EMPTY));
    }
  }

  /**
   * "Item | Characteristics | Remark": of two headings that could head the labels, the later heads
   * the values.
   */
  private void nameValueColumn(List<Cell> cells) {
    List<Cell> labels = cells.stream().filter(c -> role(c) == Role.LABEL).toList();
    if (labels.size() > 1) {
      set(labels.get(labels.size() - 1), Role.VALUE, Passage.EMPTY);
    }
  }

  // ---- by what stands in them ----

  void guess() {
    known = true;
    guessNumbersAndUnits();
    nameLabelColumn();
  }

  /** A first column of clause numbers, a later one of units. */
  private void guessNumbersAndUnits() {
    for (int c = 0; c < roles.length; c++) {
      List<String> texts = grid.columnTexts(c);
      if (roles[c] == Role.UNKNOWN && !texts.isEmpty()) {
        long numbers = texts.stream().filter(t -> CLAUSE_NUMBER.matcher(t).matches()).count();
        long units = texts.stream().filter(this::startsWithUnit).count();
        if (c == 0 && numbers * 10 >= (long) texts.size() * MOSTLY) {
          roles[c] = Role.NUMBER;
        } else if (c > 0 && units * 10 >= (long) texts.size() * MOSTLY) {
          roles[c] = Role.UNIT;
        }
      }
    }
  }

  private boolean startsWithUnit(String text) {
    return BRACKETED_UNIT.matcher(text).lookingAt() || grid.units().isUnit(text);
  }

  /** The unit that a cell of a unit column gives, and where its text goes on with conditions. */
  record Unit(String text, int end) {}

  Unit unit(Cell cell) {
    Matcher bracketed = BRACKETED_UNIT.matcher(cell.text());
    return bracketed.lookingAt()
        ? new Unit(bracketed.group(1), bracketed.end())
        : new Unit(cell.text().trim(), cell.text().length());
  }

  private void nameLabelColumn() {
    for (Role candidate : List.of(Role.UNKNOWN, Role.SYMBOL)) {
      for (int c = 0; c < roles.length; c++) {
        if (roles[c] == candidate) {
          roles[c] = Role.LABEL;
          return;
        }
      }
    }
  }
}
