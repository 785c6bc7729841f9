package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs of {@code load}, on the log of the survey boat. */
class LoadCommandTest {
  private static final String LOG = "fixtures/story/boat-log.csv";

  @TempDir private Path folder;

  @Test
  void aLogBecomesALoadThatCellsAreComparedUnder() throws Exception {
    Path load = folder.resolve("boat.json");
    Run run = Run.of("load", "--charged-back", "11.66Ah", "--out", load.toString(), LOG);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(run.out().contains("the charger put back 11.66 Ah"), run.out());
    assertTrue(run.out().contains("A over 10 s, "), run.out());
    Path records = folder.resolve("records");
    new RecordStore(records).write(Records.of("tarnlight-tl-25", "t.pdf", Standing.READ));
    Run compared = Run.of("compare", "--load", load.toString(), "--packs", "2", records.toString());
    assertEquals(ExitStatus.DONE, compared.status(), compared.err());
    assertTrue(compared.out().contains("Cells at a mix of "), compared.out());
  }

  @Test
  void aLogThatCannotBeUsedLeavesNothingBehind() throws IOException {
    Path log = Files.writeString(folder.resolve("log.csv"), "a,b\n1,2\n3,4\n");
    Path out = folder.resolve("load.json");
    Run run = Run.of("load", "--out", out.toString(), log.toString());
    assertEquals(ExitStatus.NONE_READABLE, run.status());
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("choose it by --time-column"), run.err());
    assertFalse(Files.exists(out));
  }

  @Test
  void aSensorTooFarOffIsNotCorrected() {
    Run run = Run.of("load", "--charged-back", "30Ah", LOG);
    assertEquals(ExitStatus.NONE_READABLE, run.status());
    assertTrue(run.err().contains("no sensor is so far off"), run.err());
    Run negative = Run.of("load", "--charged-back", "-1Ah", LOG);
    assertEquals(ExitStatus.USAGE, negative.status());
  }

  @Test
  void theSchemaOfLoadsIsPrinted() {
    assertTrue(Run.of("schema", "load").out().contains("commonsheet/load/1"));
  }

  @Test
  void saysNothingOfALoadThatItCannotWrite() throws IOException {
    Path inTheWay = Files.writeString(folder.resolve("file"), "");
    Run run = Run.of("load", "--out", inTheWay.resolve("load.json").toString(), LOG);
    assertEquals(ExitStatus.NOT_WRITTEN, run.status());
    assertEquals("", run.out());
    assertTrue(run.err().contains("could not be written"), run.err());
  }
}
