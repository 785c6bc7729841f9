package commonsheet.export.sizing;

import commonsheet.export.CsvText;
import commonsheet.export.Printed;
import commonsheet.record.Conditions;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows as CSV (RFC 4180): a header row, lines that end with CR LF, nothing for what is missing. */
final class CsvFields {
  private CsvFields() {}

  static <T> String text(List<Field<T>> fields, List<T> rows) {
    StringWriter text = new StringWriter();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(fields.stream().map(Field::name));
      for (T row : rows) {
        printer.printRecord(fields.stream().map(field -> cell(field.value().apply(row))));
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory does not fail", impossible);
    }
    return text.toString();
  }

  /** A value in one cell: lists separated by {@code ; }, conditions as in comparison tables. */
  static String cell(Object value) {
    if (value == null) {
      return null;
    }
    if (value instanceof Double number) {
      return Printed.number(number);
    }
    if (value instanceof Integer number) {
      return number.toString();
    }
    if (value instanceof Conditions conditions) {
      return conditions.values().entrySet().stream()
          .map(condition -> condition.getKey() + '=' + Printed.number(condition.getValue()))
          .collect(Collectors.joining(";"));
    }
    if (value instanceof Collection<?> values) {
      return CsvText.of(values.stream().map(Object::toString).collect(Collectors.joining("; ")));
    }
    return CsvText.of(value.toString());
  }
}
