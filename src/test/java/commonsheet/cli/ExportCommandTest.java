package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.export.Caution;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExportCommandTest {
  @TempDir Path folder;
  private String records;
  private String out;

  @BeforeEach
  void writeRecords() throws Exception {
    records = folder.resolve("records").toString();
    out = folder.resolve("out").toString();
    RecordStore store = new RecordStore(folder.resolve("records"));
    store.write(Records.of("tarnlight-tl-25", "tl-25.pdf", Standing.READ));
    store.write(Records.of("tarnlight-tl-30", "tl-30.pdf", Standing.UNSURE));
  }

  @Test
  void writesEveryFormAndSaysWhatItWrote() {
    Run run = Run.of("export", "--out", out, records);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(
        run.out().startsWith("2 cells, 0 with a voltage table, in 4 files in " + out), run.out());
    assertTrue(run.out().contains("2 records not approved"), run.out());
    assertTrue(run.out().contains(Caution.TEXT), run.out());
    for (String name :
        new String[] {"cells.csv", "cells.json", "tarnlight-tl-25.jsonld", "export.sha256"}) {
      assertTrue(Files.exists(Path.of(out, name)), name);
    }
  }

  @Test
  void writesOneFormIfAsked() {
    Run run = Run.of("export", "--format", "csv", "--out", out, records);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(Files.exists(Path.of(out, "cells.csv")));
    assertFalse(Files.exists(Path.of(out, "cells.json")));
    assertEquals(
        ExitStatus.DONE,
        Run.of("export", "--format", "JSON-LD,json", "--out", out, records).status());
    assertFalse(Files.exists(Path.of(out, "cells.csv")), "an export replaces the one before");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--format | xml | expected one of",
        "--cutoff | 0 | from 0.5 to 5",
        "--cutoff | NaN | is no number",
        "--cutoff | 36 | the voltage of one cell",
        "--cutoff | three | is no number",
        "--temperature | 296 | from -60 to 100",
      })
  void refusesWhatCannotBeMeant(String option, String value, String said) {
    Run run = Run.of("export", option, value, "--out", out, records);
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains(said), run.err());
    assertFalse(Files.exists(Path.of(out)));
  }

  @Test
  void leavesOutWhatNobodyApproved() {
    Run run = Run.of("export", "--approved-only", "--out", out, records);
    assertEquals(ExitStatus.NONE_READABLE, run.status());
    assertTrue(run.err().contains("none of 2 records is approved"), run.err());
    assertFalse(Files.exists(Path.of(out)));
  }

  @Test
  void doesNotWriteWhereItReads() {
    Run run = Run.of("export", "--out", records + "/export", records);
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("would be taken for records"), run.err());
  }

  @Test
  void refusesTheSameCellTwice() throws Exception {
    Path copy = Files.createDirectories(folder.resolve("copy")).resolve("again.json");
    Files.copy(Path.of(records, "tarnlight-tl-25.json"), copy);
    Run run = Run.of("export", "--out", out, records, copy.toString());
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains("tarnlight-tl-25"), run.err());
    assertFalse(Files.exists(Path.of(out)));
  }

  @Test
  void exportsTheRestWhereOneIsNoRecord() throws Exception {
    Files.writeString(Path.of(records, "broken.json"), "{}");
    Run run = Run.of("export", "--out", out, records);
    assertEquals(ExitStatus.SOME_UNREADABLE, run.status());
    assertTrue(run.err().contains("broken.json"), run.err());
    assertTrue(Files.exists(Path.of(out, "cells.json")));
  }

  @Test
  void writesOverNothingOfAnothers() throws Exception {
    Files.createDirectories(Path.of(out));
    Files.writeString(Path.of(out, "cells.csv"), "mine");
    Run run = Run.of("export", "--out", out, records);
    assertEquals(ExitStatus.NOT_WRITTEN, run.status());
    assertTrue(run.err().contains("cells.csv"), run.err());
    assertEquals("mine", Files.readString(Path.of(out, "cells.csv")));
    assertFalse(Files.exists(Path.of(out, "cells.json")));
  }

  @ParameterizedTest
  @CsvSource({"cell-rows", "voltage-table"})
  void theSchemasOfItsFilesArePrinted(String name) throws Exception {
    Run run = Run.of("schema", name);
    assertEquals(ExitStatus.DONE, run.status());
    assertEquals(Files.readString(Path.of("schemas", name + ".schema.json")), run.out());
  }
}
