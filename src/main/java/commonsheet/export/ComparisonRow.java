package commonsheet.export;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One cell of a comparison. Texts are cleaned of control characters; an absent one is empty.
 *
 * @param id the record's id
 * @param cell which cell it is
 * @param size the size code or, where the sheet gives none, the dimensions
 * @param statements all statements that the sheet itself makes, by the id of their column, in the
 *     record's order
 * @param missing what a builder needs to know and the record does not say
 * @param review the record's state of approval
 * @param sourceFile file name of the sheet
 * @param pages the pages on which the shown values stand, in ascending order
 */
public record ComparisonRow(
    String id,
    Cell cell,
    String size,
    Map<String, List<Statement>> statements,
    List<String> missing,
    Review review,
    String sourceFile,
    List<Integer> pages) {
  private static final Cell UNKNOWN = new Cell(null, null, null, null, null, null, null);

  public ComparisonRow {
    statements = Map.copyOf(statements);
    missing = List.copyOf(missing);
    pages = List.copyOf(pages);
  }

  static ComparisonRow of(CellRecord record, ComparisonLayout layout) {
    List<Statement> shown =
        record.statements().stream()
            .filter(s -> s.standing() != Standing.REJECTED)
            .filter(s -> s.evidence() == null || s.evidence().method() != Method.DERIVED)
            .toList();
    Map<String, List<Statement>> byColumn = new LinkedHashMap<>();
    for (Column column : layout.columns()) {
      List<Statement> taken = shown.stream().filter(column::takes).toList();
      taken.forEach(statement -> checkUnit(record, statement, column));
      byColumn.put(column.id(), taken);
    }
    Cell cell = clean(record.cell() == null ? UNKNOWN : record.cell());
    return new ComparisonRow(
        Printed.clean(record.id()),
        cell,
        cell.sizeCode().isEmpty() ? Dimensions.text(shown) : cell.sizeCode(),
        byColumn,
        layout.needed().stream()
            .filter(need -> need.missingFrom(shown))
            .map(ComparisonLayout.Need::name)
            .toList(),
        record.review() == null ? Review.DRAFT : record.review(),
        Printed.clean(record.source() == null ? null : record.source().named()),
        pages(byColumn.values()));
  }

  /** The statements in a column, in the record's order. */
  public List<Statement> statements(Column column) {
    return statements.get(column.id());
  }

  /** What the cell is called: its model or, where the sheet does not name it, the record's id. */
  String name() {
    return cell.model().isEmpty() ? id : cell.model();
  }

  private static void checkUnit(CellRecord record, Statement statement, Column column) {
    if (!column.unit().equals(statement.unit())) {
      throw new IllegalArgumentException(
          String.format(
              "record %s, statement %s: %s is in %s and must be in %s",
              record.id(), statement.id(), column.quantity(), statement.unit(), column.unit()));
    }
  }

  private static Cell clean(Cell cell) {
    return new Cell(
        Printed.clean(cell.maker()),
        Printed.clean(cell.model()),
        Printed.clean(cell.designation()),
        Printed.clean(cell.chemistry()),
        Printed.clean(cell.form()),
        Printed.clean(cell.sizeCode()),
        cell.evidence());
  }

  private static List<Integer> pages(Collection<List<Statement>> shown) {
    return shown.stream()
        .flatMap(List::stream)
        .map(Statement::evidence)
        .filter(Objects::nonNull)
        .map(Evidence::page)
        .filter(Objects::nonNull)
        .distinct()
        .sorted()
        .toList();
  }
}
