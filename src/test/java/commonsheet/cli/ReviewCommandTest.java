package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** check, review and verify as a script uses them. */
class ReviewCommandTest {
  @TempDir Path folder;
  private String record;

  @BeforeEach
  void writeADraft() throws Exception {
    record =
        new RecordStore(folder).write(Records.of("tl-25", "tl-25.pdf", Standing.READ)).toString();
  }

  @Test
  void goesFromADraftToAnApprovalThatHolds() {
    assertEquals("s1\n", Run.of("review", "show", "--unsettled", "--ids", record).out());
    Run confirmed = Run.of("review", "confirm", record, "s1", "--by", "second reviewer");
    assertEquals(
        """
        s1 p. 1 capacity nominal 2.5 A.h — confirmed, "2500 mAh"
        tl-25: draft, 0 unsettled, 0 open findings; ready to be approved
        """,
        confirmed.out());
    assertEquals("\n", Run.of("review", "show", "--unsettled", "--ids", record).out());
    Run approved = Run.of("review", "approve", record, "--by", "second reviewer");
    assertEquals(ExitStatus.DONE, approved.status(), approved.err());
    assertTrue(approved.out().startsWith("tl-25: approved by second reviewer, content "));
    Run verified = Run.of("verify", folder.toString());
    assertEquals("1 approval holds, 0 do not, 0 drafts\n", verified.out());
    assertEquals(ExitStatus.DONE, verified.status());
  }

  @Test
  void refusesWhatIsNotSettledAndOnesOwnWork() {
    Run early = Run.of("review", "approve", record, "--by", "curator");
    assertEquals(ExitStatus.FOUND, early.status());
    assertEquals(
        "commonsheet: the record \"tl-25\" is not approved: nobody has settled s1\n", early.err());
    Run corrected = Run.of("review", "correct", record, "s1", "--value", "2.6", "--by", "curator");
    assertEquals(ExitStatus.DONE, corrected.status(), corrected.err());
    assertTrue(corrected.out().startsWith("s1 p. 1 capacity nominal 2.6 A.h — corrected"));
    Run own = Run.of("review", "approve", record, "--by", "Curator");
    assertEquals(ExitStatus.FOUND, own.status());
    assertTrue(own.err().contains("Curator prepared it"), own.err());
    Run said = Run.of("review", "approve", record, "--by", "curator", "--own-work");
    assertEquals(ExitStatus.DONE, said.status(), said.err());
    String shown = Run.of("review", "show", record).out();
    assertTrue(shown.contains("    was nominal 2.5 A.h\n"), shown);
  }

  @Test
  void findsWhatWasChangedAfterItsApproval() throws Exception {
    Run.of("review", "confirm", record, "s1", "--by", "second reviewer");
    Run.of("review", "approve", record, "--by", "second reviewer");
    Path file = Path.of(record);
    Files.writeString(file, Files.readString(file).replace("\"value\": 2.5", "\"value\": 3.5"));
    Run verified = Run.of("verify", record);
    assertEquals(ExitStatus.FOUND, verified.status());
    assertTrue(
        verified.out().contains("its content has changed since second reviewer approved it"),
        verified.out());
    assertTrue(Run.of("review", "list", record).out().contains(": reopened, "));
    String table = Run.of("table", "--format", "markdown", record).out();
    assertTrue(table.contains("reopened, approved before by second reviewer"), table);
  }

  @Test
  void countsDraftsAsFailuresWhereAllHasToBeApproved() {
    assertEquals(ExitStatus.DONE, Run.of("verify", record).status());
    assertEquals(ExitStatus.FOUND, Run.of("verify", "--all-approved", record).status());
  }

  @Test
  void returnsAndRejectsWithAReason() throws Exception {
    Run.of("review", "return", record, "s1", "--remark", "a pack's?", "--by", "second reviewer");
    CellRecord returned = new RecordStore(folder).read(Path.of(record));
    assertEquals(Standing.UNSURE, returned.statement("s1").standing());
    Run range = Run.of("review", "confirm", record, "s1-s1", "--by", "second reviewer");
    assertTrue(range.out().startsWith("left out, since unsure: s1;"), range.out());
    Run.of("review", "reject", record, "s1", "--reason", "it is", "--by", "curator");
    CellRecord rejected = new RecordStore(folder).read(Path.of(record));
    assertEquals(Standing.REJECTED, rejected.statement("s1").standing());
    assertEquals("it is", rejected.review().steps().get(1).remark());
  }

  @Test
  void saysWhatIsMissingInACommand() {
    assertSentence(
        "say who you are by --by NAME", ExitStatus.USAGE, "review", "confirm", record, "s1");
    assertSentence(
        "the record \"tl-25\" has no s7; review show lists what it has",
        ExitStatus.USAGE,
        "review",
        "confirm",
        record,
        "s7",
        "--by",
        "x");
    assertSentence(
        "\"all\" names no statement or curve; name them as s3, c1 or s1-s12",
        ExitStatus.USAGE,
        "review",
        "confirm",
        record,
        "all",
        "--by",
        "x");
    assertSentence(
        "say what the sheet says by --value, --range, --statistic, --condition or --label",
        ExitStatus.USAGE,
        "review",
        "correct",
        record,
        "s1",
        "--by",
        "x");
    assertSentence(
        "\"warm\" is no condition; write it as temperature=25",
        ExitStatus.USAGE,
        "review",
        "correct",
        record,
        "s1",
        "--condition",
        "warm",
        "--by",
        "x");
    assertSentence(
        "the record \"tl-25\" has no open finding of the rule a/rule; review show lists what is"
            + " open",
        ExitStatus.USAGE,
        "review",
        "accept",
        record,
        "a/rule",
        "--reason",
        "so",
        "--by",
        "x");
  }

  @Test
  void leavesARecordAloneThatWouldNotBeValid() throws Exception {
    String before = Files.readString(Path.of(record));
    Run run = Run.of("review", "correct", record, "s1", "--range", "3..2", "--by", "curator");
    assertEquals(ExitStatus.NOT_WRITTEN, run.status());
    Run unknown =
        Run.of("review", "correct", record, "s1", "--condition", "wind=3", "--by", "curator");
    assertEquals(ExitStatus.USAGE, unknown.status());
    assertTrue(unknown.err().contains("\"wind\" is no condition"), unknown.err());
    assertEquals(before, Files.readString(Path.of(record)));
  }

  @Test
  void checksAndStoresWhatItFinds() throws Exception {
    Run.of("review", "correct", record, "s1", "--value", "2600", "--by", "curator");
    Run checked = Run.of("check", record);
    assertEquals(ExitStatus.FOUND, checked.status());
    assertTrue(
        checked.out().contains("error reach/any-cell (s1): No lithium-ion cell has a"),
        checked.out());
    JsonNode json = new ObjectMapper().readTree(Run.of("check", "--format", "json", record).out());
    assertEquals("reach/any-cell", json.get(0).get("rule").asText());
    Run accepted =
        Run.of(
            "review", "accept", record, "reach/any-cell", "--reason", "a test", "--by", "curator");
    assertEquals(ExitStatus.DONE, accepted.status(), accepted.err());
    assertEquals(ExitStatus.DONE, Run.of("check", "--write", record).status());
    assertEquals(
        "a test",
        new RecordStore(folder).read(Path.of(record)).findings().get(0).accepted().reason());
  }

  @Test
  void showsHowTwoRecordsDiffer() throws Exception {
    Path other = Files.createDirectory(folder.resolve("other"));
    String second =
        new RecordStore(other).write(Records.of("tl-25", "b.pdf", Standing.READ)).toString();
    Run.of("review", "correct", second, "s1", "--value", "2.6", "--by", "curator");
    assertEquals(
        """
        - %s (tl-25.pdf)
        + %s (b.pdf)
        - s1 p. 1 capacity nominal 2.5 A.h — read
        + s1 p. 1 capacity nominal 2.6 A.h — corrected
        1 difference
        """
            .formatted(record, second),
        Run.of("review", "differences", record, second).out());
  }

  @Test
  void addsWhatWasNotRead() throws Exception {
    Run added =
        Run.of(
            "review",
            "add",
            record,
            "--quantity",
            "mass",
            "--value",
            "45",
            "--range",
            "44..46",
            "--page",
            "1",
            "--box",
            "72,120,60,10",
            "--text",
            "45 ± 1 g",
            "--by",
            "curator");
    assertEquals(ExitStatus.DONE, added.status(), added.err());
    assertTrue(
        added.out().startsWith("s2 p. 1 mass 45 [44 to 46] g — corrected, \"45 ± 1 g\""),
        added.out());
    Run unknown =
        Run.of(
            "review",
            "add",
            record,
            "--quantity",
            "colour",
            "--value",
            "45",
            "--page",
            "1",
            "--box",
            "72,120,60,10",
            "--text",
            "blue",
            "--by",
            "curator");
    assertEquals(ExitStatus.USAGE, unknown.status());
    assertTrue(unknown.err().contains("\"colour\" is no quantity"), unknown.err());
    Run elsewhere =
        Run.of(
            "review",
            "add",
            record,
            "--quantity",
            "mass",
            "--value",
            "45",
            "--page",
            "9",
            "--box",
            "72,120,60,10",
            "--text",
            "45 g",
            "--by",
            "curator");
    assertEquals(ExitStatus.NOT_WRITTEN, elsewhere.status());
  }

  @Test
  void listsAndFilters() throws Exception {
    new RecordStore(folder).write(Records.of("tl-26", "tl-26.pdf", Standing.UNSURE));
    Run list = Run.of("review", "list", "--sort", "unsettled", folder.toString());
    assertTrue(list.out().contains("tl-25.json: draft, 1 unsettled, 0 errors"), list.out());
    assertTrue(list.out().endsWith("2 records\n"), list.out());
    assertEquals(
        "0 records\n", Run.of("review", "list", "--state", "approved", folder.toString()).out());
    JsonNode json =
        new ObjectMapper()
            .readTree(
                Run.of("review", "list", "--missing", "mass", "--format", "json", folder.toString())
                    .out());
    assertEquals(2, json.size());
    assertEquals("tl-25", json.get(0).get("id").asText());
  }

  private static void assertSentence(String sentence, int status, String... arguments) {
    Run run = Run.of(arguments);
    assertEquals("commonsheet: " + sentence + "\n", run.err());
    assertEquals(status, run.status());
  }
}
