package commonsheet.export;

import commonsheet.record.Statement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a comparison as CSV (RFC 4180) for spreadsheets and programs: one row per cell, a header
 * row, the caution in the last column of every row. docs/table.md names the columns.
 *
 * <p>A text that begins like a formula ({@code = + - @}) gets an apostrophe before it, so that a
 * spreadsheet takes it for text.
 */
public final class CsvComparison {
  private final ComparisonTable table;
  private final List<String> header = new ArrayList<>();
  private final List<Function<ComparisonRow, Object>> values = new ArrayList<>();

  private CsvComparison(ComparisonTable table) {
    this.table = table;
    text("id", ComparisonRow::id);
    text("maker", row -> row.cell().maker());
    text("model", row -> row.cell().model());
    text("designation", row -> row.cell().designation());
    text("size", ComparisonRow::size);
    text("chemistry", row -> row.cell().chemistry());
    text("form", row -> row.cell().form());
    table.columns().forEach(this::quantity);
    text("missing", row -> String.join("; ", row.missing()));
    text("state", row -> row.review().state());
    text("approved_by", row -> row.review().approvedBy());
    text("approved_at", row -> row.review().approvedAt());
    text("source_file", ComparisonRow::sourceFile);
    text(
        "source_pages",
        row -> row.pages().stream().map(String::valueOf).collect(Collectors.joining("; ")));
    text("caution", row -> Caution.TEXT);
  }

  /** Writes the header and one row per cell; lines end with CR LF. */
  public static void write(ComparisonTable table, Appendable out) throws IOException {
    CsvComparison csv = new CsvComparison(table);
    CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
    printer.printRecord(csv.header);
    for (ComparisonRow row : table.rows()) {
      printer.printRecord(csv.values.stream().map(value -> value.apply(row)));
    }
    printer.flush();
  }

  /** As many groups of columns as the cell with the most statements in this column needs. */
  private void quantity(Column column) {
    String unit = '_' + ComparisonLayout.standard().unit(column).suffix();
    boolean bounds = column.range() || any(column, s -> s.low() != null || s.high() != null);
    boolean value = !column.range() || any(column, s -> s.value() != null);
    boolean statistic = any(column, s -> column.unimplied(s) != null);
    int most = table.rows().stream().mapToInt(row -> row.statements(column).size()).max().orElse(0);
    for (int n = 0; n < Math.max(1, most); n++) {
      String name = n == 0 ? column.id() : column.id() + '_' + (n + 1);
      if (value) {
        value(name + unit, column, n, s -> number(s.value()));
      }
      if (bounds) {
        value(name + "_low" + unit, column, n, s -> number(s.low()));
        value(name + "_high" + unit, column, n, s -> number(s.high()));
      }
      if (statistic) {
        value(
            name + "_statistic",
            column,
            n,
            s -> s.statistic() == null ? null : s.statistic().label());
      }
      value(name + "_conditions", column, n, CsvComparison::conditions);
      value(name + "_standing", column, n, s -> s.standing().label());
      value(name + "_page", column, n, s -> s.evidence() == null ? null : s.evidence().page());
    }
  }

  private boolean any(Column column, Predicate<Statement> has) {
    return table.rows().stream().flatMap(row -> row.statements(column).stream()).anyMatch(has);
  }

  private void text(String name, Function<ComparisonRow, String> text) {
    header.add(name);
    values.add(row -> CsvText.of(text.apply(row)));
  }

  private void value(String name, Column column, int n, Function<Statement, Object> value) {
    header.add(name);
    values.add(
        row -> {
          List<Statement> statements = row.statements(column);
          return n < statements.size() ? value.apply(statements.get(n)) : null;
        });
  }

  private static String number(Double number) {
    return number == null ? null : Printed.number(number);
  }

  /** As in truth files: {@code dischargeRate=0.2;cutoffVoltage=2.5}, in canonical units. */
  private static String conditions(Statement statement) {
    return statement.conditions().values().entrySet().stream()
        .map(condition -> condition.getKey() + '=' + Printed.number(condition.getValue()))
        .collect(Collectors.joining(";"));
  }
}
