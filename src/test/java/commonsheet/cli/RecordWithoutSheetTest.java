package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.RecordException;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command that takes records takes those that were typed in without a sheet. */
class RecordWithoutSheetTest {
  private static final String STATEMENT =
      """
      {"id": "%s", "quantity": "%s", "value": %s, "unit": "%s", "conditions": {},
       "evidence": {"text": "%s", "method": "typed-in", "note": "seen: boat store, 2026-05-03"},
       "standing": "corrected"}\
      """;

  private static final String RECORD =
      """
      {"schema": "commonsheet/cell-record/1", "id": "fellside-fs-5000",
       "cell": {"maker": "Fellside Cells", "model": "FS-5000", "form": "pouch"},
       "source": {"title": "Pack label", "where": "boat store", "when": "2026-05-03"},
       "statements": [%s, %s, %s, %s], "curves": [], "findings": [],
       "review": {"state": "draft", "preparedBy": "curator", "preparedAt": "2026-05-03T10:00:00Z"}}
      """;

  @TempDir private Path folder;
  private Path record;

  @BeforeEach
  void write() throws IOException {
    record = folder.resolve("fellside-fs-5000.json");
    Files.writeString(
        record,
        RECORD.formatted(
            STATEMENT.formatted("s1", "capacity", "5", "A.h", "5000 mAh"),
            STATEMENT.formatted("s2", "nominalVoltage", "3.7", "V", "3.7 V"),
            STATEMENT.formatted(
                "s3", "maximumContinuousDischargeCurrent", "125", "A", "25C, 125 A"),
            STATEMENT.formatted("s4", "mass", "128", "g", "128 g")));
  }

  private static String done(String... arguments) {
    Run run = Run.of(arguments);
    assertEquals(0, run.status(), run.err());
    return run.out();
  }

  @Test
  void isCheckedReviewedApprovedAndVerified() {
    assertTrue(done("check", record.toString()).contains("1 record"));
    String shown = done("review", "show", record.toString());
    assertTrue(shown.contains("\"5000 mAh\", seen: boat store, 2026-05-03"), shown);
    done("review", "correct", record.toString(), "s4", "--value", "130", "--by", "curator");
    assertTrue(done("review", "list", folder.toString()).contains("1 record"));
    done("review", "approve", record.toString(), "--by", "reviewer");
    assertTrue(done("verify", folder.toString()).contains("1 approval holds"));
    String same = done("review", "differences", record.toString(), record.toString());
    assertTrue(same.contains("Pack label, boat store, 2026-05-03"), same);
  }

  @Test
  void isComparedAndExportedWithItsOriginNamed() throws IOException {
    String compared = done("compare", "--current", "10A", record.toString());
    assertTrue(compared.contains("FS-5000"), compared);
    assertTrue(compared.contains("boat store"), compared);
    String table = done("table", "--format", "markdown", record.toString());
    assertTrue(table.contains("Pack label, boat store, 2026-05-03"), table);
    Path out = folder.resolve("out");
    done("export", "--out", out.toString(), record.toString());
    assertTrue(Files.readString(out.resolve("cells.csv")).contains("boat store"));
    for (String form : new String[] {"html", "json", "csv", "markdown"}) {
      done("compare", "--current", "10A", "--format", form, record.toString());
    }
  }

  @Test
  void theRecordOfASheetDoesNotReplaceIt() throws IOException {
    String before = Files.readString(record);
    CellRecord ofSheet = Records.of("fellside-fs-5000", "fs-5000.pdf", Standing.READ);
    assertThrows(RecordException.class, () -> new RecordStore(folder).write(ofSheet));
    assertEquals(before, Files.readString(record));
  }
}
