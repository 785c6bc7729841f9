package commonsheet;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import commonsheet.layout.LayoutException;
import commonsheet.layout.LayoutLibrary;
import commonsheet.layout.Reading;
import commonsheet.layout.RecordReader;
import commonsheet.record.CellRecord;
import commonsheet.record.IndependentValidator;
import commonsheet.record.RecordJson;
import commonsheet.record.RecordValidator;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.score.ScoreReport;
import commonsheet.score.Scorer;
import commonsheet.score.SheetScore;
import commonsheet.score.Truth;
import commonsheet.score.TruthException;
import commonsheet.score.Truths;
import commonsheet.sheet.PageKind;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * How well whole sheets are read. The truths of the fixtures are those of the invented sheets; the
 * truths of makers' sheets were read by eye from the pages of published sheets, and lie in the
 * folder that {@code -Dsheets=FOLDER} names.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccuracyTest {
  private static final Path FIXTURES = Path.of("fixtures");
  private static final Path SHEETS = FIXTURES.resolve("sheets");
  private static final String SCAN = "zephrane-zp21700-50-scan.pdf";

  /** The sheets of makers that have no text layer. */
  private static final Set<String> WITHOUT_WORDS =
      Set.of("leaflet-outlined-text.pdf", "bilingual-scan.pdf");

  private RecordReader reader;

  /** What each fixture sheet gave, by file name. */
  private final Map<String, Reading> fixtures = new TreeMap<>();

  @BeforeAll
  void readTheFixtures() throws LayoutException, IOException, SheetException {
    reader = new RecordReader(LayoutLibrary.load(null));
    for (Path pdf : pdfs(SHEETS)) {
      fixtures.put(pdf.getFileName().toString(), reader.read(SheetReader.read(pdf)));
    }
  }

  @Test
  void fixturesAreReadNearlyWholeAndWithoutAWrongValue() throws TruthException {
    List<SheetScore> scores = new ArrayList<>();
    for (Map.Entry<String, Reading> sheet : fixtures.entrySet()) {
      if (!sheet.getKey().equals(SCAN)) {
        List<Truth> truths = Truths.forSheet(SHEETS, sheet.getKey());
        assertFalse(truths.isEmpty(), "no truth for " + sheet.getKey());
        scores.addAll(Scorer.scoreSheet(truths, sheet.getValue().records()));
      }
    }
    assertReaches("Fixtures", new ScoreReport(scores), 0.98, 1.0);
  }

  @Test
  void publishedSheetsAreReadToTheBar() throws IOException, SheetException, TruthException {
    String folder = System.getProperty("sheets", "");
    assumeTrue(
        !folder.isBlank(),
        "skipped: give the folder of published sheets and truths as -Dsheets=FOLDER");
    List<SheetScore> scores = new ArrayList<>();
    for (Path pdf : pdfs(Path.of(folder))) {
      List<Truth> truths = Truths.forSheet(Path.of(folder), pdf.toString());
      if (!WITHOUT_WORDS.contains(pdf.getFileName().toString()) && !truths.isEmpty()) {
        scores.addAll(Scorer.scoreSheet(truths, reader.read(SheetReader.read(pdf)).records()));
      }
    }
    assertFalse(scores.isEmpty(), "no sheet with a truth in " + folder);
    assertReaches("Published sheets", new ScoreReport(scores), 0.90, 0.985);
  }

  private static void assertReaches(
      String what, ScoreReport report, double recall, double precisionOfRead) {
    System.out.println(what + "\n" + report.table());
    double reached = report.total().recall().orElseThrow();
    double precise = report.total().of(Standing.READ).ratio().orElseThrow();
    assertAll(
        () -> assertTrue(reached >= recall, "recall " + reached + "\n" + report.listing()),
        () ->
            assertTrue(
                precise >= precisionOfRead,
                "precision of read " + precise + "\n" + report.listing()));
  }

  @Test
  void aScanGivesNothingAndEveryPageIsSaidToBeAPicture() throws SheetException {
    Sheet scan = SheetReader.read(SHEETS.resolve(SCAN));
    assertAll(
        () -> assertEquals(List.of(), fixtures.get(SCAN).records()),
        () ->
            assertEquals(
                "has no words to read, only pictures; use a version of the sheet with text",
                fixtures.get(SCAN).reason()),
        () ->
            assertTrue(
                scan.pages().stream().allMatch(page -> page.kind() == PageKind.PICTURE),
                scan.pages().toString()));
  }

  @TestFactory
  Stream<DynamicTest> whatIsNoLithiumIonCellGivesNoRecordAndAReason() throws IOException {
    return pdfs(FIXTURES.resolve("other")).stream()
        .map(
            pdf ->
                DynamicTest.dynamicTest(
                    pdf.getFileName().toString(),
                    () -> {
                      Reading reading = reader.read(SheetReader.read(pdf));
                      assertEquals(List.of(), reading.records());
                      assertNotNull(reading.reason());
                      assertFalse(reading.reason().contains("\n"), reading.reason());
                    }));
  }

  @TestFactory
  Stream<DynamicTest> aBrokenFileIsRefusedInOneSentence() throws IOException {
    return pdfs(FIXTURES.resolve("broken")).stream()
        .map(
            pdf ->
                DynamicTest.dynamicTest(
                    pdf.getFileName().toString(),
                    () -> {
                      String sentence =
                          assertThrows(SheetException.class, () -> SheetReader.read(pdf))
                              .getMessage();
                      assertTrue(sentence.contains(pdf.getFileName().toString()), sentence);
                      assertTrue(sentence.matches("[^\\n]+[^.]\\."), sentence);
                      assertFalse(sentence.contains("Exception"), sentence);
                    }));
  }

  @Test
  void everyRecordIsValidAndEveryStatementHasItsEvidence() {
    for (CellRecord record : records()) {
      assertEquals(List.of(), RecordValidator.problems(RecordJson.write(record)), record.id());
      for (Statement s : record.statements()) {
        String what = record.id() + " " + s;
        assertEquals(4, s.evidence().box().size(), what);
        assertTrue(s.evidence().page() <= record.source().pages(), what);
        assertFalse(s.evidence().text().isBlank(), what);
        assertEquals(s.standing() == Standing.UNSURE, !s.doubts().isEmpty(), what);
      }
    }
  }

  /** The npm package ajv, which shares no code with the validator used here. */
  @Test
  void anIndependentValidatorAcceptsEveryRecord(@TempDir Path folder) throws IOException {
    Optional<String> why = IndependentValidator.whyUnavailable();
    assumeTrue(why.isEmpty(), () -> "not compared with ajv: " + why.orElseThrow());
    List<Path> files = new ArrayList<>();
    for (CellRecord record : records()) {
      String name = files.size() + ".json";
      files.add(Files.writeString(folder.resolve(name), RecordJson.write(record)));
    }
    for (IndependentValidator.Verdict verdict : IndependentValidator.verdicts(files)) {
      assertTrue(verdict.valid(), verdict.errors().toString());
    }
  }

  private List<CellRecord> records() {
    List<CellRecord> records =
        fixtures.values().stream().flatMap(reading -> reading.records().stream()).toList();
    assertTrue(records.size() >= fixtures.size() - 1, "only " + records.size() + " records");
    return records;
  }

  private static List<Path> pdfs(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
    }
  }
}
