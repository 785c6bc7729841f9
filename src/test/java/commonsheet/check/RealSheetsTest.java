package commonsheet.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Finding;
import commonsheet.record.Records;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * The truths of real makers' sheets, read by eye: the rules find what those sheets do contradict,
 * and nothing else.
 */
class RealSheetsTest {
  /** Sheets that do not contradict themselves, as far as these rules look. */
  private static final List<String> CONSISTENT =
      List.of(
          "bilingual",
          "bilingual-scan",
          "clause-bilingual-boxed",
          "clause-bilingual-images",
          "clause-pouch-ruled",
          "drawing-unruled-text",
          "latex-shared-numbers",
          "leaflet-outlined-text",
          "leaflet-vector-charts",
          "merged-cells-lfp",
          "pouch-three-pages",
          "two-tables-by-rate");

  private Path sheets;

  @BeforeEach
  void needsSheets() {
    String folder = System.getProperty("sheets", "");
    assumeTrue(!folder.isBlank(), "no real sheets: name their folder with -Dsheets=DIR");
    sheets = Path.of(folder);
  }

  @Test
  void findsNothingInConsistentSheets() throws IOException {
    for (String sheet : CONSISTENT) {
      assertEquals(List.of(), Checks.standard().examine(record(sheet)), sheet);
    }
  }

  /**
   * TCL Hyperpower PR-244147A approval sheet: a maximum charge voltage of 4.23 V in the table and
   * of 4.30 V among the precautions, and the resistance of the pack beside that of the cell.
   */
  @Test
  void findsWhatOneSheetContradicts() throws IOException {
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

  private CellRecord record(String sheet) throws IOException {
    Path truth = sheets.resolve(sheet + ".truth.csv");
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    List<Statement> statements = new ArrayList<>();
    try (CSVParser rows = CSVParser.parse(Files.newBufferedReader(truth), format)) {
      for (CSVRecord row : rows) {
        if (!row.get("quantity").startsWith("cell.")) {
          statements.add(statement("s" + (statements.size() + 1), row));
        }
      }
    }
    return Records.with(statements.toArray(Statement[]::new));
  }

  private static Statement statement(String id, CSVRecord row) {
    String statistic = row.get("statistic");
    return new Statement(
        id,
        row.get("quantity"),
        statistic.isEmpty() ? null : Statistic.valueOf(statistic.toUpperCase(Locale.ROOT)),
        number(row.get("value")),
        number(row.get("low")),
        number(row.get("high")),
        row.get("unit"),
        conditions(row.get("conditions")),
        Records.evidence(Integer.parseInt(row.get("page")), row.get("text")),
        Standing.READ,
        List.of());
  }

  private static Double number(String text) {
    return text.isEmpty() ? null : Double.valueOf(text);
  }

  private static Conditions conditions(String text) {
    Conditions conditions = Conditions.NONE;
    for (String condition : text.isEmpty() ? new String[0] : text.split(";")) {
      String[] parts = condition.split("=");
      conditions = conditions.with(parts[0], Double.parseDouble(parts[1]));
    }
    return conditions;
  }
}
