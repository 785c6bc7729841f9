package commonsheet.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.RecordStore;
import commonsheet.record.StoredRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program as a process of its own that changes a record without a pause, killed at any moment
 * as by {@code kill -9}. How often can be set by {@code -Dkills=N}.
 */
class KillTest {
  private static final int KILLS = Integer.getInteger("kills", 6);

  /** Milliseconds within which a change is in every stage of being made. */
  private static final int LONGEST = 400;

  @TempDir private Path folder;
  private final HttpClient client = HttpClient.newHttpClient();

  /** A running program and the address it printed. */
  private record Program(Process process, String host, String key) {}

  /** The last change that was answered: its number, and the version of the file after it. */
  private record Answered(int number, String version) {}

  private Program started() throws IOException {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "commonsheet.cli.Main",
                "workbench",
                folder.toString(),
                "--no-browser")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    BufferedReader out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = out.readLine();
    String address = line.substring(line.indexOf("http://"));
    return new Program(
        process,
        address.substring(0, address.indexOf("/#")),
        address.substring(address.indexOf("#key=") + "#key=".length()));
  }

  private JsonNode asked(Program program, String path, Object body)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(program.host() + path))
            .header("Authorization", "Bearer " + program.key())
            .header("Content-Type", "application/json");
    if (body != null) {
      request.POST(HttpRequest.BodyPublishers.ofString(Served.JSON.writeValueAsString(body)));
    }
    HttpResponse<String> answer =
        client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    assertEquals(200, answer.statusCode(), answer.body());
    return Served.JSON.readTree(answer.body());
  }

  private JsonNode view(Program program) throws IOException, InterruptedException {
    return asked(program, "/api/record?file=" + Served.FILE, null);
  }

  /** Changes the chemistry to "NMC 1", "NMC 2" … until the program is gone. */
  private void change(Program program, int from, AtomicReference<Answered> last) {
    try {
      String version = view(program).get("version").asText();
      for (int number = from; ; number++) {
        Map<String, String> deed =
            Map.of("do", "cell", "member", "chemistry", "text", "NMC " + number);
        version =
            asked(
                    program,
                    "/api/record/change",
                    Map.of("file", Served.FILE, "version", version, "by", "Ada", "deed", deed))
                .get("version")
                .asText();
        last.set(new Answered(number, version));
      }
    } catch (IOException killed) {
      return;
    } catch (InterruptedException killed) {
      Thread.currentThread().interrupt();
    }
  }

  private static int number(StoredRecord stored) {
    return Integer.parseInt(stored.record().cell().chemistry().replace("NMC ", ""));
  }

  @Test
  void killedAtAnyMomentTheFileIsThatOfTheLastChangeAndUndoWorks() throws Exception {
    Path file = folder.resolve(Served.FILE);
    Served.write(file);
    Files.writeString(file, Files.readString(file).replace("NMC/graphite", "NMC 0"));
    Random random = new Random();
    int now = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Program program = started();
      int from = now + 1;
      AtomicReference<Answered> last = new AtomicReference<>(null);
      Thread changing = new Thread(() -> change(program, from, last));
      changing.start();
      while (last.get() == null && changing.isAlive()) {
        TimeUnit.MILLISECONDS.sleep(1);
      }
      TimeUnit.MILLISECONDS.sleep(random.nextInt(LONGEST));
      program.process().destroyForcibly().waitFor();
      changing.join();

      StoredRecord found = RecordStore.open(file);
      Answered told = last.get();
      now = number(found);
      assertTrue(now == told.number() || now == told.number() + 1, now + " after " + told);
      if (now == told.number()) {
        assertEquals(told.version(), found.version());
      }
    }
    Program program = started();
    for (int back = now - 1; back >= Math.max(0, now - 3); back--) {
      String version = view(program).get("version").asText();
      JsonNode undone =
          asked(
              program,
              "/api/record/undo",
              Map.of("file", Served.FILE, "version", version, "by", "Ada"));
      assertEquals("NMC " + back, undone.at("/record/cell/chemistry").asText());
    }
    leavesNothing();
    program.process().destroy();
    assertTrue(program.process().waitFor(30, TimeUnit.SECONDS));
    leavesNothing();
  }

  private void leavesNothing() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(
          List.of(".commonsheet", Served.FILE),
          files.map(each -> each.getFileName().toString()).sorted().toList());
    }
    Path history = folder.resolve(".commonsheet/undo").resolve(Served.FILE);
    try (Stream<Path> files = Files.list(history)) {
      List<String> names = files.map(each -> each.getFileName().toString()).toList();
      // At most what the last kill cut short; the next change removes it.
      assertTrue(names.stream().filter(name -> name.endsWith(".part")).count() <= 1, "" + names);
    }
  }
}
