package commonsheet.export;

import commonsheet.record.CellRecord;
import java.util.List;

/**
 * Several cells side by side, each by what its own sheet says. Figures under unlike conditions
 * stand beside each other with their conditions; nothing is converted to a common one.
 *
 * @param columns the quantities compared, always the same
 * @param rows one per record, in the order given
 */
public record ComparisonTable(List<Column> columns, List<ComparisonRow> rows) {
  public ComparisonTable {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * Compares records. Statements that a person has rejected are left out; all others are shown,
   * however many there are in a column.
   *
   * @throws IllegalArgumentException if a statement is not in its quantity's canonical unit, which
   *     no record that follows the schema has
   */
  public static ComparisonTable of(List<CellRecord> records) {
    ComparisonLayout layout = ComparisonLayout.standard();
    return new ComparisonTable(
        layout.columns(),
        records.stream().map(record -> ComparisonRow.of(record, layout)).toList());
  }

  /** Whether any cell has something in the column. */
  boolean fills(Column column) {
    return rows.stream().anyMatch(row -> !row.statements(column).isEmpty());
  }
}
