package commonsheet.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.RecordStore;
import commonsheet.workbench.Served;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Undoing and doing again, in one sitting and after a restart. */
class UndoTest {
  private static final String CONFIRM = "{\"do\": \"confirm\", \"ids\": [\"%s\"]}";

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

  private byte[] confirmed(String id) throws Exception {
    assertEquals(200, served.deed("Ada", CONFIRM.formatted(id)).status());
    return Files.readAllBytes(served.file());
  }

  @Test
  void everyDeedCanBeTakenBackAndDoneAgainByteByByte() throws Exception {
    byte[] first = Files.readAllBytes(served.file());
    byte[] second = confirmed("s1");
    byte[] third = confirmed("s2");
    served.step("undo", "Ada");
    assertArrayEquals(second, Files.readAllBytes(served.file()));
    JsonNode view = served.step("undo", "ada").json();
    assertArrayEquals(first, Files.readAllBytes(served.file()));
    assertTrue(view.get("undo").isNull());
    assertEquals("confirm s1", view.get("redo").asText());
    served.step("redo", "Ada");
    view = served.step("redo", "Ada").json();
    assertArrayEquals(third, Files.readAllBytes(served.file()));
    assertEquals("confirm s2", view.get("undo").asText());
    assertTrue(view.get("redo").isNull());
  }

  @Test
  void historySurvivesARestart() throws Exception {
    byte[] first = Files.readAllBytes(served.file());
    confirmed("s1");
    byte[] third = confirmed("s2");
    served.restart();
    assertEquals("confirm s2", served.view().get("undo").asText());
    served.step("undo", "Ada");
    served.restart();
    served.step("undo", "Ada");
    assertArrayEquals(first, Files.readAllBytes(served.file()));
    served.step("redo", "Ada");
    served.restart();
    served.step("redo", "Ada");
    assertArrayEquals(third, Files.readAllBytes(served.file()));
  }

  @Test
  void aNewDeedEndsWhatCouldBeDoneAgain() throws Exception {
    confirmed("s1");
    served.step("undo", "Ada");
    confirmed("s2");
    assertTrue(served.view().get("redo").isNull());
    assertEquals(422, served.step("redo", "Ada").status());
  }

  @Test
  void nobodyTakesBackTheDeedOfAnother() throws Exception {
    byte[] after = confirmed("s1");
    Served.Answer refused = served.step("undo", "Bob");
    assertEquals(422, refused.status());
    assertTrue(refused.sentence().contains("Ada"), refused.sentence());
    assertArrayEquals(after, Files.readAllBytes(served.file()));
    assertEquals("Ada", served.view().get("undoBy").asText());
  }

  @Test
  void whatSomebodyElseChangedIsNeverUndone() throws Exception {
    confirmed("s1");
    String edited = Files.readString(served.file()).replace("\"NMC/graphite\"", "\"NCA/graphite\"");
    Files.writeString(served.file(), edited);
    assertTrue(served.view().get("undo").isNull());
    assertEquals(422, served.step("undo", "Ada").status());
    assertEquals(edited, Files.readString(served.file()));
    confirmed("s2");
    served.step("undo", "Ada");
    assertEquals(edited, Files.readString(served.file()));
  }

  @Test
  void anApprovalIsNotUndoneButReopenedAndComesBackWhenThatIsUndone() throws Exception {
    for (String id : List.of("s1", "s2", "s3", "s4", "c1")) {
      confirmed(id);
    }
    assertEquals(422, served.step("undo", "Bob").status());
    Served.Answer approved = served.step("approve", "Bob");
    assertEquals("approved", approved.json().get("state").asText(), approved.sentence());
    byte[] kept = Files.readAllBytes(served.file());
    assertTrue(served.view().get("undo").isNull());
    assertEquals(422, served.step("undo", "Bob").status());
    JsonNode reopened = served.deed("Ada", "{\"do\": \"reject\", \"ids\": [\"s4\"]}").json();
    assertEquals("reopened", reopened.get("state").asText());
    assertEquals("approved", served.step("undo", "Ada").json().get("state").asText());
    assertArrayEquals(kept, Files.readAllBytes(served.file()));
  }

  @Test
  void ownWorkIsApprovedOnlyWhenThePersonSaysSo() throws Exception {
    served.deed("Ada", "{\"do\": \"prepared\"}");
    for (String id : List.of("s1", "s2", "s3", "s4", "c1")) {
      served.deed("Bob", CONFIRM.formatted(id));
    }
    Served.Answer refused = served.step("approve", " ada");
    assertEquals(422, refused.status());
    assertTrue(refused.json().get("ownWork").asBoolean());
    assertFalse(refused.sentence().contains("--"), refused.sentence());
    String version = served.view().get("version").asText();
    Served.Answer said =
        served.post(
            "/api/record/approve",
            Map.of("file", Served.FILE, "version", version, "by", "Ada", "ownWork", true));
    assertEquals("approved", said.json().get("state").asText());
    assertTrue(RecordStore.open(served.file()).record().review().ownWork());
  }

  @Test
  void whatIsNotSettledIsNotApproved() throws Exception {
    Served.Answer refused = served.step("approve", "Bob");
    assertEquals(422, refused.status());
    assertTrue(refused.sentence().contains("s1"), refused.sentence());
  }

  @Test
  void aDamagedOrDeletedHistoryCostsTheHistoryOnly() throws Exception {
    confirmed("s1");
    Path own = folder.resolve(".commonsheet/undo").resolve(Served.FILE);
    for (Path each : files(own)) {
      Files.write(each, "rubbish".getBytes(StandardCharsets.UTF_8));
    }
    assertTrue(served.view().get("undo").isNull());
    byte[] before = confirmed("s2");
    confirmed("c1");
    served.step("undo", "Ada");
    assertArrayEquals(before, Files.readAllBytes(served.file()));
    for (Path each : files(own)) {
      Files.delete(each);
    }
    assertTrue(served.view().get("undo").isNull());
    confirmed("c1");
    assertEquals("confirm c1", served.view().get("undo").asText());
  }

  @Test
  void aForgedContentIsNotPutIntoTheRecord() throws Exception {
    confirmed("s1");
    Path own = folder.resolve(".commonsheet/undo").resolve(Served.FILE);
    for (Path each : files(own)) {
      if (each.toString().endsWith(".gz")) {
        Files.write(each, gzipped(Files.readString(served.file()).replace("2.6", "9.9")));
      }
    }
    byte[] before = Files.readAllBytes(served.file());
    assertEquals(422, served.step("undo", "Ada").status());
    assertArrayEquals(before, Files.readAllBytes(served.file()));
  }

  private static byte[] gzipped(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream packed = new GZIPOutputStream(bytes)) {
      packed.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.toByteArray();
  }

  @Test
  void aHistoryThatIsALinkElsewhereIsNotWrittenTo() throws Exception {
    Path elsewhere = Files.createDirectory(folder.resolveSibling(folder.getFileName() + "-else"));
    Files.createSymbolicLink(folder.resolve(".commonsheet"), elsewhere);
    confirmed("s1");
    assertTrue(files(elsewhere).isEmpty());
    assertTrue(served.view().get("undo").isNull());
    Files.delete(elsewhere);
  }

  @Test
  void theHistoryIsBoundedAndLeavesNothingElseBehind() throws Exception {
    for (int i = 0; i < UndoSteps.MOST + 20; i++) {
      String text = "NMC " + i;
      served.deed(
          "Ada", "{\"do\": \"cell\", \"member\": \"chemistry\", \"text\": \"" + text + "\"}");
    }
    Path own = folder.resolve(".commonsheet/undo").resolve(Served.FILE);
    assertTrue(files(own).size() <= UndoSteps.MOST + 2, () -> "" + own);
    assertEquals(
        List.of(".commonsheet", Served.FILE),
        files(folder).stream().map(f -> f.getFileName().toString()).sorted().toList());
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }
}
