package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each test guards one way of setting figures, or text that looks like it, without borders. */
class UnruledTablesTest {
  @TempDir Path folder;

  @Test
  void labelsAndValuesOfALeafletAreATable() throws SheetException {
    Page page =
        Drawn.sheet()
            .lines(50, 100, 9, 13, "Nominal voltage", "Capacity, minimum", "Mass", "Diameter")
            .lines(220, 100, 9, 13, "3.6 V", "2450 mAh", "48 g", "18.4 mm")
            .readPage(folder);
    Table table = only(page);
    assertEquals(4, table.rows());
    assertEquals("Mass", table.at(2, 0).orElseThrow().text());
    assertEquals("48 g", table.at(2, 1).orElseThrow().text());
    assertTrue(page.lines().isEmpty());
  }

  @Test
  void wrappedLinesStayInTheirCell() throws SheetException {
    Page page =
        Drawn.sheet()
            .lines(50, 100, 9, 11, "Nominal voltage", "Overcharge detection", "")
            .lines(50, 138, 9, 11, "Maximum continuous", "discharge current", "Mass")
            .lines(220, 100, 9, 11, "3.6 V", "4.28 V (delay of 1 s,", "release at 4.1 V)")
            .lines(220, 149, 9, 11, "10 A", "48 g")
            .readPage(folder);
    Table table = only(page);
    assertEquals("4.28 V (delay of 1 s,\nrelease at 4.1 V)", table.at(1, 1).orElseThrow().text());
    assertEquals("Maximum continuous\ndischarge current", table.at(2, 0).orElseThrow().text());
    assertEquals("10 A", table.at(2, 1).orElseThrow().text());
  }

  @Test
  void cellsCentredOnEachOtherAreOneRow() throws SheetException {
    Page page =
        Drawn.sheet()
            .text(50, 106, 9, "1")
            .lines(70, 100, 9, 11, "Charge cut-off", "voltage")
            .text(220, 106, 9, "4.2 V")
            .text(50, 132, 9, "2")
            .text(70, 132, 9, "Nominal voltage")
            .text(220, 132, 9, "3.6 V")
            .text(50, 152, 9, "3")
            .text(70, 152, 9, "Mass")
            .text(220, 152, 9, "48 g")
            .readPage(folder);
    Table table = only(page);
    assertEquals(3, table.rows());
    assertEquals("Charge cut-off\nvoltage", table.at(0, 1).orElseThrow().text());
    assertEquals("4.2 V", table.at(0, 2).orElseThrow().text());
  }

  @Test
  void tableOfLevelRulesOnlyHasItsColumns() throws SheetException {
    Page page =
        Drawn.sheet()
            .rules(50, 350, 90, 108, 165)
            .lines(55, 102, 9, 18, "Quantity", "Capacity")
            .lines(55, 138, 9, 18, "Voltage", "Mass")
            .lines(180, 102, 9, 18, "Min.", "2450", "", "")
            .lines(240, 102, 9, 18, "Typ.", "2550", "3.6", "48")
            .lines(300, 102, 9, 18, "Unit", "mAh", "V", "g")
            .readPage(folder);
    Table table = only(page);
    assertEquals(4, table.columns());
    assertEquals(4, table.rows());
    assertEquals("2450", table.at(1, 1).orElseThrow().text());
    assertTrue(table.at(2, 1).orElseThrow().isEmpty());
    assertEquals("g", table.at(3, 3).orElseThrow().text());
  }

  @Test
  void headingInBoldEndsATable() throws SheetException {
    Drawn sheet =
        Drawn.sheet()
            .lines(50, 100, 9, 12, "Width", "Length", "Thickness")
            .lines(220, 100, 9, 12, "30 mm", "48 mm", "6 mm")
            .lines(50, 148, 9, 12, "Voltage", "Capacity", "Mass")
            .lines(220, 148, 9, 12, "3.7 V", "800 mAh", "16 g");
    sheet.text(
        50, 136, 9, org.apache.pdfbox.pdmodel.font.PDType1Font.HELVETICA_BOLD, 0, "Electrical");
    Page page = sheet.readPage(folder);
    assertEquals(2, page.tables().size());
    assertEquals("Electrical", page.lines().get(0).text());
  }

  @Test
  void columnsOfProseAreNoTable() throws SheetException {
    String[] left = new String[12];
    String[] right = new String[12];
    for (int i = 0; i < 12; i++) {
      left[i] = "The boat measures the depth of " + i;
      right[i] = "Its cells are kept dry and cool at " + i;
    }
    Page page =
        Drawn.sheet().lines(30, 100, 9, 12, left).lines(210, 100, 9, 12, right).readPage(folder);
    assertTrue(page.tables().isEmpty());
    List<String> lines = page.lines().stream().map(Line::text).toList();
    assertEquals(24, lines.size());
    assertEquals(left[11], lines.get(11));
    assertEquals(right[0], lines.get(12));
  }

  @Test
  void columnsOfTextThatDoNotStandLevelAreReadOneAfterTheOther() throws SheetException {
    Page page =
        Drawn.sheet()
            .lines(30, 100, 9, 12, "General", "Made for boats", "Sealed", "Keep dry", "Ship cold")
            .lines(220, 104, 9, 12, "Notes", "Store cool", "Charge slowly", "Recycle", "Ask us")
            .readPage(folder);
    assertTrue(page.tables().isEmpty());
    assertEquals("Ship cold", page.lines().get(4).text());
    assertEquals("Notes", page.lines().get(5).text());
  }

  @Test
  void numberedParagraphsAreNoTable() throws SheetException {
    Page page =
        Drawn.sheet()
            .lines(30, 100, 9, 14, "1.", "2.", "3.", "4.")
            .lines(60, 100, 9, 14, "Keep dry", "Keep cool", "Do not pierce", "Do not short")
            .readPage(folder);
    assertTrue(page.tables().isEmpty());
    assertEquals("1. Keep dry", page.lines().get(0).text());
  }

  @Test
  void tableOfContentsIsNoTable() throws SheetException {
    Page page =
        Drawn.sheet()
            .lines(30, 100, 9, 14, "1", "2", "3")
            .lines(60, 100, 9, 14, "Capacity..........", "Voltage..........", "Mass..........")
            .lines(300, 100, 9, 14, "3", "4", "7")
            .readPage(folder);
    assertTrue(page.tables().isEmpty());
  }

  @Test
  void scalesOfAChartAreNoTable() throws SheetException {
    Page page =
        Drawn.sheet()
            .lines(30, 100, 7, 15, "4.2", "3.7", "3.2", "2.7")
            .lines(300, 100, 7, 15, "100", "80", "60", "40")
            .readPage(folder);
    assertTrue(page.tables().isEmpty());
    assertFalse(page.lines().isEmpty());
  }

  private static Table only(Page page) {
    assertEquals(1, page.tables().size());
    assertFalse(page.tables().get(0).ruled());
    return page.tables().get(0);
  }
}
