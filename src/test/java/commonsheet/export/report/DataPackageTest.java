package commonsheet.export.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.record.IndependentValidator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataPackageTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** The npm packages datapackage and tableschema, the reference readers of the standard. */
  @Test
  void independentReadersAcceptThePackage(@TempDir Path folder) throws IOException {
    assumeReaders();
    JsonNode boat = read(write(folder.resolve("boat"), ShortlistExamples.boat()));
    assertTrue(boat.get("valid").asBoolean(), boat.toString());
    assertEquals(4, boat.at("/rows/cells").asInt());
    assertEquals(4 * (13 + 12), boat.at("/rows/figures").asInt());
    assertEquals(6, boat.at("/rows/curves").asInt());
    assertEquals(3, boat.at("/rows/delivered").asInt());
    for (Report report :
        List.of(
            ShortlistExamples.withoutMachine(),
            ShortlistExamples.hostile(),
            ShortlistExamples.empty())) {
      JsonNode verdict = read(write(Files.createTempDirectory(folder, "p"), report));
      assertTrue(verdict.get("valid").asBoolean(), verdict.toString());
    }
  }

  @Test
  void independentReadersFindWhatIsBroken(@TempDir Path folder) throws IOException {
    assumeReaders();
    Map<String, String> breaks =
        Map.of(
            "figures.csv", "interpolated>guessed",
            "curves.csv", "heron-26,c1>nobody,c1",
            "cells.csv", "carries>wins");
    for (Map.Entry<String, String> change : breaks.entrySet()) {
      Path written = write(Files.createTempDirectory(folder, "p"), ShortlistExamples.boat());
      Path file = written.resolveSibling(change.getKey());
      String[] words = change.getValue().split(">", -1);
      Files.writeString(file, Files.readString(file).replace(words[0], words[1]));
      assertFalse(read(written).get("valid").asBoolean(), change.getKey());
    }
  }

  @Test
  void figuresComeBackAsTheyWere() throws IOException {
    Report report = ShortlistExamples.boat();
    List<CSVRecord> rows = ReportFormatTest.rows(DataPackage.files(report).get("figures.csv"));
    int read = 0;
    for (ReportedCell cell : report.cells()) {
      for (Measure measure : Measure.values()) {
        Figure figure = cell.figure(measure);
        for (CSVRecord row : rows) {
          if (row.get("cell").equals(cell.record().id())
              && row.get("measure").equals(measure.label())) {
            assertEquals(
                figure.value() == null ? "" : Numbers.text(figure.value()), row.get("value"));
            assertEquals(String.join("; ", figure.from()), row.get("from"));
            assertEquals(measure.unit(), row.get("unit"));
            read++;
          }
        }
      }
    }
    assertEquals(4 * 13, read);
  }

  @Test
  void everyFieldIsDescribedAndEveryFileListed() throws IOException {
    Map<String, String> files = DataPackage.files(ShortlistExamples.boat());
    JsonNode descriptor = MAPPER.readTree(files.get("datapackage.json"));
    Set<String> listed = new HashSet<>(Set.of("datapackage.json"));
    for (JsonNode resource : descriptor.get("resources")) {
      listed.add(resource.get("path").asText());
      for (JsonNode field : resource.at("/schema/fields")) {
        for (String member : List.of("name", "type", "title", "description")) {
          assertFalse(field.path(member).asText().isEmpty(), field.toString());
        }
      }
    }
    assertEquals(files.keySet(), listed);
    assertTrue(descriptor.get("caution").asText().startsWith("Caution"));
    assertEquals("3", descriptor.at("/sources/0/revision").asText());
  }

  private static void assumeReaders() {
    Assumptions.assumeTrue(
        IndependentValidator.whyUnavailable().isEmpty(),
        IndependentValidator.whyUnavailable().orElse(""));
    Assumptions.assumeTrue(
        Files.isDirectory(Path.of(".ci", "validate", "node_modules", "datapackage")),
        "the npm package datapackage is not installed: run npm ci --prefix .ci/validate");
  }

  private static Path write(Path folder, Report report) throws IOException {
    for (Map.Entry<String, String> file : DataPackage.files(report).entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
    return folder.resolve("datapackage.json");
  }

  private static JsonNode read(Path descriptor) throws IOException {
    Process node =
        new ProcessBuilder(
                "node",
                Path.of(".ci", "validate", "datapackage.mjs").toString(),
                descriptor.toString())
            .redirectErrorStream(true)
            .start();
    String output = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (!output.startsWith("{")) {
      throw new IOException("datapackage.mjs failed: " + output);
    }
    return MAPPER.readTree(output);
  }
}
