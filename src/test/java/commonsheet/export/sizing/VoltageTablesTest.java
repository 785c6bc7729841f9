package commonsheet.export.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.compare.VoltageTable;
import commonsheet.export.Caution;
import commonsheet.export.Cells;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is written is read back the same, in both forms, whatever stands in it. */
class VoltageTablesTest {
  /** Its maker is {@code =Fen|Energy* Co., "Ltd"}, over two lines. */
  private static final CellVoltageTable HOSTILE = Grids.of(Cells.bittern());

  @Test
  void aFileGivesBackTheSame(@TempDir Path folder) throws Exception {
    for (CellVoltageTable table : List.of(Grids.of(Cells.heron()), HOSTILE)) {
      Path json = Files.writeString(folder.resolve("t.json"), VoltageTables.json(table));
      assertEquals(table, VoltageTables.read(json));
      Path csv = Files.writeString(folder.resolve("t.CSV"), VoltageTables.csv(table));
      assertEquals(table, VoltageTables.read(csv));
    }
  }

  @Property(tries = 100)
  void numbersStayTheSame(@ForAll("tables") VoltageTable table) throws Exception {
    CellVoltageTable cell = CellVoltageTable.of(Cells.heron(), table);
    assertEquals(cell, VoltageTables.readJson(VoltageTables.json(cell), "it"));
    assertEquals(cell, VoltageTables.readCsv(VoltageTables.csv(cell), "it"));
    for (int i = 0; i < table.voltages().size(); i++) {
      for (int j = 0; j < table.charges().size(); j++) {
        Double before = table.voltages().get(i).get(j);
        Double after = cell.table().voltages().get(i).get(j);
        assertEquals(before == null, after == null);
        // A ten-millionth of a volt: far below what any chart is read to.
        assertTrue(before == null || Math.abs(before - after) <= 1e-7);
      }
    }
  }

  @Provide
  Arbitrary<VoltageTable> tables() {
    Arbitrary<Double> step = Arbitraries.doubles().between(0.001, 30).ofScale(15);
    Arbitrary<List<Double>> currents =
        step.list().ofMinSize(2).ofMaxSize(6).map(s -> sums(s, null));
    Arbitrary<List<Double>> charges = step.list().ofMinSize(2).ofMaxSize(9).map(s -> sums(s, 0.0));
    return Combinators.combine(
            currents,
            charges,
            Arbitraries.doubles().between(1, 4.5).ofScale(15).list().ofSize(60),
            Arbitraries.integers().between(1, 9).list().ofSize(6))
        .as(
            (c, q, voltages, ends) -> {
              List<List<Double>> rows = new ArrayList<>();
              for (int i = 0; i < c.size(); i++) {
                List<Double> row = new ArrayList<>();
                for (int j = 0; j < q.size(); j++) {
                  row.add(j < ends.get(i) ? voltages.get(i * 9 + j) : null);
                }
                rows.add(row);
              }
              return new VoltageTable(c, q, rows, 0.01, 2.5, -20.0, List.of("c1", "c12"), true);
            });
  }

  private static List<Double> sums(List<Double> steps, Double first) {
    List<Double> sums = new ArrayList<>();
    double sum = 0;
    if (first != null) {
      sums.add(first);
    }
    for (double step : steps) {
      sum += step;
      sums.add(sum);
    }
    return sums;
  }

  /** The end of a discharge may fall beside a regular step, by less than numbers are written to. */
  @Test
  void twoPlacesThatAreWrittenAlikeBecomeOne() throws Exception {
    VoltageTable table =
        new VoltageTable(
            List.of(1.0, 2.0),
            List.of(0.0, 1.2, 1.2000000001, 2.4),
            List.of(List.of(4.0, 3.5, 3.49999, 2.5), Arrays.asList(3.9, 2.5, null, null)),
            0.01,
            2.5,
            null,
            List.of("c1", "c2"),
            false);
    CellVoltageTable cell = CellVoltageTable.of(Cells.heron(), table);
    assertEquals(List.of(0.0, 1.2, 2.4), cell.table().charges());
    assertEquals(List.of(4.0, 3.49999, 2.5), cell.table().voltages().get(0));
    assertEquals(Arrays.asList(3.9, 2.5, null), cell.table().voltages().get(1));
    assertEquals(cell, VoltageTables.readJson(VoltageTables.json(cell), "it"));
    assertEquals(cell, VoltageTables.readCsv(VoltageTables.csv(cell), "it"));
  }

  @Test
  void tellsWhereItHoldsAndWhatItIs() {
    String json = VoltageTables.json(Grids.of(Cells.heron()));
    assertTrue(json.contains("\"lowestCurrent\": 0.52"), json);
    assertTrue(json.contains("\"highestCurrent\": 10"), json);
    assertTrue(json.contains("\"capacity\": [2.5, 2.4, 2.1]"), json);
    assertTrue(json.contains("\"file\": \"tarn-heron-26.pdf\""), json);
    assertTrue(json.contains("\"approvedBy\": \"M. Okafor\""), json);
    assertTrue(json.contains(Caution.TEXT), json);
  }

  /** The formula of a maker's name is text to a spreadsheet, and no line is broken. */
  @Test
  void aTextThatBeginsLikeAFormulaIsNone() {
    String csv = VoltageTables.csv(HOSTILE);
    assertTrue(csv.contains("\"'=Fen|Energy* Co., \"\"Ltd\"\"\""), csv);
    assertFalse(csv.contains(",=") || csv.contains(",\"="), csv);
    assertEquals(HOSTILE.table().charges().size() + 1, csv.lines().count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"current\": [0.52, 2.6, 10] | \"current\": [0.52, 10, 2.6] | ascending order",
        "\"current\": [0.52, 2.6, 10] | \"current\": [0.52, 2.6] | one row of voltages",
        "[3.9, 3.4, 2.5, null, null] | [3.9, null, 2.5, null, null] | a gap",
        "[3.9, 3.4, 2.5, null, null] | [null, null, null, null, null] | without any",
        "\"capacity\": [0, 1, 2.1, 2.4, 2.5] | \"capacity\": [0.1, 1, 2.1, 2.4, 2.5] | from 0",
        "\"current\": \"A\" | \"current\": \"mA\" | /units/current",
        "commonsheet/voltage-table/1 | commonsheet/voltage-table/2 | /schema",
        "{ | [ | not readable as JSON",
      })
  void refusesWhatIsNoTable(String part, String other, String said) {
    String json = VoltageTables.json(Grids.of(Cells.heron()));
    assertTrue(json.contains(part), json);
    ExportException refusal =
        assertThrows(
            ExportException.class,
            () -> VoltageTables.readJson(json.replace(part, other), "grid.json"));
    assertTrue(refusal.getMessage().startsWith("grid.json "), refusal.getMessage());
    assertTrue(refusal.getMessage().contains(said), refusal.getMessage());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "commonsheet/voltage-table/1 | other | needs a column schema",
        "capacity_Ah | capacity_mAh | capacity_Ah",
        "at_10_A | at_0.1_A | ascending order",
        "3.7, | three, | three",
        "0.0125, | , | voltage_uncertainty_V",
      })
  void refusesCsvThatIsNoTable(String part, String other, String said) {
    String csv = VoltageTables.csv(Grids.of(Cells.heron()));
    assertTrue(csv.contains(part), csv);
    ExportException refusal =
        assertThrows(
            ExportException.class,
            () -> VoltageTables.readCsv(csv.replace(part, other), "grid.csv"));
    assertTrue(refusal.getMessage().startsWith("grid.csv "), refusal.getMessage());
    assertTrue(refusal.getMessage().contains(said), refusal.getMessage());
  }

  @Test
  void namesAFileThatIsNotThere(@TempDir Path folder) {
    Path missing = folder.resolve("missing.json");
    String said =
        assertThrows(ExportException.class, () -> VoltageTables.read(missing)).getMessage();
    assertEquals(missing + " does not exist; check the name", said);
  }
}
