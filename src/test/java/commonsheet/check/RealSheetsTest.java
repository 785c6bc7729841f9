package commonsheet.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.score.Truth;
import commonsheet.score.TruthException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The truths of real makers' sheets, read by eye: the rules find what those sheets do contradict,
 * and nothing else.
 */
class RealSheetsTest {
  private Path sheets;

  @BeforeEach
  void needsSheets() {
    String folder = System.getProperty("sheets", "");
    assumeTrue(!folder.isBlank(), "no real sheets: name their folder with -Dsheets=DIR");
    sheets = Path.of(folder);
  }

  /**
   * What is to be looked at in them, besides notes. Fullwat LP603449: 600 mΩ at most for a pouch
   * cell of 1.1 Ah that gives 2.1 A.
   */
  @Test
  void findsNothingElseInTheSheets() throws Exception {
    List<String> found = new ArrayList<>();
    try (Stream<Path> files = Files.list(sheets)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".truth.csv")).sorted().toList()) {
        for (Finding finding : Checks.standard().examine(Invented.of(Truth.load(file)))) {
          if (finding.severity() != Severity.NOTE) {
            found.add(file.getFileName() + " " + finding.rule());
          }
        }
      }
    }
    assertEquals(
        List.of(
            "approval-bilingual.truth.csv contradiction/charge-voltage",
            "pouch-three-pages.truth.csv resistance/drop"),
        found);
  }

  /**
   * TCL Hyperpower PR-244147A approval sheet: a maximum charge voltage of 4.23 V in the table and
   * of 4.30 V among the precautions, and the resistance of the pack beside that of the cell.
   */
  @Test
  void findsWhatOneSheetContradicts() throws TruthException {
    List<String> messages =
        Checks.standard().examine(record("approval-bilingual")).stream()
            .map(Finding::message)
            .toList();
    assertEquals(
        List.of(
            "The sheet gives 4.23 V (page 4) and 4.3 V (page 11) as maximum charge voltage; charge"
                + " to no more than the lower one until the maker has settled it.",
            "The sheet gives 60 mΩ (page 4) and 220 mΩ (page 4) as maximum internal resistance AC;"
                + " one may be that of a pack with its protection circuit."),
        messages);
  }

  private CellRecord record(String sheet) throws TruthException {
    return Invented.of(Truth.load(sheets.resolve(sheet + ".truth.csv")));
  }
}
