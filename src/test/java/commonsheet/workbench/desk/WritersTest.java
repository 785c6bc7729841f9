package commonsheet.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordStore;
import commonsheet.review.Person;
import commonsheet.review.Settling;
import commonsheet.workbench.Served;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several persons and a text editor at one record. */
class WritersTest {
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

  @Test
  void aChangeByATextEditorIsNotWrittenOver() throws Exception {
    String seen = served.view().get("version").asText();
    String edited = Files.readString(served.file()).replace("TC-26E\"", "TC-26F\"");
    Files.writeString(served.file(), edited);
    for (String deed :
        List.of(
            "{\"do\": \"confirm\", \"ids\": [\"s1\"]}",
            "{\"do\": \"cell\", \"member\": \"model\", \"text\": \"TC-26E\"}")) {
      Served.Answer answer = served.deed("Ada", seen, deed);
      assertEquals(409, answer.status());
      assertEquals(served.view().get("version"), answer.json().get("version"));
      assertEquals(edited, Files.readString(served.file()));
    }
    assertEquals("TC-26F", served.view().at("/cell/1/text").asText());
    assertEquals(200, served.deed("Ada", "{\"do\": \"confirm\", \"ids\": [\"s1\"]}").status());
  }

  @Test
  void afterATextEditorHasBrokenTheFileItIsLeftAloneAndSaidSo() throws Exception {
    String seen = served.view().get("version").asText();
    Files.writeString(served.file(), "{ half of it");
    Served.Answer answer = served.deed("Ada", seen, "{\"do\": \"prepared\"}");
    assertEquals(422, answer.status());
    assertTrue(answer.sentence().contains(Served.FILE), answer.sentence());
    assertEquals("{ half of it", Files.readString(served.file()));
    Files.delete(served.file());
    assertEquals(404, served.deed("Ada", seen, "{\"do\": \"prepared\"}").status());
    assertTrue(Files.notExists(served.file()));
  }

  @Test
  void ofManyWhoSawTheSameOneIsFirstAndTheOthersAreTold() throws Exception {
    String seen = served.view().get("version").asText();
    ExecutorService persons = Executors.newFixedThreadPool(8);
    List<Callable<Integer>> deeds =
        IntStream.range(0, 16)
            .<Callable<Integer>>mapToObj(
                i -> () -> served.deed("P" + i, seen, "{\"do\": \"prepared\"}").status())
            .toList();
    int written = 0;
    for (Future<Integer> status : persons.invokeAll(deeds)) {
      assertTrue(Set.of(200, 409).contains(status.get()), status.get().toString());
      written += status.get() == 200 ? 1 : 0;
    }
    persons.shutdown();
    assertEquals(1, written);
    assertEquals(1, RecordStore.open(served.file()).record().review().steps().size());
  }

  @Test
  void whoTriesAgainOnWhatIsThereNowLosesNothingOfTheOthers() throws Exception {
    ExecutorService persons = Executors.newFixedThreadPool(4);
    List<Callable<Integer>> deeds =
        IntStream.range(0, 20).<Callable<Integer>>mapToObj(i -> () -> insisting(i)).toList();
    for (Future<Integer> tries : persons.invokeAll(deeds)) {
      assertTrue(tries.get() >= 1);
    }
    persons.shutdown();
    CellRecord record = RecordStore.open(served.file()).record();
    Set<String> names = new TreeSet<>();
    record.review().steps().forEach(step -> names.add(step.by()));
    assertEquals(20, names.size());
  }

  private int insisting(int number) throws Exception {
    for (int tries = 1; ; tries++) {
      Served.Answer answer = served.deed("P" + number, "{\"do\": \"prepared\"}");
      if (answer.status() == 200) {
        return tries;
      }
      assertEquals(409, answer.status());
    }
  }

  @Test
  void theCommandLineAndThePagesTakeTurns() throws Exception {
    String seen = served.view().get("version").asText();
    CellRecord other =
        new Settling(new Person("Cleo"), Instant.now())
            .confirmed(RecordStore.open(served.file()).record(), List.of("s2"));
    RecordStore.save(RecordStore.open(served.file()), other);
    assertEquals(409, served.deed("Ada", seen, "{\"do\": \"reject\", \"ids\": [\"s2\"]}").status());
    assertEquals("Cleo", served.view().at("/steps/0/by").asText());
  }
}
