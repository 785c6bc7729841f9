package commonsheet.workbench.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.api.DatasheetReader;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordStore;
import commonsheet.record.Statement;
import commonsheet.workbench.Requests;
import java.io.ByteArrayInputStream;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a record's page asks of its sheet, over HTTP. */
class PlaceRoutesTest {
  private static final Path SHEET = Path.of("fixtures", "sheets", "harrowmere-hm18650-29e.pdf");

  private static CellRecord record;

  @TempDir Path folder;

  @BeforeAll
  static void read() throws Exception {
    record = DatasheetReader.standard().read(SHEET).records().get(0);
  }

  private Requests open() throws Exception {
    Path records = Files.createDirectories(folder.resolve("records"));
    Path sheets = Files.createDirectories(folder.resolve("sheets"));
    new RecordStore(records).write(record);
    Files.copy(SHEET, sheets.resolve(SHEET.getFileName()));
    return Requests.to(records, sheets);
  }

  private static String file() {
    return record.id() + ".json";
  }

  @Test
  void pictureHasAtLeastTheWidthAskedFor() throws Exception {
    try (Requests workbench = open()) {
      HttpResponse<byte[]> answer =
          workbench.ask("place/picture", "file", file(), "page", "1", "width", "700");
      assertEquals("image/png", answer.headers().firstValue("Content-Type").orElseThrow());
      assertTrue(ImageIO.read(new ByteArrayInputStream(answer.body())).getWidth() >= 700);
    }
  }

  @Test
  void everyPlaceOfTheRecordReadsAsTheRecordSays() throws Exception {
    try (Requests workbench = open()) {
      int read = 0;
      for (Statement each : record.statements()) {
        if (each.evidence().box() == null || each.value() == null) {
          continue;
        }
        String body =
            "{\"file\":\"%s\",\"page\":%d,\"box\":%s,\"quantity\":\"%s\"}"
                .formatted(file(), each.evidence().page(), each.evidence().box(), each.quantity());
        JsonNode answer = workbench.post("place/read", body);
        read += answer.path("typed").isTextual() ? 1 : 0;
      }
      assertTrue(read >= 15, read + " of " + record.statements().size());
    }
  }

  @Test
  void wordsAreFoundWhereTheyStand() throws Exception {
    try (Requests workbench = open()) {
      JsonNode words = workbench.get("place/words", "file", file(), "page", "1").path("words");
      JsonNode hits =
          workbench.get("place/search", "file", file(), "text", "CHARGE voltage").path("hits");
      assertFalse(hits.isEmpty());
      boolean stands = false;
      for (JsonNode word : words) {
        stands |= word.path("box").get(1).equals(hits.get(0).path("box").get(1));
      }
      assertTrue(stands);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "place/picture, 9, 700, 404",
    "place/picture, 0, 700, 422",
    "place/picture, 1, x, 422",
    "place/words, 9, 1, 404",
    "place/words, -1, 1, 422",
  })
  void whatIsNotThereIsRefusedWithASentence(String path, String page, String width, int status)
      throws Exception {
    try (Requests workbench = open()) {
      HttpResponse<byte[]> answer =
          workbench.ask(path, "file", file(), "page", page, "width", width);
      assertEquals(status, answer.statusCode());
      assertTrue(new String(answer.body(), StandardCharsets.UTF_8).contains("sentence"));
    }
  }

  @Test
  void changedSheetIsNotShownAsTheOneThatWasRead() throws Exception {
    try (Requests workbench = open()) {
      Path sheet = folder.resolve("sheets").resolve(SHEET.getFileName());
      Files.copy(
          Path.of("fixtures", "sheets", "ellerbeck-eb21700-48.pdf"),
          sheet,
          java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      HttpResponse<byte[]> answer =
          workbench.ask("place/picture", "file", file(), "page", "1", "width", "700");
      assertEquals(404, answer.statusCode());
      String sentence = new String(answer.body(), StandardCharsets.UTF_8);
      assertTrue(sentence.contains("is not the file that this record was read from"), sentence);
    }
  }

  @Test
  void sheetWithAnotherNameIsFoundByItsContent() throws Exception {
    try (Requests workbench = open()) {
      Path sheets = folder.resolve("sheets");
      Files.move(sheets.resolve(SHEET.getFileName()), sheets.resolve("renamed.pdf"));
      assertEquals(
          200,
          workbench.ask("place/picture", "file", file(), "page", "1", "width", "700").statusCode());
      JsonNode sheet = workbench.get("record", "file", file()).path("sheet");
      assertTrue(sheet.path("found").asBoolean());
      assertTrue(sheet.path("reason").asText().contains("renamed.pdf"));
    }
  }

  @Test
  void missingSheetIsSaidWithWhereItWasLookedFor() throws Exception {
    try (Requests workbench = open()) {
      Files.delete(folder.resolve("sheets").resolve(SHEET.getFileName()));
      JsonNode sheet = workbench.get("record", "file", file()).path("sheet");
      assertFalse(sheet.path("found").asBoolean());
      for (String part : List.of(SHEET.getFileName().toString(), "sheets", "--sheets")) {
        assertTrue(sheet.path("reason").asText().contains(part), part);
      }
    }
  }
}
