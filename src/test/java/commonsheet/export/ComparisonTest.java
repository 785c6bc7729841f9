package commonsheet.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.score.Golden;
import java.io.IOException;
import java.io.StringReader;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** All forms of one comparison, against the texts under src/test/resources/export. */
class ComparisonTest {
  private static final ComparisonTable TABLE =
      ComparisonTable.of(List.of(Cells.heron(), Cells.egret(), Cells.bittern(), Cells.blank()));

  @Test
  void csv() throws IOException {
    Golden.assertMatches("export/cells.csv", csv(TABLE));
  }

  @Test
  void markdown() throws IOException {
    Golden.assertMatches("export/cells.md", markdown(TABLE));
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 80, 120, 200})
  void terminal(int width) throws IOException {
    String text = text(TABLE, width);
    Golden.assertMatches("export/cells-" + width + ".txt", text);
    text.lines().forEach(line -> assertTrue(Wrapping.width(line) <= width, line));
  }

  @Test
  void aProgramGetsNumbersUnitsConditionsAndStandingsApart() throws IOException {
    List<Map<String, String>> rows = parse(csv(TABLE));
    Map<String, String> heron = rows.get(0);
    assertEquals("2.5", heron.get("capacity_minimum_Ah"));
    assertEquals("dischargeRate=0.2;cutoffVoltage=2.5", heron.get("capacity_minimum_conditions"));
    assertEquals("read", heron.get("capacity_minimum_standing"));
    assertEquals("2.35", heron.get("capacity_minimum_2_Ah"));
    assertEquals("-20", heron.get("storage_temperature_low_degC"));
    assertEquals("25", heron.get("storage_temperature_2_high_degC"));
    assertEquals("18", heron.get("internal_resistance_ac_mOhm"));
    assertEquals("maximum", heron.get("internal_resistance_ac_statistic"));
    Map<String, String> egret = rows.get(1);
    assertEquals("unsure", egret.get("maximum_charge_current_standing"));
    assertEquals("", egret.get("mass_g"), "a rejected statement must not come back");
    assertEquals("'=Fen|Energy* Co., \"Ltd\"", rows.get(2).get("maker"));
    rows.forEach(row -> assertEquals(Caution.TEXT, row.get("caution")));
  }

  @Test
  void theColumnsAProgramReliesOnAreThereEvenForAnEmptyRecord() throws IOException {
    Map<String, String> row = parse(csv(ComparisonTable.of(List.of(Cells.blank())))).get(0);
    for (Column column : TABLE.columns()) {
      assertTrue(row.containsKey(column.id() + "_conditions"), column.id());
      assertTrue(row.containsKey(column.id() + "_standing"), column.id());
      assertTrue(row.containsKey(column.id() + "_page"), column.id());
    }
  }

  @Test
  void whatABuilderNeedsAndTheRecordLacksIsListed() {
    assertEquals(List.of(), TABLE.rows().get(0).missing());
    assertEquals(
        List.of(
            "discharge cut-off voltage",
            "maximum continuous discharge current",
            "duration of the pulse discharge current",
            "mass",
            "discharge temperature"),
        TABLE.rows().get(1).missing());
  }

  @Test
  void noCellsAreSaidSo() throws IOException {
    ComparisonTable none = ComparisonTable.of(List.of());
    assertTrue(text(none, 80).startsWith("There are no cells to compare.\n"));
    assertTrue(markdown(none).startsWith("There are no cells to compare.\n"));
    assertEquals(List.of(), parse(csv(none)));
  }

  @Test
  void everyOutputCarriesTheCaution() throws IOException {
    assertTrue(text(TABLE, 1000).endsWith(Caution.TEXT + '\n'));
    assertTrue(markdown(TABLE).endsWith("> " + Caution.TEXT + '\n'));
  }

  @Test
  void manyCellsAreSharedOutEvenly() throws IOException {
    List<CellRecord> five = Collections.nCopies(5, Cells.heron());
    String text = text(ComparisonTable.of(five), 150);
    List<String> heads = text.lines().filter(line -> line.strip().startsWith("Heron 26")).toList();
    assertEquals(2, heads.size(), "five cells of which four would fit stand as two and three");
  }

  @Test
  void aValueInAnotherUnitIsRefused() {
    CellRecord record = Cells.inUnit("mA.h");
    IllegalArgumentException fault =
        assertThrows(IllegalArgumentException.class, () -> ComparisonTable.of(List.of(record)));
    assertEquals(
        "record x, statement s1: capacity is in mA.h and must be in A.h", fault.getMessage());
  }

  private static String csv(ComparisonTable table) throws IOException {
    StringBuilder out = new StringBuilder();
    CsvComparison.write(table, out);
    return out.toString();
  }

  private static String markdown(ComparisonTable table) throws IOException {
    StringBuilder out = new StringBuilder();
    MarkdownComparison.write(table, out);
    return out.toString();
  }

  private static String text(ComparisonTable table, int width) throws IOException {
    StringBuilder out = new StringBuilder();
    TextComparison.write(table, width, out);
    return out.toString();
  }

  private static List<Map<String, String>> parse(String csv) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(csv)).stream().map(CSVRecord::toMap).toList();
  }
}
