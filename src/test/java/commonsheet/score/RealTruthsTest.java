package commonsheet.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The checked truths of makers' sheets, when their folder is given with {@code -Dsheets=FOLDER}.
 */
class RealTruthsTest {
  private static final int FILES = 13;

  @Test
  void everyTruthLoadsAndAgreesWithItself() throws IOException, TruthException {
    String sheets = System.getProperty("sheets", "");
    assumeTrue(
        !sheets.isBlank(), "skipped: give the folder of sheets with truths as -Dsheets=FOLDER");
    List<Path> pdfs = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of(sheets))) {
      files.filter(file -> file.toString().endsWith(".pdf")).sorted().forEach(pdfs::add);
    }
    int truths = 0;
    for (Path pdf : pdfs) {
      for (Truth truth : Truths.forSheet(Path.of(sheets), pdf.toString())) {
        truths++;
        assertFalse(truth.rows().isEmpty(), truth.sheet());
        SheetScore missed = Scorer.score(truth, null);
        assertEquals(truth.rows().size(), missed.tally().missed(), truth.sheet());
        SheetScore perfect = Scorer.score(truth, Invented.readPerfectly(truth));
        assertEquals(truth.rows().size(), perfect.tally().right(), truth.sheet());
        assertEquals(0, perfect.tally().spurious(), truth.sheet());
      }
    }
    assertEquals(FILES, truths, "truth files in " + sheets);
  }
}
