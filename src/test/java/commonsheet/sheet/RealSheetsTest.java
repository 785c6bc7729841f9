package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Real sheets, by what one sees on them. Runs when the folder of real sheets is given: {@code
 * -Dsheets=FOLDER}.
 */
class RealSheetsTest {
  private static final Map<String, Sheet> READ = new HashMap<>();

  /** The row of a table on a page that holds a label holds this value, too. */
  @ParameterizedTest
  @CsvSource({
    "merged-cells-lfp, 1, Capacity, 4000 mAh",
    "merged-cells-lfp, 1, Capacity, Minimum Capacity",
    "merged-cells-lfp, 1, Max. Continuous Discharge Current, 1C (4000 mA)",
    "merged-cells-lfp, 1, Storage Temperature, -20~20°C",
    "approval-bilingual, 4, Minimum Capacity, 520mAh",
    "approval-bilingual, 4, Storage Temperature, -20℃～+35℃",
    "clause-bilingual-boxed, 3, Dimension, ≤ 25.5 mm",
    "clause-bilingual-boxed, 3, Discharge, 2.0C5A",
    "clause-bilingual-boxed, 4, L2, 10±1",
    "clause-pouch-ruled, 2, Rated Capacity, 170mAh",
    "clause-pouch-ruled, 2, Cell Dimension, Width: Max. 20.5mm",
    "clause-bilingual-images, 3, Charging Time, 3Hours",
    "clause-bilingual-images, 4, Operating Temperature, -10~55℃",
    "pouch-three-pages, 1, Maximum discharge current, 2100mAh",
    "pouch-three-pages, 1, d1, 34mm Max.",
    "two-tables-by-rate, 1, Max. charge current, 1C",
    "two-tables-by-rate, 1, Rated Cap 3C, ≥3200mAh",
    "latex-shared-numbers, 2, Standard Charge Current, 250 mAh",
    "latex-shared-numbers, 2, (≤ 3 months), −20 - +45 °C",
    "bilingual, 1, 5.4 Minimum Capacity, 350mAh",
    "bilingual, 1, 5.16 Operating Temperature, 0~45℃",
    "drawing-unruled-text, 1, Max. Continuous Discharge Current, 400mA",
    "drawing-unruled-text, 1, Storage Temp. Range, 3 moths at -20 to +45℃ >70%",
    "leaflet-vector-charts, 1, Dimensions, 18.6 + 0/-0.7mm"
  })
  void valueStandsInTheRowOfItsLabel(String name, int page, String label, String value)
      throws SheetException {
    List<Table> tables = read(name).pages().get(page - 1).tables();
    boolean found =
        tables.stream()
            .anyMatch(
                t ->
                    t.cells().stream()
                        .filter(c -> flat(c).contains(label))
                        .anyMatch(c -> holdsBeside(t, c, value)));
    assertTrue(found, label + " | " + value + " in " + tables);
  }

  private static boolean holdsBeside(Table table, Cell label, String value) {
    return table.cells().stream()
        .filter(
            c ->
                c.column() > label.column()
                    && c.row() < label.row() + label.rows()
                    && label.row() < c.row() + c.rows())
        .anyMatch(c -> flat(c).contains(value));
  }

  private static String flat(Cell cell) {
    return cell.text().replace('\n', ' ');
  }

  @ParameterizedTest
  @CsvSource({
    "bilingual-scan, 1, PICTURE",
    "leaflet-outlined-text, 1, PICTURE",
    "latex-shared-numbers, 1, PARTLY_PICTURE",
    "latex-shared-numbers, 2, WORDS",
    "clause-bilingual-images, 3, WORDS",
    "clause-bilingual-images, 9, PARTLY_PICTURE",
    "leaflet-vector-charts, 1, WORDS"
  })
  void pageIsOfItsKind(String name, int page, PageKind kind) throws SheetException {
    assertEquals(kind, read(name).pages().get(page - 1).kind());
  }

  @ParameterizedTest
  @CsvSource({
    "leaflet-vector-charts, 1",
    "drawing-unruled-text, 5",
    "clause-bilingual-boxed, 8",
    "approval-bilingual, 10"
  })
  void chartsFramesAndHeadersAreNoTables(String name, int tables) throws SheetException {
    assertEquals(tables, read(name).pages().stream().mapToInt(p -> p.tables().size()).sum());
  }

  @ParameterizedTest
  @CsvSource({
    "drawing-unruled-text, 31",
    "drawing-unruled-text, 7.0",
    "leaflet-vector-charts, 65.2"
  })
  void dimensionSetUprightIsAWord(String name, String dimension) throws SheetException {
    assertTrue(
        read(name).pages().get(0).words().stream()
            .anyMatch(w -> w.turn() == 90 && w.text().equals(dimension)));
  }

  private static Sheet read(String name) throws SheetException {
    String folder = System.getProperty("sheets", "");
    assumeTrue(!folder.isEmpty(), "no folder of real sheets given");
    Path file = Path.of(folder, name + ".pdf");
    assumeTrue(Files.exists(file), name + " is not among the real sheets");
    Sheet sheet = READ.get(name);
    if (sheet == null) {
      sheet = SheetReader.read(file);
      READ.put(name, sheet);
    }
    return sheet;
  }
}
