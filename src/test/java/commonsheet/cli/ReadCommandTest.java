package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs of {@code read} and of what follows it, on the example sheets. */
class ReadCommandTest {
  private static final Path SHEETS = Path.of("fixtures", "sheets");
  private static final String SHEET = SHEETS.resolve("tarnwick-tw18650-25n.pdf").toString();

  @TempDir Path folder;

  @Test
  void aSheetGivesALineARecordAndATable() throws IOException {
    Path records = folder.resolve("records");
    Path table = folder.resolve("tables/comparison.csv");
    Run run = Run.of("read", "--out", records.toString(), "--table", table.toString(), SHEET);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(run.out().startsWith(SHEET + ": "), run.out());
    assertTrue(run.out().contains("TW18650-25N"), run.out());
    assertTrue(Files.readString(table).contains("TW18650-25N"));
    Path record = records.resolve(only(records));
    assertTrue(run.out().contains(" → " + record), run.out());

    Run compared = Run.of("table", records.toString());
    assertEquals(ExitStatus.DONE, compared.status(), compared.err());
    assertTrue(run.out().contains(compared.out()), compared.out());
    assertTrue(run.out().endsWith("Comparison in " + table + System.lineSeparator()), run.out());
  }

  @Test
  void oneBadFileEndsNothingAndIsNamed() throws IOException {
    Path story = Files.writeString(folder.resolve("story.pdf"), "Once upon a time");
    Run run =
        Run.of("read", "--out", folder.resolve("records").toString(), story.toString(), SHEET);
    assertEquals(ExitStatus.SOME_UNREADABLE, run.status());
    assertTrue(run.err().contains("story.pdf"), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    only(folder.resolve("records"));
  }

  @Test
  void aSheetOfPicturesWithoutWordsIsToldAndNoFailureBesideOthers() throws IOException {
    String photo = photo().toString();
    String records = folder.resolve("records").toString();
    Run run = Run.of("read", "--out", records, photo, SHEET);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(run.out().contains(photo + ": page 1 is a picture: no words to read"), run.out());
    assertTrue(
        run.out().contains("1 record from 1 sheet in " + records + "; 1 sheet left out: only"));
    assertEquals(ExitStatus.NONE_READABLE, Run.of("read", "--out", records, photo).status());
  }

  /** A page with a dark disc and nothing else. */
  private Path photo() throws IOException {
    BufferedImage image = new BufferedImage(300, 400, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.fillRect(0, 0, 300, 400);
    graphics.setColor(Color.DARK_GRAY);
    graphics.fillOval(60, 100, 180, 180);
    graphics.dispose();
    Path file = folder.resolve("photo.pdf");
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage(new PDRectangle(300, 400));
      document.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.drawImage(LosslessFactory.createFromImage(document, image), 0, 0, 300, 400);
      }
      document.save(file.toFile());
    }
    return file;
  }

  @Test
  void aScanIsReadAndItsValuesSayThatTheyWereRecognised() throws IOException {
    String scan = SHEETS.resolve("zephrane-zp21700-50-scan.pdf").toString();
    Path records = folder.resolve("records");
    Run run = Run.of("read", "--out", records.toString(), scan);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    String record = Files.readString(records.resolve(only(records)));
    assertTrue(record.contains("ZP21700-50"), record);
    assertTrue(record.contains("\"ocr\""), record);
  }

  @Test
  void nothingReadableWritesNothing() {
    Path missing = folder.resolve("missing.pdf");
    Run run = Run.of("read", "--out", folder.resolve("records").toString(), missing.toString());
    assertEquals(ExitStatus.NONE_READABLE, run.status());
    assertEquals("", run.out());
    assertFalse(Files.exists(folder.resolve("records")));
  }

  @Test
  void aFolderThatCannotBeWrittenToIsSaid() throws IOException {
    Path taken = Files.writeString(folder.resolve("records"), "a file, not a folder");
    Run run = Run.of("read", "--out", taken.toString(), SHEET);
    assertEquals(ExitStatus.NOT_WRITTEN, run.status());
    assertTrue(run.err().contains(taken.toString()), run.err());
  }

  @Test
  void jsonGoesToStandardOutputAndNoFileIsWritten() throws IOException {
    Run run = Run.of("read", "--format", "json", SHEET);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    JsonNode record = new ObjectMapper().readTree(run.out());
    assertEquals("commonsheet/cell-record/1", record.path("schema").asText());
    assertEquals("tarnwick-tw18650-25n.pdf", record.path("source").path("file").asText());
  }

  @Test
  void aRecordThatIsNoneIsNamedByTable() throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.json"), "{}");
    Run run = Run.of("table", broken.toString());
    assertEquals(ExitStatus.NONE_READABLE, run.status());
    assertTrue(run.err().contains("broken.json is not a valid record"), run.err());
  }

  @Test
  void theScoreOfAnExampleIsToldAndHeldAgainstAMinimum() {
    String truth = SHEETS.toString();
    Run run = Run.of("score", "--truth", truth, SHEET);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(run.out().contains("tarnwick-tw18650-25n"), run.out());
    Run high = Run.of("score", "--truth", truth, "--minimum-recall", "1.01", SHEET);
    assertEquals(ExitStatus.BELOW_MINIMUM, high.status());
  }

  private static Path only(Path records) throws IOException {
    try (Stream<Path> files = Files.list(records)) {
      List<Path> names = files.map(Path::getFileName).toList();
      assertEquals(1, names.size(), names.toString());
      return names.get(0);
    }
  }
}
