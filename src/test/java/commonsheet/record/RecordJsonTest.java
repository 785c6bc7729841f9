package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordJsonTest {
  @Test
  void writesWhatItReadCharacterForCharacter() throws Exception {
    String text = Samples.full();
    assertEquals(text, RecordJson.write(RecordJson.read(text, "sample")));
  }

  @Test
  void writesMembersInOneOrderWhateverTheOrderRead() throws Exception {
    String shuffled =
        Samples.full()
            .replace(
                "\"dischargeRate\": 0.2,\n        \"cutoffVoltage\": 2.5",
                "\"cutoffVoltage\": 2.5,\n        \"dischargeRate\": 0.2");
    assertEquals(Samples.full(), RecordJson.write(RecordJson.read(shuffled, "sample")));
  }

  @ParameterizedTest
  @CsvSource({
    "2.5000000001, 2.5",
    "0.30000000000000004, 0.3",
    "2000.0, 2000",
    "2E3, 2000",
    "-20.0, -20",
    "-0.0, 0",
    "0.000012345678, 0.0000123457",
    "31536000, 31536000",
    "1234567.8, 1234568",
    "100, 100",
    "1e21, 1000000000000000000000",
  })
  void writesNumbersPlainly(double number, String text) {
    assertEquals(text + "\n", JsonText.of(JsonNodeFactory.instance.numberNode(number)));
  }

  @Test
  void keepsWordsAsPrinted() throws Exception {
    String text =
        Samples.full()
            .replace("Nominal 2600mAh", "标称容量 \\\"2600mAh\\\"\\n≥2550mAh \\\\ ⅕C 🔋\\u0007");
    assertEquals(text, RecordJson.write(RecordJson.read(text, "sample")));
    assertTrue(text.contains("≥2550mAh"));
  }

  @Test
  void refusesNumbersThatJsonCannotHold() {
    CellRecord record =
        Records.with(
            Records.statement("s1", "capacity", null, Double.NaN, "A.h", Conditions.NONE, 1));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> RecordJson.write(record));
    assertEquals("/statements/0/value: NaN is no number that a record can hold", e.getMessage());
  }

  @Test
  void saysWhichRecordIsNotValidAndWhere() throws IOException {
    String text =
        Samples.full()
            .replace("\"unit\": \"A.h\",\n      \"cond", "\"unit\": \"V\",\n      \"cond");
    RecordException e =
        assertThrows(RecordException.class, () -> RecordJson.read(text, "tc-26e.json"));
    assertEquals(
        "tc-26e.json is not a valid record: /statements/0/unit: must be \"A.h\", not \"V\"",
        e.getMessage());
  }

  @Test
  void saysHowManyMoreProblemsThereAre() {
    RecordException e = assertThrows(RecordException.class, () -> RecordJson.read("{}", "x.json"));
    assertEquals(
        "x.json is not a valid record: the record: \"schema\" is missing (and 7 more)",
        e.getMessage());
  }

  @Test
  void saysWhereTextIsNoJson() {
    RecordException e =
        assertThrows(RecordException.class, () -> RecordJson.read("{\n\"a\": ", "x.json"));
    assertTrue(e.getMessage().startsWith("x.json: line 2, column "), e.getMessage());
  }

  @Test
  void saysWhereANumberDoesNotFitAlthoughTheSchemaAllowsIt() throws IOException {
    String text = Samples.full().replace("\"version\": 1", "\"version\": 99999999999");
    RecordException e = assertThrows(RecordException.class, () -> RecordJson.read(text, "x.json"));
    assertTrue(
        e.getMessage().startsWith("x.json: /source/layout/version: the value does not fit"),
        e.getMessage());
  }

  @Test
  void leavesOutWhatTheSheetDoesNotSay() {
    CellRecord record =
        new CellRecord(
            CellRecord.SCHEMA,
            "tc-26e",
            new Cell(null, null, null, null, null, null, Map.of()),
            new Source(null, null, null, null, "tc-26e.pdf", Records.SHA256, 1, null, null),
            List.of(),
            List.of(),
            List.of(),
            Review.DRAFT);
    assertEquals(
        """
        {
          "schema": "commonsheet/cell-record/1",
          "id": "tc-26e",
          "cell": {},
          "source": {
            "file": "tc-26e.pdf",
            "sha256": "%s",
            "pages": 1
          },
          "statements": [],
          "curves": [],
          "findings": [],
          "review": {
            "state": "draft"
          }
        }
        """
            .formatted(Records.SHA256),
        RecordJson.write(record));
  }
}
