package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExplainCommandTest {
  private static final String SHEET = "fixtures/layouts/thistlemoor-tm18650-26.pdf";
  private static final String RULES = "fixtures/layouts/rules";

  @TempDir private Path folder;

  @Test
  void tellsOfTheLayoutOfEachLineAndOfEachStatement() {
    Run run = Run.of("explain", "--layouts", RULES, SHEET);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "Layout thistlemoor 1: its first pages say \"Thistlemoor Cellwrights\"");
    holds(run, "\nPage 1\n");
    holds(run, "  + Juice | 2600 → layout/thistlemoor/capacity\n");
    holds(run, "  - Kettle | 230 V → ignored by layout thistlemoor\n");
    holds(run, "\nThistlemoor Cellwrights TM18650-26 — 16 statements, 0 unsure, ");
    holds(run, "  p. 1 capacity minimum 2.5 A.h (dischargeRate 0.2, cutoffVoltage 2.75) — read\n");
    holds(run, "  p. 1 dischargeTemperature -20 to 60 Cel — read\n");
  }

  @Test
  void saysWhatIsUnsureAndWhy() {
    Run run = Run.of("explain", "fixtures/sheets/ostrevik-ov32700.pdf", "--page", "1");
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "\nPage 1\n");
    assertFalse(run.out().contains("Page 2"), run.out());
    assertFalse(run.out().contains("p. 2 "), run.out());
    for (String line : run.out().lines().filter(l -> l.endsWith("— unsure")).toList()) {
      holds(run, line + "\n      ? ");
    }
  }

  @Test
  void drawsEachPage() throws IOException {
    Path pictures = folder.resolve("pictures");
    Run run = Run.of("explain", "--layouts", RULES, "--pictures", pictures.toString(), SHEET);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "1 picture in " + pictures);
    assertTrue(ImageIO.read(pictures.resolve("page-1.png").toFile()).getWidth() > 500);
  }

  @Test
  void aStarterIsReadAsARuleAsItIs() throws IOException {
    Path starter = folder.resolve("rules").resolve("new.yaml");
    Run first = Run.of("explain", "--starter", starter.toString(), SHEET);
    assertEquals(ExitStatus.DONE, first.status(), first.err());
    assertTrue(Files.readString(starter).contains("say: [\"Juice\"]"));
    Run second = Run.of("explain", "--layouts", starter.getParent().toString(), SHEET);
    holds(second, "Layout cell-card 1: its first pages say \"Cell card\"");
  }

  @Test
  void aFileThatIsThereIsWrittenOverOnlyByForce() throws IOException {
    Path starter = Files.writeString(folder.resolve("mine.yaml"), "# my work");
    Run refused = Run.of("explain", "--starter", starter.toString(), SHEET);
    assertEquals(ExitStatus.USAGE, refused.status());
    assertTrue(refused.err().contains(starter + " is there already; name another"), refused.err());
    assertEquals("# my work", Files.readString(starter));
    Run forced = Run.of("explain", "--force", "--starter", starter.toString(), SHEET);
    assertEquals(ExitStatus.DONE, forced.status(), forced.err());
    assertTrue(Files.readString(starter).startsWith("# A starting point"));
  }

  @Test
  void aFaultInARuleFileIsSaidWithItsLine() throws IOException {
    Path rule = Files.writeString(folder.resolve("a.yaml"), "name: a\nversion: x\n");
    Run run = Run.of("explain", "--layouts", folder.toString(), SHEET);
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains(rule + ", line 2: \"version\" must be a whole"), run.err());
    assertEquals("", run.out());
  }

  @Test
  void aPageThatIsNotThereIsSaidToBeNone() {
    Run run = Run.of("explain", "--page", "7", SHEET);
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("and no page 7"), run.err());
  }

  private static void holds(Run run, String words) {
    assertTrue(run.out().contains(words), run.out());
  }
}
