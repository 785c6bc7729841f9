package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.RecordStore;
import commonsheet.record.Review;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole runs of {@code compare}; the ratings asked are common practice, no source. */
class CompareCommandTest {
  @TempDir private Path folder;
  private String records;

  @BeforeEach
  void written() throws Exception {
    records = folder.resolve("records").toString();
    RecordStore store = new RecordStore(Path.of(records));
    store.write(rated("strong", 25.0));
    store.write(rated("near", 24.0));
    store.write(rated("weak", 5.0));
    store.write(rated("silent", null));
  }

  @Test
  void anAverageOfTenAndAPeakOfTwentyFiveAskForTwentyFive() {
    Run run = compare("--average-current", "10A", "--peak-current", "25000mA");
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "Each cell must be rated for at least 25 A: the peak.");
    holds(run, "1 of 4 cells carries it.");
    List<String> order = List.of("strong", "near", "silent", "weak");
    int at = 0;
    for (String name : order) {
      assertTrue(run.out().indexOf(name, at) > at, name + " in " + run.out());
      at = run.out().indexOf(name, at);
    }
    holds(run, "near: rated 24 A, asked 25 A: 4 % too little");
    holds(run, "weak: rated 5 A, asked 25 A: 80 % too little");
    holds(run, "silent: ");
    holds(run, "no substitute for the makers'");
  }

  @Test
  void unitsOfTheRequestDoNotMatter() {
    String ampere = compare("--current", "10").out();
    assertEquals(ampere, compare("--current", "10A").out());
    assertEquals(ampere, compare("--current", "10000mA").out());
    assertEquals(ampere, compare("--current", "0.01 kA").out());
  }

  @Test
  void aMixAndPacksAskTheirShare() {
    Run run = compare("--load", "13A:90%,30A:10%", "--packs", "2", "--series", "4");
    holds(run, "draws 14.7 A on average and 30 A at its peak from 2 packs of 4s1p");
    holds(run, "at least 15 A: the peak, shared.");
    holds(run, "All of 2 packs of 4s1p together");
  }

  @Test
  void whereNoneCarriesTheNearestIsTold() {
    Run run = compare("--current", "30A");
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    holds(run, "No cell of 4 carries it; the nearest is strong: rated 25 A, asked 30 A: 17 % too");
    assertEquals(ExitStatus.BELOW_MINIMUM, compare("--current", "30A", "--require").status());
    assertEquals(ExitStatus.DONE, compare("--current", "25A", "--require").status());
  }

  @Test
  void onlyApprovedOnesIfAsked() throws Exception {
    Run none = compare("--current", "5A", "--approved-only");
    assertEquals(ExitStatus.NONE_READABLE, none.status());
    assertEquals(
        "commonsheet: none of 4 records is approved; approve them, or leave out --approved-only.\n",
        none.err());
    assertEquals("", none.out());
    holds(compare("--current", "5A"), "draft");
  }

  @Test
  void aBrokenRecordIsNamedAndTheOthersCompared() throws Exception {
    Files.writeString(Path.of(records, "broken.json"), "{\"schema\": 1}");
    Run run = compare("--current", "5A");
    assertEquals(ExitStatus.SOME_UNREADABLE, run.status());
    assertTrue(run.err().contains("broken.json is not a valid record"), run.err());
    holds(run, "3 of 4 cells carry it.");
  }

  @Test
  void withoutRecordsNothingIsCompared() throws Exception {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Run run = Run.of("compare", "--current", "5A", empty.toString());
    assertEquals(ExitStatus.NONE_READABLE, run.status());
    assertTrue(run.err().contains("there is no .json file"), run.err());
  }

  @Test
  void aFileTakesTheResult() throws Exception {
    Path out = folder.resolve("new/short.txt");
    Run run = compare("--current", "5A", "--out", out.toString());
    assertEquals("", run.out());
    assertTrue(Files.readString(out).contains("3 of 4 cells carry it."));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--cutoff=3 | say what is asked",
        "--current=5A --average-current=9A | only one thing can be asked",
        "--current=0 | give a current such as 10A",
        "--current=-5A | give a current such as 10A",
        "--current=1e9 | give a current such as 10A",
        "--current=lots | is no number with a unit",
        "--current=5V | is not in a unit",
        "--current=5A --packs=2 | --packs belongs to a machine",
        "--average-current=10A --peak-current=5A | must not be below 10 A",
        "--average-current=10A --packs=0 | 1 pack or more",
        "--average-current=10A --packs=many | --packs",
        "--average-current=10A --factor=0.5 | factor must be 1 or more",
        "--average-current=10A --reserve=20 | write one such as 90% or 0.9",
        "--average-current=10A --reserve=100% | leaves nothing",
        "--average-current=10A --cruise-speed=fast | give a speed such as 8km/h",
        "--load=13A | there is no such file",
        "--load=13A:80% | must add up to 100 %",
        "--current=5A --cutoff=12V | the voltage of one cell",
        "--current=5A --temperature=900 | give a temperature",
        "--current=5A --rank-by=beauty | is no quantity of a comparison; they are currentRating,"
      })
  void whatCannotBeAskedIsToldInASentence(String options, String reason) {
    Run run = compare(options.split(" "));
    assertEquals(ExitStatus.USAGE, run.status(), run.err());
    assertTrue(run.err().contains(reason), run.err());
    assertTrue(run.err().lines().count() <= 2, run.err());
    assertFalse(run.err().contains("fault of the program"), run.err());
    assertEquals("", run.out());
  }

  private Run compare(String... options) {
    List<String> arguments = new ArrayList<>(List.of("compare"));
    arguments.addAll(List.of(options));
    arguments.add(records);
    return Run.of(arguments.toArray(String[]::new));
  }

  private static CellRecord rated(String id, Double rating) {
    CellRecord record = Records.of(id, id + ".pdf", Standing.READ);
    List<Statement> statements = new ArrayList<>(record.statements());
    if (rating != null) {
      Statement capacity = statements.get(0);
      statements.add(
          new Statement(
              "s2",
              "maximumContinuousDischargeCurrent",
              Statistic.MAXIMUM,
              rating,
              null,
              null,
              "A",
              Conditions.NONE,
              capacity.evidence(),
              Standing.READ,
              List.of()));
    }
    return new CellRecord(
        record.schema(),
        id,
        new Cell("Tarnlight", id, null, null, null, null, null),
        record.source(),
        statements,
        List.of(),
        List.of(),
        Review.DRAFT);
  }

  private static void holds(Run run, String words) {
    assertTrue(run.out().contains(words), run.out() + run.err());
  }
}
