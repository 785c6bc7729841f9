package commonsheet.export.sizing;

import commonsheet.compare.VoltageTable;
import commonsheet.export.Caution;
import commonsheet.export.CsvText;
import commonsheet.export.Printed;
import commonsheet.record.Cell;
import commonsheet.record.Review;
import commonsheet.record.Source;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A voltage table as CSV: one row per capacity, one column of voltages per current, and behind them
 * what holds for the whole table, in every row so that it stays with the figures.
 */
final class VoltageTableCsv {
  private static final String CAPACITY = "capacity_Ah";
  private static final String VOLTAGE = "voltage_V_at_%s_A";
  private static final Pattern CURRENT = Pattern.compile("voltage_V_at_([0-9.]+)_A");
  private static final String LIST = "; ";

  private VoltageTableCsv() {}

  /** A row: the place of a capacity in its table. */
  private record Row(CellVoltageTable cell, int index) {}

  static String text(CellVoltageTable cell) {
    VoltageTable table = cell.table();
    List<Field<Row>> fields = new ArrayList<>();
    fields.add(new Field<>(CAPACITY, row -> table.charges().get(row.index())));
    for (int i = 0; i < table.currents().size(); i++) {
      List<Double> voltages = table.voltages().get(i);
      fields.add(
          new Field<>(
              String.format(VOLTAGE, Printed.number(table.currents().get(i))),
              row -> voltages.get(row.index())));
    }
    fields.add(new Field<>("voltage_uncertainty_V", row -> table.uncertainty()));
    fields.add(new Field<>("cutoff_voltage_V", row -> table.cutoffVoltage()));
    fields.add(new Field<>("temperature_degC", row -> table.temperature()));
    fields.add(new Field<>("standing", row -> VoltageTables.standing(table)));
    fields.add(new Field<>("curves", row -> table.from()));
    fields.addAll(Field.identity(row -> row.cell().origin()));
    fields.addAll(Field.source(row -> row.cell().origin(), row -> row.cell().pages()));
    fields.addAll(Field.review(row -> row.cell().origin()));
    fields.add(new Field<>("caution", row -> Caution.TEXT));
    fields.add(new Field<>("schema", row -> VoltageTableJson.SCHEMA));
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < table.charges().size(); i++) {
      rows.add(new Row(cell, i));
    }
    return CsvFields.text(fields, rows);
  }

  static CellVoltageTable read(String text, String name) throws ExportException {
    CSVFormat format =
        CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setNullString("").get();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      List<String> header = parser.getHeaderNames();
      List<CSVRecord> rows = parser.getRecords();
      if (rows.isEmpty()
          || !header.contains("schema")
          || !VoltageTableJson.SCHEMA.equals(rows.get(0).get("schema"))) {
        throw new ExportException(
            name
                + " is no voltage table: it needs a column schema with "
                + VoltageTableJson.SCHEMA);
      }
      return VoltageTables.checked(table(header, rows), name);
    } catch (IOException | IllegalArgumentException e) {
      throw new ExportException(
          name + " is no voltage table: " + reason(e) + "; export it again", e);
    }
  }

  private static String reason(Exception e) {
    return e.getMessage() == null ? "it is not readable as CSV" : e.getMessage();
  }

  private static CellVoltageTable table(List<String> header, List<CSVRecord> rows) {
    List<Double> currents = new ArrayList<>();
    List<List<Double>> voltages = new ArrayList<>();
    for (String column : header) {
      Matcher current = CURRENT.matcher(column);
      if (current.matches()) {
        currents.add(Double.valueOf(current.group(1)));
        voltages.add(numbers(rows, column));
      }
    }
    CSVRecord first = rows.get(0);
    VoltageTable table =
        new VoltageTable(
            currents,
            numbers(rows, CAPACITY),
            voltages,
            number(first, "voltage_uncertainty_V"),
            number(first, "cutoff_voltage_V"),
            first.get("temperature_degC") == null ? null : number(first, "temperature_degC"),
            list(first.get("curves")),
            VoltageTables.UNSURE.equals(first.get("standing")));
    List<Integer> pages = list(first.get("source_pages")).stream().map(Integer::valueOf).toList();
    return new CellVoltageTable(origin(first), pages, table);
  }

  private static CellOrigin origin(CSVRecord row) {
    return new CellOrigin(
        text(row, "id"),
        new Cell(
            text(row, "maker"),
            text(row, "model"),
            text(row, "designation"),
            text(row, "chemistry"),
            text(row, "form"),
            text(row, "size_code"),
            null),
        row.get("source_file") == null
            ? null
            : new Source(
                null,
                text(row, "source_document"),
                text(row, "source_revision"),
                text(row, "source_date"),
                text(row, "source_file"),
                text(row, "source_sha256"),
                null,
                null,
                null),
        new Review(
            text(row, "state"),
            null,
            null,
            text(row, "approved_by"),
            text(row, "approved_at"),
            null));
  }

  private static String text(CSVRecord row, String column) {
    return CsvText.original(row.get(column));
  }

  private static List<Double> numbers(List<CSVRecord> rows, String column) {
    List<Double> numbers = new ArrayList<>();
    for (CSVRecord row : rows) {
      numbers.add(row.get(column) == null ? null : number(row, column));
    }
    return numbers;
  }

  private static Double number(CSVRecord row, String column) {
    String text = row.get(column);
    try {
      return Double.valueOf(text == null ? "" : text);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(
          "line "
              + (row.getRecordNumber() + 1)
              + ", column "
              + column
              + ": no number stands there"
              + (text == null ? "" : " but " + text),
          e);
    }
  }

  private static List<String> list(String text) {
    return text == null ? List.of() : Arrays.asList(text.split(LIST));
  }
}
