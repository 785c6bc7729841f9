package commonsheet.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Caution;
import commonsheet.export.MarkdownText;
import commonsheet.export.ShortlistWords;
import commonsheet.record.IndependentValidator;
import commonsheet.record.SchemaFile;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReportFormatTest {
  private static final double DIGITS = 1e-9;

  @ParameterizedTest
  @EnumSource
  void everyFormCarriesConditionSourceApprovalAndCaution(ReportFormat format) throws IOException {
    Report report = ShortlistExamples.boat();
    String all = words(format.files(report));
    String condition =
        format == ReportFormat.MARKDOWN
            ? MarkdownText.of(ShortlistWords.condition(report.condition()))
            : ShortlistWords.condition(report.condition());
    if (format != ReportFormat.JSON) {
      assertTrue(all.contains(condition), condition);
    }
    for (String said : List.of("heron-26.pdf", "approved", "A. Keeper", "Caution: the figures")) {
      assertTrue(all.contains(said), said);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aReportWithoutCellsIsWholeToo(ReportFormat format) throws IOException {
    Map<String, byte[]> files = format.files(ShortlistExamples.empty());
    assertTrue(format == ReportFormat.SVG ? files.isEmpty() : !files.isEmpty());
  }

  @Test
  void csvGivesBackEveryFigure() throws IOException {
    Report report = ShortlistExamples.boat();
    List<CSVRecord> rows = rows(ReportFormat.CSV.text(report));
    assertEquals(report.cells().size(), rows.size());
    for (int i = 0; i < rows.size(); i++) {
      Figure energy = report.cells().get(i).figure(Measure.DELIVERED_ENERGY);
      Figure capacity = report.cells().get(i).figure(Measure.DELIVERED_CAPACITY);
      same(energy.value(), rows.get(i).get("delivered_energy_Wh"));
      same(capacity.value(), rows.get(i).get("delivered_capacity_Ah"));
      same(capacity.low(), rows.get(i).get("delivered_capacity_low_Ah"));
      assertEquals(capacity.origin().label(), rows.get(i).get("delivered_capacity_origin"));
      same(report.cells().get(i).contender().margin(), rows.get(i).get("margin"));
      assertEquals(Caution.TEXT, rows.get(i).get("caution"));
    }
    assertEquals("2; 3; 5", rows.get(0).get("source_pages"));
    assertEquals("5.62", rows.get(0).get("pack_mass_kg"));
  }

  @Test
  void noTextOfASheetBecomesAFormulaInCsv() throws IOException {
    for (CSVRecord row : rows(ReportFormat.CSV.text(ShortlistExamples.hostile()))) {
      for (String entry : row) {
        boolean number = entry.matches("-?[0-9.]+");
        assertTrue(number || entry.isEmpty() || "=+-@".indexOf(entry.charAt(0)) < 0, entry);
      }
    }
  }

  @Test
  void jsonGivesBackEveryFigureAndFollowsItsSchema() throws IOException {
    Report report = ShortlistExamples.boat();
    JsonNode tree = new ObjectMapper().readTree(ReportFormat.JSON.text(report));
    assertEquals(List.of(), SchemaFile.named("comparison").problems(tree, "the comparison"));
    for (int i = 0; i < report.cells().size(); i++) {
      JsonNode cell = tree.get("cells").get(i);
      for (Measure measure : Measure.values()) {
        Figure figure = report.cells().get(i).figure(measure);
        JsonNode given = cell.get("figures").get(measure.label());
        same(figure.value(), text(given.get("value")));
        same(figure.low(), text(given.get("low")));
        same(figure.high(), text(given.get("high")));
        assertEquals(figure.origin().label(), given.get("origin").asText());
        assertEquals(figure.unsure(), given.get("unsure").asBoolean());
      }
    }
    assertEquals(2.9, tree.at("/cells/0/curves/0/charge/2").asDouble());
  }

  @Test
  void anotherValidatorAgreesThatJsonFollowsItsSchema(@TempDir Path folder) throws IOException {
    Assumptions.assumeTrue(
        IndependentValidator.whyUnavailable().isEmpty(),
        IndependentValidator.whyUnavailable().orElse(""));
    Path boat = write(folder.resolve("boat.json"), ShortlistExamples.boat());
    Path load = write(folder.resolve("load.json"), ShortlistExamples.withoutMachine());
    Path none = write(folder.resolve("none.json"), ShortlistExamples.empty());
    Path broken = folder.resolve("broken.json");
    Files.writeString(
        broken,
        Files.readString(boat).replaceFirst("\"origin\": \"bounded\"", "\"origin\": \"x\""));
    List<Boolean> valid =
        IndependentValidator.verdicts(
                Path.of("schemas", "comparison.schema.json"), List.of(boat, load, none, broken))
            .stream()
            .map(IndependentValidator.Verdict::valid)
            .toList();
    assertEquals(List.of(true, true, true, false), valid);
  }

  @Test
  void markdownKeepsTablesOfOneRowPerCell() {
    String markdown = ReportFormat.MARKDOWN.text(ShortlistExamples.hostile());
    List<String> table = markdown.lines().filter(line -> line.startsWith("|")).toList();
    assertEquals(2 * (2 + 4), table.size());
    sameColumns(table.subList(0, 2 + 4));
    sameColumns(table.subList(2 + 4, table.size()));
    assertFalse(markdown.contains("<script"), markdown);
    assertFalse(markdown.contains("\u202E"));
  }

  @Test
  void theWorkbookHoldsNumbersAsNumbersAndNoFormula() throws IOException {
    Map<String, byte[]> files = ReportFormat.XLSX.files(ShortlistExamples.hostile());
    Map<String, String> parts = unzip(files.get("comparison.xlsx"));
    String sheet = parts.get("xl/worksheets/sheet1.xml");
    assertTrue(sheet.contains("2.8123456789"), sheet);
    parts.values().forEach(part -> assertFalse(part.contains("<f>"), part));
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "SVG")
  void packFiguresAreThereWhereAMachineIsGiven(ReportFormat format) throws IOException {
    String with = words(format.files(ShortlistExamples.boat()));
    String without = words(format.files(ShortlistExamples.withoutMachine()));
    String mass =
        switch (format) {
          case HTML -> ">5.6<";
          case MARKDOWN -> "| 5.6+ |";
          default -> "5.62";
        };
    assertTrue(with.contains(mass), mass);
    assertFalse(without.contains(mass), mass);
    if (format == ReportFormat.MARKDOWN || format == ReportFormat.XLSX) {
      for (String said : List.of("All of 2 packs of 4s1p together", "Voltage, full, V")) {
        assertTrue(with.contains(said), said);
      }
      assertTrue(with.contains("wiring and casing add 15 %"));
    }
  }

  @Test
  void markdownShowsSharesOfTheRatingInPercent() {
    String markdown = ReportFormat.MARKDOWN.text(ShortlistExamples.boat());
    assertTrue(markdown.contains("Share of the rating at the peak current, %"), markdown);
    assertTrue(markdown.contains("| 562+ |"), markdown);
  }

  @Test
  void theWorkbookTellsWhatOnlyThePacksLack() throws IOException {
    Map<String, byte[]> files = ReportFormat.XLSX.files(ShortlistExamples.boat());
    Map<String, String> parts = unzip(files.get("comparison.xlsx"));
    String packs = parts.get("xl/worksheets/sheet2.xml");
    assertTrue(packs.contains("<v>5.62</v>"), packs);
    assertTrue(words(files).contains("no cruise speed is given"));
    assertTrue(words(files).contains("Packs: Distance at the cruise speed"));
  }

  private static void sameColumns(List<String> table) {
    int columns = bars(table.get(0));
    table.forEach(line -> assertEquals(columns, bars(line), line));
  }

  /** Unescaped bars of a row of a table. */
  private static int bars(String row) {
    return row.replace("\\|", "").replaceAll("[^|]", "").length();
  }

  private static void same(Double expected, String given) {
    if (expected == null) {
      assertTrue(given == null || given.isEmpty(), given);
    } else {
      assertEquals(expected, Double.parseDouble(given), Math.abs(expected) * DIGITS);
    }
  }

  private static String text(JsonNode node) {
    if (node == null) {
      return null;
    }
    assertTrue(node.isNumber());
    return node.asText();
  }

  private static Path write(Path file, Report report) throws IOException {
    return Files.writeString(file, ReportFormat.JSON.text(report));
  }

  static List<CSVRecord> rows(String csv) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(csv)).getRecords();
  }

  /** All the text of the files; of a workbook that of its parts. */
  private static String words(Map<String, byte[]> files) throws IOException {
    StringBuilder all = new StringBuilder();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      if (file.getKey().endsWith(".xlsx")) {
        unzip(file.getValue()).values().forEach(part -> all.append(part.replace("&#xb0;", "°")));
      } else if (file.getKey().endsWith(".svg")) {
        all.append(
            new String(file.getValue(), StandardCharsets.UTF_8)
                .replaceAll("</text><text[^>]*>", " "));
      } else {
        all.append(new String(file.getValue(), StandardCharsets.UTF_8));
      }
    }
    return all.toString();
  }

  /** By the directory at its end, which readers of workbooks go by. */
  private static Map<String, String> unzip(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("workbook", ".xlsx");
    try {
      Files.write(file, bytes);
      Map<String, String> parts = new HashMap<>();
      try (ZipFile zip = new ZipFile(file.toFile())) {
        for (ZipEntry entry : zip.stream().toList()) {
          byte[] part = zip.getInputStream(entry).readAllBytes();
          parts.put(entry.getName(), new String(part, StandardCharsets.UTF_8));
        }
      }
      return parts;
    } finally {
      Files.delete(file);
    }
  }
}
