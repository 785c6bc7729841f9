package commonsheet.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.workbench.Served;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What persons do at a record's page, as the page asks for it; what is then in the file. */
class DeedsTest {
  @TempDir private Path folder;
  private Served served;

  @BeforeEach
  void open() throws IOException {
    served = Served.over(folder);
  }

  @AfterEach
  void close() {
    served.close();
  }

  private Statement inFile(String id) throws Exception {
    return RecordStore.open(served.file()).record().statement(id);
  }

  @Test
  void showsARecordInWords() throws Exception {
    JsonNode view = served.view();
    assertEquals(RecordStore.open(served.file()).version(), view.get("version").asText());
    JsonNode capacity = Served.part(view, "s1");
    assertEquals("Capacity", capacity.get("name").asText());
    assertEquals("2.6 Ah", capacity.get("value").asText());
    assertEquals("0.2 C discharge, to 2.5 V, at 23 °C", capacity.get("conditions").asText());
    assertEquals("Nominal 2600mAh", capacity.get("words").asText());
    assertEquals(3, capacity.at("/place/page").asInt());
    assertEquals("48 ±1 g", Served.part(view, "s2").get("value").asText());
    assertEquals("0 to 45 °C", Served.part(view, "s3").get("value").asText());
    assertEquals("s1", Served.part(view, "s5").get("waitsFor").get(0).asText());
    assertEquals("s5", view.get("parts").get(view.get("parts").size() - 1).get("id").asText());
    assertEquals("Tarn Cells", view.at("/cell/0/text").asText());
    assertFalse(view.at("/sheet/found").asBoolean());
    assertTrue(view.get("undo").isNull());
    assertEquals("[1]", Served.part(view, "c1").get("findings").toString());
  }

  @Test
  void confirmingSettlesWhatIsNamedAndNothingElse() throws Exception {
    JsonNode view = served.deed("Ada", "{\"do\": \"confirm\", \"ids\": [\"s1\", \"c1\"]}").json();
    assertTrue(Served.part(view, "s1").get("settled").asBoolean());
    assertFalse(Served.part(view, "s2").get("settled").asBoolean());
    assertEquals(Standing.CONFIRMED, inFile("s1").standing());
    assertEquals("Ada", view.at("/steps/0/by").asText());
    assertEquals("confirm s1, c1", view.get("undo").asText());
  }

  @Test
  void aCorrectionTypedInAnotherUnitIsKeptInTheRecordsUnitAndTheReadingBesideIt() throws Exception {
    served.deed("Ada", "{\"do\": \"correct\", \"id\": \"s1\", \"typed\": \"2550 mAh\"}");
    Statement corrected = inFile("s1");
    assertEquals(2.55, corrected.value());
    assertEquals("A.h", corrected.unit());
    assertEquals(Standing.CORRECTED, corrected.standing());
    assertEquals(2.6, corrected.original().value());
    assertEquals("Nominal 2600mAh", corrected.evidence().text());
    served.deed("Ada", "{\"do\": \"correct\", \"id\": \"s1\", \"typed\": \"2.5 Ah\"}");
    assertEquals(2.6, inFile("s1").original().value());
    assertEquals(
        "was nominal 2.6 Ah (0.2 C discharge, to 2.5 V, at 23 °C)",
        Served.part(served.view(), "s1").get("original").asText());
  }

  @Test
  void whatIsTypedIsAllThatIsKept() throws Exception {
    // The tolerance stood in the field; whoever took it out said that there is none.
    served.deed("Ada", "{\"do\": \"correct\", \"id\": \"s2\", \"typed\": \"48.5 g\"}");
    assertEquals(48.5, inFile("s2").value());
    assertEquals(null, inFile("s2").low());
    served.deed("Ada", "{\"do\": \"correct\", \"id\": \"s2\", \"typed\": \"47 to 49 g\"}");
    assertEquals(null, inFile("s2").value());
    assertEquals(47, inFile("s2").low());
    assertEquals(48, inFile("s2").original().value());
    assertEquals(47, inFile("s2").original().low());
  }

  @Test
  void aCorrectionOfQuantityStatisticConditionsAndPlace() throws Exception {
    served.deed(
        "Ada",
        "{\"do\": \"correct\", \"id\": \"s1\", \"quantity\": \"energy\", \"typed\": \"9.4 Wh\","
            + " \"statistic\": \"minimum\", \"conditions\": {\"temperature\": \"77 °F\","
            + " \"dischargeRate\": \"0.5C\", \"cutoffVoltage\": null, \"duration\": \"2 min\"},"
            + " \"place\": {\"page\": 4, \"box\": [10, 20, 30, 8], \"text\": \"9.4 Wh min.\"},"
            + " \"remark\": \"was taken from the wrong row\"}");
    Statement corrected = inFile("s1");
    assertEquals("energy", corrected.quantity());
    assertEquals("W.h", corrected.unit());
    assertEquals("minimum", corrected.statistic().label());
    assertEquals(25, corrected.conditions().get("temperature"), 1e-9);
    assertEquals(0.5, corrected.conditions().get("dischargeRate"));
    assertEquals(120, corrected.conditions().get("duration"));
    assertEquals(null, corrected.conditions().get("cutoffVoltage"));
    assertEquals(4, corrected.evidence().page());
    assertEquals("capacity", corrected.original().quantity());
    assertEquals(3, corrected.original().evidence().page());
    assertEquals("Nominal 2600mAh", corrected.original().evidence().text());
  }

  @Test
  void aValueTheSheetHasAndReadingHasNotIsAddedWithItsPlace() throws Exception {
    JsonNode view =
        served
            .deed(
                "Ada",
                "{\"do\": \"add\", \"quantity\": \"internalResistanceAC\", \"typed\": \"≤ 0.02 Ω\","
                    + " \"conditions\": {\"frequency\": \"1 kHz\"},"
                    + " \"place\": {\"page\": 2, \"box\": [1, 2, 30, 8], \"text\": \"max 20 mΩ\"}}")
            .json();
    Statement added = inFile(view.at("/steps/0/about/0").asText());
    assertEquals(20, added.value(), 1e-9);
    assertEquals("maximum", added.statistic().label());
    assertEquals(1000, added.conditions().get("frequency"));
    assertEquals("typed-in", Served.JSON.valueToTree(added).at("/evidence/method").asText());
    assertEquals("add internal resistance, AC", view.get("undo").asText());
  }

  @Test
  void returningRejectingAcceptingAndNaming() throws Exception {
    served.deed("Bob", "{\"do\": \"return\", \"ids\": [\"s3\"], \"remark\": \"<b>see p. 4</b>\"}");
    assertEquals("Bob: <b>see p. 4</b>", inFile("s3").doubts().get(0));
    served.deed("Bob", "{\"do\": \"reject\", \"ids\": [\"s4\"], \"reason\": \"not said\"}");
    assertEquals(Standing.REJECTED, inFile("s4").standing());
    JsonNode view =
        served
            .deed(
                "Bob",
                "{\"do\": \"accept\", \"rule\": \"pages/picture\", \"about\": [],"
                    + " \"reason\": \"drawn so\"}")
            .json();
    assertEquals("drawn so", view.at("/findings/0/accepted/reason").asText());
    served.deed("Bob", "{\"do\": \"cell\", \"member\": \"chemistry\", \"text\": \" NCA \"}");
    assertEquals("NCA", RecordStore.open(served.file()).record().cell().chemistry());
    served.deed("Bob", "{\"do\": \"cell\", \"member\": \"maker\", \"text\": \"\"}");
    assertEquals(null, RecordStore.open(served.file()).record().cell().maker());
    served.deed("Bob", "{\"do\": \"prepared\"}");
    assertEquals("Bob", RecordStore.open(served.file()).record().review().preparedBy());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"do\": \"dance\"}",
        "{\"do\": \"confirm\"}",
        "{\"do\": \"confirm\", \"ids\": []}",
        "{\"do\": \"confirm\", \"ids\": \"s1\"}",
        "{\"do\": \"confirm\", \"ids\": [\"s1\", \"s99\"]}",
        "{\"do\": \"confirm\", \"ids\": [7]}",
        "{\"do\": \"return\", \"ids\": [\"s1\"], \"remark\": \"  \"}",
        "{\"do\": \"correct\", \"id\": \"s1\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"typed\": \"2.6 Ah\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"typed\": \"\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"typed\": \"2,600 mAh\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"typed\": \"2.6 V\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"quantity\": \"luck\", \"typed\": \"7\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"quantity\": \"mass\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"statistic\": \"rough\"}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"conditions\": {\"mood\": \"good\"}}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"conditions\": {\"temperature\": \"warm\"}}",
        "{\"do\": \"correct\", \"id\": \"s1\", \"label\": \"1C\"}",
        "{\"do\": \"correct\", \"id\": \"c1\", \"typed\": \"3 V\"}",
        "{\"do\": \"correct\", \"id\": \"s99\", \"typed\": \"3 V\"}",
        "{\"do\": \"add\", \"quantity\": \"mass\", \"typed\": \"45 g\"}",
        "{\"do\": \"add\", \"quantity\": \"mass\", \"typed\": \"45 g\","
            + " \"place\": {\"page\": 99, \"box\": [1, 2, 3, 4], \"text\": \"45\"}}",
        "{\"do\": \"add\", \"quantity\": \"mass\", \"typed\": \"45 g\","
            + " \"place\": {\"page\": 1, \"box\": [1, 2, 3], \"text\": \"45\"}}",
        "{\"do\": \"add\", \"quantity\": \"mass\", \"typed\": \"45 g\","
            + " \"place\": {\"page\": 1, \"box\": [1, 2, -3, 4], \"text\": \"45\"}}",
        "{\"do\": \"add\", \"quantity\": \"mass\", \"typed\": \"45 g\","
            + " \"place\": {\"page\": 1.5, \"box\": [1, 2, 3, 1e9], \"text\": \"45\"}}",
        "{\"do\": \"accept\", \"rule\": \"no/such\", \"reason\": \"why\"}",
        "{\"do\": \"accept\", \"rule\": \"contradiction/mass\", \"reason\": \"\"}",
        "{\"do\": \"cell\", \"member\": \"soul\", \"text\": \"x\"}",
        "{\"do\": \"cell\", \"member\": \"form\", \"text\": \"round\"}",
      })
  void whatCannotBeDoneIsRefusedWithASentenceAndNothingIsWritten(String deed) throws Exception {
    String version = served.view().get("version").asText();
    Served.Answer answer = served.deed("Ada", deed);
    assertEquals(422, answer.status(), deed);
    assertTrue(answer.sentence().matches("(?s)[\\p{Lu}\"].{10,}\\."), answer.sentence());
    assertEquals(version, served.view().get("version").asText());
    assertEquals("null", served.view().get("undo").asText());
  }

  @Test
  void namesOfPersonsAreHeldToTheirForm() throws Exception {
    for (String by : new String[] {"", "  ", "a\nb", "x".repeat(81)}) {
      assertEquals(422, served.deed(by, "{\"do\": \"prepared\"}").status(), by);
    }
    assertEquals(200, served.deed("<script>", "{\"do\": \"prepared\"}").status());
    assertEquals("<script>", served.view().at("/steps/0/by").asText());
  }

  @Test
  void onlyTheVersionThatThePersonSawIsChanged() throws Exception {
    String seen = served.view().get("version").asText();
    assertEquals(
        200, served.deed("Ada", seen, "{\"do\": \"confirm\", \"ids\": [\"s1\"]}").status());
    Served.Answer second = served.deed("Bob", seen, "{\"do\": \"reject\", \"ids\": [\"s1\"]}");
    assertEquals(409, second.status());
    assertEquals(served.view().get("version"), second.json().get("version"));
    assertNotEquals(seen, second.json().get("version").asText());
    assertEquals(Standing.CONFIRMED, inFile("s1").standing());
  }
}
