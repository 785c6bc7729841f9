package commonsheet.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.check.Checks;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordStore;
import commonsheet.record.Statement;
import commonsheet.review.Approval;
import commonsheet.workbench.Served;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records without a sheet, and two records side by side. */
class TypedRecordTest {
  private static final Map<String, String> PACK =
      Map.of(
          "by", "Ada",
          "maker", "Fellside Cells",
          "model", "FS-LP 5000 <i>",
          "form", "pouch",
          "title", "Label of a pack",
          "where", "boat store of the society",
          "when", "2026-05-03");

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

  private Served.Answer add(String file, String deed) throws Exception {
    String version = served.get("/api/record/version", "file", file).json().get("version").asText();
    return served.post(
        "/api/record/change",
        Map.of("file", file, "version", version, "by", "Ada", "deed", Served.JSON.readTree(deed)));
  }

  @Test
  void aPacksLabelBecomesARecordWithEveryValuesOrigin() throws Exception {
    String file = served.post("/api/records", PACK).json().get("file").asText();
    assertEquals("fellside-cells-fs-lp-5000-i.json", file);
    add(file, "{\"do\": \"add\", \"quantity\": \"capacity\", \"typed\": \"5000 mAh\"}");
    add(
        file,
        "{\"do\": \"add\", \"quantity\": \"mass\", \"typed\": \"128 g\","
            + " \"seen\": {\"where\": \"our scale\", \"when\": \"2026-05-04\"}}");
    CellRecord record = RecordStore.open(folder.resolve(file)).record();
    assertFalse(record.source().isDocument());
    assertEquals("seen: boat store of the society, 2026-05-03", note(record, "s1"));
    assertEquals("seen: our scale, 2026-05-04", note(record, "s2"));
    assertEquals("5000 mAh", record.statement("s1").evidence().text());
    assertNull(record.statement("s1").evidence().page());
    assertEquals("Ada", record.review().preparedBy());
    assertEquals(record, Checks.standard().applied(record));
    JsonNode view = served.get("/api/record", "file", file).json();
    assertTrue(view.get("sheet").isNull());
    assertEquals(2, view.at("/progress/total").asInt());
    String version = view.get("version").asText();
    Served.Answer approved =
        served.post("/api/record/approve", Map.of("file", file, "version", version, "by", "Bob"));
    assertEquals("approved", approved.json().get("state").asText(), approved.sentence());
    assertEquals(List.of(), Approval.faults(RecordStore.open(folder.resolve(file)).record()));
  }

  private static String note(CellRecord record, String id) {
    Statement statement = record.statement(id);
    return statement.evidence().note();
  }

  @Test
  void asManyRecordsOfOneNameAsThereAreAndNoneWrittenOver() throws Exception {
    byte[] other = "somebody's work".getBytes(StandardCharsets.UTF_8);
    Files.write(folder.resolve("fellside-cells-fs-lp-5000-i-2.json"), other);
    assertEquals(200, served.post("/api/records", PACK).status());
    assertEquals(
        "fellside-cells-fs-lp-5000-i-3.json",
        served.post("/api/records", PACK).json().get("file").asText());
    assertEquals(
        new String(other, StandardCharsets.UTF_8),
        Files.readString(folder.resolve("fellside-cells-fs-lp-5000-i-2.json")));
  }

  @Test
  void namesCannotLeadOutOfTheFolder() throws Exception {
    Map<String, String> pack = new TreeMap<>(PACK);
    pack.put("maker", "../../..");
    pack.put("model", "/etc/passwd\\..\\con");
    String file = served.post("/api/records", pack).json().get("file").asText();
    assertTrue(file.matches("[a-z0-9-]+\\.json"), file);
    assertTrue(Files.exists(folder.resolve(file)));
  }

  @Test
  void whatIsMissingIsSaid() throws Exception {
    for (String member : List.of("by", "model", "title", "where", "when")) {
      Map<String, String> pack = new TreeMap<>(PACK);
      pack.remove(member);
      assertEquals(422, served.post("/api/records", pack).status(), member);
      pack.put(member, " ");
      assertEquals(422, served.post("/api/records", pack).status(), member);
    }
    Map<String, String> pack = new TreeMap<>(PACK);
    pack.put("when", "2026-02-30");
    assertEquals(422, served.post("/api/records", pack).status());
    pack.put("when", "2026-02-28");
    pack.put("form", "round");
    assertEquals(422, served.post("/api/records", pack).status());
  }

  @Test
  void aValueOfASheetNeedsItsPlaceAndOneWithoutHasNone() throws Exception {
    String typed = "{\"do\": \"add\", \"quantity\": \"mass\", \"typed\": \"45 g\"%s}";
    assertEquals(
        422,
        add(
                Served.FILE,
                typed.formatted(", \"seen\": {\"where\": \"a\", \"when\": \"2026-05-04\"}"))
            .status());
    String file = served.post("/api/records", PACK).json().get("file").asText();
    assertEquals(
        422,
        add(
                file,
                typed.formatted(
                    ", \"place\": {\"page\": 1, \"box\": [1, 2, 3, 4], \"text\": \"45 g\"}"))
            .status());
  }

  @Test
  void twoRecordsSideBySide() throws Exception {
    Path other = folder.resolve("other.json");
    Served.write(other);
    Files.writeString(
        other,
        Files.readString(other)
            .replace("\"id\": \"tarn-cells-tc-26e\"", "\"id\": \"other\"")
            .replace(
                "\"value\": 2.6,\n      \"unit\": \"A.h\"",
                "\"value\": 2.7,\n      \"unit\": \"A.h\"")
            .replace("\"revision\": \"1.2\"", "\"revision\": \"1.3\"")
            .replace("[2.5, 2.5]", "[2.6, 2.5]"));
    JsonNode told =
        served.get("/api/differences", "first", Served.FILE, "second", "other.json").json();
    assertEquals("tc-26e.pdf, revision 1.3", told.at("/second/source").asText());
    Map<String, JsonNode> rows = new TreeMap<>();
    told.get("rows").forEach(row -> rows.put(row.get("what").asText(), row));
    assertFalse(rows.get("Capacity, nominal").get("same").asBoolean());
    assertEquals("2.6 Ah", rows.get("Capacity, nominal").get("first").asText());
    assertEquals("2.7 Ah", rows.get("Capacity, nominal").get("second").asText());
    assertEquals("s1", rows.get("Capacity, nominal").get("secondId").asText());
    assertTrue(rows.get("Mass").get("same").asBoolean());
    assertTrue(rows.get("Maker").get("same").asBoolean());
    assertFalse(rows.get("Discharge curve \"1C\"").get("same").asBoolean());
    assertEquals(
        404, served.get("/api/differences", "first", Served.FILE, "second", "no.json").status());
    assertEquals(404, served.get("/api/differences", "first", Served.FILE).status());
  }

  @Test
  void theCatalogueNamesEverythingThatCanBeChosen() throws Exception {
    JsonNode catalogue = served.get("/api/catalogue").json();
    assertEquals(29, catalogue.get("quantities").size());
    assertEquals(14, catalogue.get("conditions").size());
    assertEquals(6, catalogue.get("statistics").size());
    assertEquals(6, catalogue.get("cellMembers").size());
    assertTrue(catalogue.get("caution").asText().startsWith("Caution:"));
    for (JsonNode quantity : catalogue.get("quantities")) {
      assertFalse(quantity.get("label").asText().isBlank(), quantity.toString());
    }
  }
}
