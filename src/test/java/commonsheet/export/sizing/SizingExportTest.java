package commonsheet.export.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.compare.CellFigures;
import commonsheet.compare.Condition;
import commonsheet.compare.DischargeFamily;
import commonsheet.compare.Figure;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.VoltageTable;
import commonsheet.export.Caution;
import commonsheet.export.Cells;
import commonsheet.record.CellRecord;
import commonsheet.record.IndependentValidator;
import commonsheet.record.SchemaFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A whole export: its files follow their schemas, and its numbers are those of a comparison. */
class SizingExportTest {
  private static final List<CellRecord> RECORDS =
      List.of(StraightCell.record("ls-32"), Cells.heron(), Cells.egret(), Cells.bittern());

  private static Map<String, String> files() throws ExportException {
    return SizingExport.of(RECORDS, null, null).files(EnumSet.allOf(ExportFormat.class));
  }

  @Test
  void aCellWithCurvesHasAGridAndEveryCellHasARow() throws Exception {
    assertEquals(
        List.of(
            "cells.csv",
            "ls-32.voltage-table.csv",
            "cells.json",
            "ls-32.voltage-table.json",
            "ls-32.jsonld",
            "tarn-cells-heron-26.jsonld",
            "eg-604050.jsonld",
            "fen-bittern-50.jsonld"),
        List.copyOf(files().keySet()));
    JsonNode rows = new ObjectMapper().readTree(files().get("cells.json"));
    assertEquals(4, rows.size());
    assertEquals("ls-32.voltage-table", rows.get(0).get("voltage_table_file").asText());
    assertEquals(1, rows.get(0).get("voltage_table_lowest_current_A").asDouble());
    assertEquals(10, rows.get(0).get("voltage_table_highest_current_A").asDouble());
    assertTrue(rows.get(1).get("voltage_table_file").isNull());
    assertTrue(
        rows.get(1).get("voltage_table_why_missing").asText().contains("no discharge curve"));
  }

  /** A straight cell of 20 mΩ. */
  @Test
  void theResistanceIsThatOfTheCurves() throws Exception {
    JsonNode row = new ObjectMapper().readTree(files().get("cells.json")).get(0);
    assertEquals(20, row.get("curve_resistance_mOhm").asDouble(), 0.01);
    assertTrue(row.get("internal_resistance_dc_mOhm").isNull());
  }

  /**
   * Integrated by trapezoids between its own places, as any reader of the file would, the grid
   * gives at its currents what the comparison gives and what the cell's formula gives.
   */
  @ParameterizedTest
  @ValueSource(strings = {"json", "csv"})
  void theGridGivesWhatIsDelivered(String form) throws Exception {
    String text = files().get("ls-32.voltage-table." + form);
    CellVoltageTable read =
        form.equals("csv") ? VoltageTables.readCsv(text, "it") : VoltageTables.readJson(text, "it");
    VoltageTable table = read.table();
    assertEquals(25, table.temperature());
    assertEquals(StraightCell.CURRENTS.length, table.currents().size());
    for (int i = 0; i < table.currents().size(); i++) {
      double current = table.currents().get(i);
      double capacity = read.capacities().get(i);
      double energy = energy(table, i);
      assertEquals(StraightCell.capacity(current), capacity, 0.002);
      assertEquals(StraightCell.energy(current), energy, table.uncertainty() * capacity);
      CellFigures compared = compared(RECORDS.get(0), current);
      Figure delivered = compared.figure(Measure.DELIVERED_CAPACITY);
      assertEquals(delivered.value(), capacity, 1e-6);
      assertEquals(
          compared.figure(Measure.DELIVERED_ENERGY).value(),
          energy,
          table.uncertainty() * capacity);
    }
  }

  private static CellFigures compared(CellRecord record, double current) {
    Load load = Load.constant(current);
    Condition condition =
        new Condition(load, StraightCell.CUTOFF, 23, 0, Condition.Tolerance.STANDARD);
    return DischargeFamily.of(record, condition).under(load);
  }

  private static double energy(VoltageTable table, int row) {
    List<Double> voltages = table.voltages().get(row);
    double energy = 0;
    for (int j = 1; j < voltages.size() && voltages.get(j) != null; j++) {
      double step = table.charges().get(j) - table.charges().get(j - 1);
      energy += step * (voltages.get(j) + voltages.get(j - 1)) / 2;
    }
    return energy;
  }

  @Test
  void aHigherCutOffEndsTheGridThere() throws Exception {
    SizingExport export = SizingExport.of(RECORDS, 3.0, null);
    VoltageTable table = export.tables().get(0).table();
    assertEquals(3.0, table.cutoffVoltage());
    for (List<Double> row : table.voltages()) {
      double lowest = row.stream().filter(v -> v != null).mapToDouble(v -> v).min().orElseThrow();
      assertEquals(3.0, lowest, 1e-6);
    }
  }

  @Test
  void atAnotherTemperatureThereIsNoGridAndTheRowSaysWhy() throws Exception {
    SizingExport export = SizingExport.of(RECORDS, null, -20.0);
    assertEquals(List.of(), export.tables());
    assertTrue(export.rowsCsv().contains("no discharge curve of the sheet serves"));
  }

  @Test
  void everyFileCarriesTheCaution() throws Exception {
    files().forEach((name, text) -> assertTrue(text.contains(Caution.TEXT), name));
  }

  @Test
  void theOrderOfTheRecordsChangesNoCell() throws Exception {
    List<CellRecord> reversed = new ArrayList<>(RECORDS);
    Collections.reverse(reversed);
    Map<String, String> other =
        SizingExport.of(reversed, null, null).files(EnumSet.allOf(ExportFormat.class));
    files()
        .forEach(
            (name, text) -> {
              if (!name.startsWith("cells.")) {
                assertEquals(text, other.get(name), name);
              }
            });
  }

  @Test
  void refusesTwoRecordsOfOneName() {
    List<CellRecord> twice = List.of(Cells.heron(), Cells.heron());
    ExportException refusal =
        assertThrows(ExportException.class, () -> SizingExport.of(twice, null, null));
    assertTrue(refusal.getMessage().contains("tarn-cells-heron-26"), refusal.getMessage());
  }

  @Test
  void theGridFollowsItsSchemaAndSoDoTheRows() throws Exception {
    ObjectMapper mapper = new ObjectMapper();
    Map<String, String> files = files();
    assertEquals(
        List.of(),
        SchemaFile.named("cell-rows").problems(mapper.readTree(files.get("cells.json")), "it"));
    assertEquals(
        List.of(),
        SchemaFile.named("voltage-table")
            .problems(mapper.readTree(files.get("ls-32.voltage-table.json")), "it"));
  }

  /** ajv shares no code with the validator of the program. */
  @Test
  void anIndependentValidatorSaysTheSame(@TempDir Path folder) throws Exception {
    Optional<String> why = IndependentValidator.whyUnavailable();
    assumeTrue(why.isEmpty(), () -> "not compared with ajv: " + why.orElseThrow());
    Map<String, String> files = files();
    String rows = files.get("cells.json");
    String grid = files.get("ls-32.voltage-table.json");
    check(folder, "cell-rows", true, rows);
    check(folder, "cell-rows", false, rows.replace("\"mass_g\"", "\"mass_kg\""));
    check(folder, "cell-rows", false, rows.replace("\"state\": \"draft\"", "\"state\": \"fine\""));
    check(folder, "voltage-table", true, grid);
    check(
        folder, "voltage-table", false, grid.replace("\"voltage\": \"V\"", "\"voltage\": \"mV\""));
    check(
        folder, "voltage-table", false, grid.replace("\"standing\": \"read\"", "\"standing\": 1"));
  }

  private static void check(Path folder, String schema, boolean valid, String text)
      throws Exception {
    Path file = Files.writeString(folder.resolve("file.json"), text);
    Path schemaFile = Path.of("schemas", schema + ".schema.json");
    IndependentValidator.Verdict verdict =
        IndependentValidator.verdicts(schemaFile, List.of(file)).get(0);
    assertEquals(valid, verdict.valid(), schema + ": " + verdict.errors());
    List<String> ours = SchemaFile.named(schema).problems(new ObjectMapper().readTree(text), "it");
    assertEquals(valid, ours.isEmpty(), schema + ": " + ours);
  }
}
