package commonsheet.workbench.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.workbench.Requests;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the list of records asks, over HTTP. */
class FolderRoutesTest {
  private static final Path SHEET = Path.of("fixtures", "sheets", "harrowmere-hm18650-29e.pdf");

  @TempDir Path home;
  private Path records;
  private Path sheets;

  @BeforeEach
  void folders() throws Exception {
    records = Files.createDirectories(home.resolve("records"));
    sheets = Files.createDirectories(home.resolve("sheets"));
  }

  private static List<String> texts(JsonNode list, String member) {
    List<String> texts = new ArrayList<>();
    list.forEach(each -> texts.add(each.path(member).asText()));
    return texts;
  }

  private static JsonNode finished(Requests workbench, String job) throws Exception {
    JsonNode state = workbench.get("job", "id", job);
    while (List.of("waiting", "working").contains(state.path("state").asText())) {
      Thread.sleep(100);
      state = workbench.get("job", "id", job);
    }
    return state;
  }

  @Test
  void sheetIsReadIntoARecordAndThenListedWithIt() throws Exception {
    Files.copy(SHEET, sheets.resolve(SHEET.getFileName()));
    try (Requests workbench = Requests.to(records, sheets)) {
      JsonNode before = workbench.get("folder");
      assertEquals(0, before.path("records").size());
      String sheet = before.path("sheets").get(0).path("sheet").asText();
      String job =
          workbench
              .post("sheets/read", "{\"sheet\":\"" + sheet + "\",\"by\":\"a reader\"}")
              .path("job")
              .asText();
      JsonNode done = finished(workbench, job);
      assertEquals("done", done.path("state").asText(), done.toString());
      JsonNode after = workbench.get("folder");
      assertEquals(List.of("HM18650-29E"), texts(after.path("records"), "model"), after.toString());
      assertEquals(done.path("records"), after.path("sheets").get(0).path("records"));
    }
  }

  @Test
  void sheetThatCannotBeReadSaysWhyAndLeavesNothing() throws Exception {
    Files.writeString(sheets.resolve("note.pdf"), "no PDF at all");
    try (Requests workbench = Requests.to(records, sheets)) {
      String job = workbench.post("sheets/read", "{\"sheet\":\"1/note.pdf\"}").path("job").asText();
      JsonNode failed = finished(workbench, job);
      assertEquals("failed", failed.path("state").asText());
      assertTrue(failed.path("sentence").asText().startsWith("note.pdf is neither a PDF"));
      assertEquals(0, workbench.get("folder").path("records").size());
    }
  }

  @Test
  void onlyDamagedRecordsAreProblems() throws Exception {
    Files.writeString(
        records.resolve("cut.json"), "{\"schema\": \"commonsheet/cell-record/1\", \"id\"");
    Files.writeString(
        records.resolve("less.json"),
        "{\"schema\": \"commonsheet/cell-record/1\", \"id\": \"less\"}");
    Files.writeString(records.resolve("other.json"), "{\"resources\": []}");
    Files.writeString(records.resolve("list.json"), "[1, 2]");
    try (Requests workbench = Requests.to(records)) {
      JsonNode problems = workbench.get("folder").path("problems");
      assertEquals(List.of("cut.json", "less.json"), texts(problems, "file"));
      assertTrue(problems.get(0).path("sentence").asText().contains("line 1"));
    }
  }

  @Test
  void recordThatIsMendedIsListedAtTheNextLook() throws Exception {
    Path sample = Path.of("src", "test", "resources", "record", "samples");
    Path good;
    try (var files = Files.list(sample)) {
      good = files.filter(file -> file.toString().endsWith(".json")).sorted().findFirst().get();
    }
    Path file = records.resolve("sample.json");
    Files.writeString(file, "");
    try (Requests workbench = Requests.to(records)) {
      assertEquals(1, workbench.get("folder").path("problems").size());
      Files.copy(good, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      JsonNode after = workbench.get("folder");
      assertEquals(0, after.path("problems").size(), after.toString());
      assertEquals(1, after.path("records").size());
    }
  }

  @Test
  void hiddenFilesLinksAndOwnPicturesAreNoSheets() throws Exception {
    Path outside = Files.createDirectories(home.resolve("outside"));
    Files.copy(SHEET, outside.resolve("secret.pdf"));
    Files.createSymbolicLink(sheets.resolve("link.pdf"), outside.resolve("secret.pdf"));
    Files.createSymbolicLink(sheets.resolve("linked"), outside);
    Files.copy(SHEET, sheets.resolve(".hidden.pdf"));
    Files.createDirectories(sheets.resolve(".git"));
    Files.copy(SHEET, sheets.resolve(".git").resolve("a.pdf"));
    Files.write(records.resolve("a-page-1-chart-2.png"), new byte[] {1});
    Files.write(records.resolve("scan.png"), new byte[] {1});
    try (Requests workbench = Requests.to(records, sheets)) {
      assertEquals(List.of("0/scan.png"), texts(workbench.get("folder").path("sheets"), "sheet"));
      for (String each : List.of("1/link.pdf", "1/../outside/secret.pdf", "1/linked/secret.pdf")) {
        assertEquals(
            404, workbench.tell("sheets/read", "{\"sheet\":\"" + each + "\"}").statusCode(), each);
      }
    }
  }
}
