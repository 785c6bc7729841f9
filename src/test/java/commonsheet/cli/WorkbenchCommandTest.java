package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.export.Caution;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What keeps the workbench from opening; that it opens and ends is held by KillTest. */
class WorkbenchCommandTest {
  @TempDir private Path home;

  private static void assertSentence(String sentence, Run run) {
    assertEquals("commonsheet: " + sentence + "\n", run.err());
    assertEquals("", run.out());
    assertEquals(ExitStatus.USAGE, run.status());
  }

  @Test
  void aFolderThatIsNoneIsSaid() throws IOException {
    Path none = home.resolve("none");
    assertSentence(
        none + " is no folder; name the one that `commonsheet read` wrote its records into",
        Run.of("workbench", none.toString()));
    Path file = Files.createFile(home.resolve("file"));
    assertEquals(ExitStatus.USAGE, Run.of("workbench", file.toString()).status());
    assertSentence(
        none + " is no folder; name one that holds sheets",
        Run.of("workbench", home.toString(), "--sheets", none.toString()));
    assertTrue(Files.notExists(none));
  }

  @Test
  void aPortThatIsInUseIsSaid() throws IOException {
    try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      Run run =
          Run.of("workbench", home.toString(), "--no-browser", "--port", "" + other.getLocalPort());
      assertTrue(
          run.err()
              .startsWith("commonsheet: the port " + other.getLocalPort() + " cannot be had ("),
          run.err());
      assertTrue(run.err().endsWith("; choose another by --port\n"), run.err());
      assertEquals(ExitStatus.USAGE, run.status());
    }
  }

  @Test
  void aPortThatIsNoneIsSaid() {
    assertSentence(
        "65536 is no port; give one from 1 to 65535",
        Run.of("workbench", home.toString(), "--port", "65536"));
    assertEquals(ExitStatus.USAGE, Run.of("workbench", "--port", "-1").status());
    assertEquals(ExitStatus.USAGE, Run.of("workbench", "--port", "web").status());
  }

  @Test
  void theHelpHasTheCaution() {
    String help = Run.of("workbench", "--help").out().replaceAll("\\s+", " ");
    assertTrue(help.contains(Caution.TEXT), help);
  }
}
