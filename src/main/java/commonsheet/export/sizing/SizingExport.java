package commonsheet.export.sizing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import commonsheet.compare.Condition;
import commonsheet.record.CellRecord;
import commonsheet.record.JsonText;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What tools that size batteries get to know of several cells. */
public final class SizingExport {
  private final List<CellRecord> records;
  private final List<CellRow> rows = new ArrayList<>();
  private final List<CellVoltageTable> tables = new ArrayList<>();

  private SizingExport(List<CellRecord> records) {
    this.records = List.copyOf(records);
  }

  /**
   * Prepares the export of records.
   *
   * @param cutoff in V, to which the look-up grids go; null for each cell's own discharge cut-off,
   *     as its sheet states it
   * @param temperature in °C, of the discharges the grids are made of; null for {@link
   *     Condition#USUAL_TEMPERATURE}
   * @throws ExportException if two of the records have the same id
   */
  public static SizingExport of(List<CellRecord> records, Double cutoff, Double temperature)
      throws ExportException {
    SizingExport export = new SizingExport(records);
    Set<String> ids = new HashSet<>();
    for (CellRecord record : records) {
      if (!ids.add(record.id())) {
        throw new ExportException(
            "two of the records are called "
                + record.id()
                + ", which names their files; leave one of them out");
      }
      export.add(record, cutoff, temperature == null ? Condition.USUAL_TEMPERATURE : temperature);
    }
    return export;
  }

  private void add(CellRecord record, Double cutoff, double temperature) {
    Digitised grid = Digitised.of(record, cutoff, temperature);
    rows.add(CellRow.of(record, grid));
    if (grid.table() != null) {
      tables.add(CellVoltageTable.of(record, grid.table()));
    }
  }

  /** The look-up grids, of those cells that have one. */
  public List<CellVoltageTable> tables() {
    return List.copyOf(tables);
  }

  /** One row per cell as CSV; docs/export.md names the columns. */
  public String rowsCsv() {
    return CsvFields.text(RowFields.standard(), rows);
  }

  /** One row per cell as a JSON array, after {@code schemas/cell-rows.schema.json}. */
  public String rowsJson() {
    ArrayNode array = JsonNodeFactory.instance.arrayNode();
    rows.forEach(row -> array.add(JsonFields.object(RowFields.standard(), row)));
    return JsonText.of(array, JsonFields.DIGITS);
  }

  /** A cell as JSON-LD 1.1, in terms of EMMO and QUDT where exact ones exist. */
  public static String jsonLd(CellRecord record) {
    return LinkedCell.text(record);
  }

  /** The files of the export: texts by name. */
  public Map<String, String> files(Collection<ExportFormat> formats) {
    Map<String, String> files = new LinkedHashMap<>();
    if (formats.contains(ExportFormat.CSV)) {
      files.put("cells.csv", rowsCsv());
      tables.forEach(table -> files.put(name(table, ".csv"), VoltageTables.csv(table)));
    }
    if (formats.contains(ExportFormat.JSON)) {
      files.put("cells.json", rowsJson());
      tables.forEach(table -> files.put(name(table, ".json"), VoltageTables.json(table)));
    }
    if (formats.contains(ExportFormat.JSON_LD)) {
      records.forEach(record -> files.put(record.id() + ".jsonld", jsonLd(record)));
    }
    return files;
  }

  private static String name(CellVoltageTable table, String ending) {
    return table.origin().id() + VoltageTables.NAME + ending;
  }
}
