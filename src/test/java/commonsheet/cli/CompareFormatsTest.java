package commonsheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordStore;
import commonsheet.record.Review;
import commonsheet.record.Source;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole runs of {@code compare} into files. */
class CompareFormatsTest {
  @TempDir private Path folder;
  private String records;

  @BeforeEach
  void written() throws Exception {
    records = folder.resolve("records").toString();
    Source source = new Source(null, null, null, null, "heron.pdf", "0".repeat(64), 1, null, null);
    Cell cell = new Cell("Tarn Cells", "Heron 26", null, null, null, null, null);
    new RecordStore(Path.of(records))
        .write(
            new CellRecord(
                CellRecord.SCHEMA, "heron-26", cell, source, null, null, null, Review.DRAFT));
  }

  @ParameterizedTest
  @CsvSource({"out.csv,rank", "out.json,{", "out.md,**Cells", "out.html,<!DOCTYPE", "out.xlsx,PK"})
  void theEndingChoosesTheFormat(String name, String begin) throws Exception {
    Path out = folder.resolve(name);
    Run run = compare("--out", out.toString());
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(new String(Files.readAllBytes(out), "ISO-8859-1").startsWith(begin));
    assertEquals("", run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"csv", "json", "markdown", "html"})
  void textsAreAlsoPrinted(String format) {
    Run run = compare("--format", format);
    assertEquals(ExitStatus.DONE, run.status(), run.err());
    assertTrue(run.out().contains("Heron 26"), run.out());
  }

  @Test
  void aFolderTakesADataPackageAndKeepsWhatElseIsInIt() throws Exception {
    Path out = Files.createDirectory(folder.resolve("package"));
    Files.writeString(out.resolve("mine.txt"), "mine");
    assertEquals(ExitStatus.DONE, compare("--out", out.toString()).status());
    assertTrue(Files.exists(out.resolve("datapackage.json")));
    assertTrue(Files.exists(out.resolve("cells.csv")));
    assertEquals("mine", Files.readString(out.resolve("mine.txt")));
    nothingHalfWritten();
  }

  /** By the Data Package specification: an identifier is a name, an address a path. */
  @Test
  void aDataPackageNamesTheLicenceItIsGiven() throws Exception {
    Path out = folder.resolve("package");
    Path file = out.resolve("datapackage.json");
    compare("--format", "data-package", "--out", out.toString());
    assertFalse(Files.readString(file).contains("licenses"));
    compare("--format", "data-package", "--licence", "CC-BY-4.0", "--out", out.toString());
    String text = Files.readString(file).replaceAll("\\s+", "");
    assertTrue(text.contains("\"licenses\":[{\"name\":\"CC-BY-4.0\"}]"), text);
    Run wrong = compare("--licence", "all rights", "--out", out.toString());
    assertEquals(ExitStatus.USAGE, wrong.status());
    assertTrue(wrong.err().contains("is no licence's name"), wrong.err());
  }

  @Test
  void aZipFileHoldsTheSame() throws Exception {
    Path zip = folder.resolve("package.zip");
    Path again = folder.resolve("again.zip");
    assertEquals(ExitStatus.DONE, compare("--out", zip.toString()).status());
    assertEquals(ExitStatus.DONE, compare("--out", again.toString()).status());
    try (ZipFile files = new ZipFile(zip.toFile())) {
      List<String> names = files.stream().map(ZipEntry::getName).toList();
      assertTrue(names.containsAll(List.of("cells.csv", "figures.csv", "datapackage.json")));
    }
    assertEquals(-1, Files.mismatch(zip, again));
  }

  @ParameterizedTest
  @CsvSource({
    "xlsx,,--format xlsx needs --out and a file",
    "data-package,,'--format data-package needs --out and a folder, or a file ending in .zip'",
    "svg,file.txt,needs a folder",
    "html,records,is a folder",
  })
  void whatCannotBeGivenIsRefused(String format, String out, String sentence) throws Exception {
    Files.writeString(folder.resolve("file.txt"), "here");
    List<String> arguments = new ArrayList<>(List.of("--format", format));
    if (out != null) {
      arguments.addAll(List.of("--out", folder.resolve(out).toString()));
    }
    Run run = compare(arguments.toArray(String[]::new));
    assertEquals(ExitStatus.USAGE, run.status());
    assertTrue(run.err().contains(sentence), run.err());
    assertEquals("here", Files.readString(folder.resolve("file.txt")));
  }

  @Test
  void aFolderThatCannotBeMadeIsTold() throws Exception {
    Path blocked = Files.writeString(folder.resolve("file.txt"), "here").resolve("package");
    Run run = compare("--format", "data-package", "--out", blocked.toString());
    assertEquals(ExitStatus.NOT_WRITTEN, run.status());
    assertEquals(1, run.err().lines().count(), run.err());
    nothingHalfWritten();
  }

  private void nothingHalfWritten() throws Exception {
    try (Stream<Path> all = Files.walk(folder)) {
      all.forEach(path -> assertFalse(path.toString().endsWith(".part"), path.toString()));
    }
  }

  private Run compare(String... options) {
    List<String> arguments = new ArrayList<>(List.of("compare", "--current", "5A"));
    arguments.addAll(List.of(options));
    arguments.add(records);
    return Run.of(arguments.toArray(String[]::new));
  }
}
