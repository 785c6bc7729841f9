package commonsheet.export.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.export.Caution;
import commonsheet.export.Cells;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.SchemaFile;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import systems.uom.ucum.format.UCUMFormat;

/** One flat row per cell, with the same columns for every cell. */
class RowsTest {
  private static final List<CellRow> ROWS =
      List.of(
          CellRow.of(Cells.heron(), Grids.with(Grids.three())),
          CellRow.of(Cells.egret(), Grids.none()),
          CellRow.of(Cells.bittern(), Grids.none()),
          CellRow.of(Cells.blank(), Grids.none()));

  private static Map<String, Object> row(CellRow row) {
    Map<String, Object> values = new LinkedHashMap<>();
    RowFields.standard().forEach(field -> values.put(field.name(), field.value().apply(row)));
    return values;
  }

  /** The nominal capacity is missing here; typical goes before minimum (docs/export.md). */
  @Test
  void takesOneStatementOfAQuantityAndCountsTheOthers() {
    Map<String, Object> heron = row(ROWS.get(0));
    assertEquals(2.6, heron.get("capacity_Ah"));
    assertEquals("typical", heron.get("capacity_statistic"));
    assertEquals(
        "dischargeRate=0.2;cutoffVoltage=2.5", CsvFields.cell(heron.get("capacity_conditions")));
    assertEquals(2, heron.get("capacity_others"));
    assertEquals(2.5, heron.get("minimum_capacity_Ah"));
  }

  /** 30 A holds only while the cell stays below 80 °C, so that 20 A is what it is rated for. */
  @Test
  void aRatingWithoutALimitOfTemperatureGoesBeforeOneWith() {
    Map<String, Object> heron = row(ROWS.get(0));
    assertEquals(20.0, heron.get("maximum_continuous_discharge_current_A"));
    assertEquals(1, heron.get("maximum_continuous_discharge_current_others"));
    // Of two that hold over a range, the one with room temperature in it.
    assertEquals(4.0, heron.get("maximum_charge_current_A"));
  }

  @Test
  void keepsResistancesApart() {
    Map<String, Object> heron = row(ROWS.get(0));
    assertEquals(18.0, heron.get("internal_resistance_ac_mOhm"));
    assertEquals(24.0, heron.get("internal_resistance_dc_mOhm"));
    assertEquals(24.5, heron.get("curve_resistance_mOhm"));
    assertEquals(List.of("c1", "c3"), heron.get("curve_resistance_curves"));
  }

  @Test
  void whatIsMissingIsNothingAndIsNamed() {
    Map<String, Object> blank = row(ROWS.get(3));
    assertNull(blank.get("mass_g"));
    assertNull(blank.get("mass_conditions"));
    assertNull(blank.get("mass_others"));
    assertEquals(25, ((List<?>) blank.get("missing")).size());
    assertEquals(
        "no discharge curve of the sheet serves at this cut-off and temperature",
        blank.get("voltage_table_why_missing"));
  }

  @Test
  void namesWhatIsUnsureAndLeavesOutWhatWasRejected() {
    Map<String, Object> egret = row(ROWS.get(1));
    assertEquals(
        List.of("maximum_charge_current", "maximum_pulse_discharge_current", "length"),
        egret.get("unsure"));
    assertNull(egret.get("mass_g"));
  }

  @Test
  void everyRowSaysWhereItComesFrom() {
    Map<String, Object> heron = row(ROWS.get(0));
    assertEquals("approved", heron.get("state"));
    assertEquals("M. Okafor", heron.get("approved_by"));
    assertEquals("tarn-heron-26.pdf", heron.get("source_file"));
    assertEquals(List.of(2, 3), heron.get("source_pages"));
    assertEquals(Caution.TEXT, heron.get("caution"));
  }

  @Test
  void csvAndJsonSayTheSame() throws Exception {
    String csv = CsvFields.text(RowFields.standard(), ROWS);
    List<CSVRecord> lines =
        CSVFormat.RFC4180.builder().setHeader().get().parse(new StringReader(csv)).getRecords();
    assertEquals(ROWS.size(), lines.size());
    for (int i = 0; i < ROWS.size(); i++) {
      JsonNode object = JsonFields.object(RowFields.standard(), ROWS.get(i));
      for (Map.Entry<String, JsonNode> member : object.properties()) {
        String cell = lines.get(i).get(member.getKey());
        if (member.getValue().isNull()) {
          assertEquals("", cell, member.getKey());
        } else if (member.getValue().isNumber()) {
          assertEquals(member.getValue().asDouble(), Double.parseDouble(cell), member.getKey());
        }
      }
    }
  }

  @Test
  void noCellOfTheCsvIsAFormula() throws Exception {
    String csv = CsvFields.text(RowFields.standard(), ROWS);
    for (CSVRecord line : CSVFormat.RFC4180.parse(new StringReader(csv))) {
      for (String cell : line) {
        boolean number = cell.matches("-?[0-9.]+");
        assertFalse(!number && !cell.isEmpty() && "=+-@".indexOf(cell.charAt(0)) >= 0, cell);
      }
    }
  }

  @Test
  void followsItsSchema() throws Exception {
    ObjectMapper mapper = new ObjectMapper();
    List<JsonNode> rows = new ArrayList<>();
    ROWS.forEach(row -> rows.add(JsonFields.object(RowFields.standard(), row)));
    List<String> problems =
        SchemaFile.named("cell-rows").problems(mapper.valueToTree(rows), "the rows");
    assertEquals(List.of(), problems);
    List<String> names = new ArrayList<>();
    schema().at("/$defs/row/properties").fieldNames().forEachRemaining(names::add);
    assertEquals(RowFields.standard().stream().map(Field::name).toList(), names);
  }

  /** The unit at the end of a name, its UCUM code in the schema, and the catalogue agree. */
  @Test
  void unitsAreThoseOfUcumAndOfTheCatalogue() throws Exception {
    UCUMFormat ucum = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
    Map<String, String> spelled = Map.of("Ah", "A.h", "Wh", "W.h", "degC", "Cel");
    JsonNode properties = schema().at("/$defs/row/properties");
    for (RowQuantity quantity : RowLayout.standard().columns()) {
      String suffix = RowLayout.standard().suffix(quantity).substring(1);
      assertEquals(QuantityCatalogue.standard().get(quantity.quantity()).unit(), quantity.unit());
      assertEquals(ucum.parse(spelled.getOrDefault(suffix, suffix)), ucum.parse(quantity.unit()));
      assertEquals(
          quantity.unit(), properties.path(quantity.name() + '_' + suffix).path("x-unit").asText());
    }
  }

  @Test
  void noTwoColumnsHaveOneName() {
    List<String> names = RowFields.standard().stream().map(Field::name).toList();
    assertEquals(names.size(), new HashSet<>(names).size());
    assertTrue(names.stream().allMatch(name -> name.matches("[a-z]+(_[A-Za-z0-9]+)*")));
  }

  private static JsonNode schema() throws Exception {
    return new ObjectMapper()
        .readTree(Files.readString(Path.of("schemas", "cell-rows.schema.json")));
  }
}
