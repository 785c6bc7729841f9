package commonsheet.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.score.Truth;
import commonsheet.score.TruthException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the rules say of sheets as a careful person reads them: of the invented ones, and of makers'
 * own where their folder is named. An error there is a false alarm unless the sheet is wrong.
 */
class FalseAlarmsTest {
  private static final Path FIXTURES = Path.of("fixtures", "sheets");

  @Test
  void findsInTheFixturesOnlyTheOneThatContradictsItself() throws Exception {
    List<String> alarms = new ArrayList<>();
    for (Path file : truths(FIXTURES)) {
      for (Finding finding : examine(file)) {
        alarms.add(file.getFileName() + " " + finding.severity() + " " + finding.rule());
      }
    }
    assertEquals(
        List.of(
            "dunmarrow-df26650-36.truth.csv WARNING contradiction/discharge-cutoff-voltage",
            "dunmarrow-df26650-36.truth.csv WARNING contradiction/dimension"),
        alarms);
  }

  /** The bar: at most one error in ten sheets that is a false alarm. */
  @Test
  void raisesAtMostOneFalseErrorInTenRealSheets() throws Exception {
    String folder = System.getProperty("sheets", "");
    assumeTrue(!folder.isBlank(), "no real sheets: name their folder with -Dsheets=DIR");
    List<Path> files = truths(Path.of(folder));
    List<String> errors = new ArrayList<>();
    for (Path file : files) {
      for (Finding finding : examine(file)) {
        if (finding.severity() == Severity.ERROR) {
          errors.add(file.getFileName() + " " + finding.rule() + ": " + finding.message());
        }
      }
    }
    assertTrue(files.size() >= 10, files::toString);
    assertTrue(errors.size() * 10 <= files.size(), errors::toString);
  }

  private static List<Finding> examine(Path truth) throws TruthException {
    return Checks.standard().examine(Invented.of(Truth.load(truth)));
  }

  private static List<Path> truths(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".truth.csv")).sorted().toList();
    }
  }
}
