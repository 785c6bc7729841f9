package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each test guards one way in which borders are drawn on real sheets. */
class RuledTablesTest {
  @TempDir Path folder;

  @Test
  void labelThatSpansRowsComesOutOnce() throws SheetException {
    Page page =
        Drawn.sheet()
            .rules(50, 350, 100, 160)
            .rules(150, 350, 120, 140)
            .uprights(100, 160, 50, 150, 350)
            .text(60, 133, 9, "Storage temperature")
            .lines(160, 113, 9, 20, "1 month", "3 months", "1 year")
            .readPage(folder);
    Table table = only(page);
    assertEquals(3, table.rows());
    Cell label = table.at(2, 0).orElseThrow();
    assertEquals("Storage temperature", label.text());
    assertEquals(3, label.rows());
    assertEquals("1 year", table.at(2, 1).orElseThrow().text());
    assertEquals(4, table.cells().size());
  }

  @Test
  void remarkWithoutDividingLineSpansBothRows() throws SheetException {
    Page page =
        Drawn.sheet()
            .rules(50, 350, 100, 140)
            .rules(50, 250, 120)
            .uprights(100, 140, 50, 150, 250, 350)
            .lines(60, 113, 9, 20, "Nominal", "Minimum")
            .lines(160, 113, 9, 20, "2500 mAh", "2450 mAh")
            .text(260, 123, 9, "0.2C discharge")
            .readPage(folder);
    Cell remark = only(page).at(0, 2).orElseThrow();
    assertEquals("0.2C discharge", remark.text());
    assertEquals(2, remark.rows());
  }

  @Test
  void bordersDrawnAsThinRectanglesCellByCell() throws SheetException {
    Drawn sheet = Drawn.sheet();
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 2; column++) {
        double x = 50 + column * 120;
        double y = 100 + row * 20;
        sheet.filled(x, y, 120, 0.7, 0).filled(x, y + 19.3, 120, 0.7, 0);
        sheet.filled(x, y, 0.7, 20, 0).filled(x + 119.3, y, 0.7, 20, 0);
        sheet.text(x + 8, y + 13, 9, "r" + row + "c" + column);
      }
    }
    Table table = only(sheet.readPage(folder));
    assertEquals(3, table.rows());
    assertEquals(2, table.columns());
    assertEquals("r2c1", table.at(2, 1).orElseThrow().text());
  }

  @Test
  void openSidesAreClosedWhereLinesEnd() throws SheetException {
    Table table =
        only(
            Drawn.sheet()
                .rules(50, 350, 100, 120, 140)
                .uprights(100, 140, 200)
                .lines(60, 113, 9, 20, "Nominal voltage", "Mass")
                .lines(210, 113, 9, 20, "3.6 V", "48 g")
                .readPage(folder));
    assertEquals(2, table.columns());
    assertEquals("48 g", table.at(1, 1).orElseThrow().text());
  }

  @Test
  void bordersThatMissEachOtherStillMakeCells() throws SheetException {
    Table table =
        only(
            Drawn.sheet()
                .rules(52, 348, 100, 120, 140)
                .uprights(102, 138, 50, 200, 350)
                .lines(60, 113, 9, 20, "Nominal voltage", "Mass")
                .lines(210, 113, 9, 20, "3.6 V", "48 g")
                .readPage(folder));
    assertEquals(2, table.rows());
    assertEquals("3.6 V", table.at(0, 1).orElseThrow().text());
  }

  @Test
  void doubleLinesAreOneBorder() throws SheetException {
    Table table =
        only(
            Drawn.sheet()
                .rules(50, 350, 100, 101.8, 120, 121.8, 140, 141.8)
                .uprights(100, 141.8, 50, 51.8, 200, 201.8, 350, 351.8)
                .lines(60, 114, 9, 20, "Nominal voltage", "Mass")
                .lines(210, 114, 9, 20, "3.6 V", "48 g")
                .readPage(folder));
    assertEquals(2, table.rows());
    assertEquals(2, table.columns());
  }

  @Test
  void tableThatGoesOnAtTheNextPageKeepsItsLastCell() throws SheetException {
    Table table =
        only(
            Drawn.sheet()
                .rules(50, 350, 500, 520)
                .rules(150, 350, 560)
                .uprights(500, 560, 50, 150, 350)
                .lines(60, 513, 9, 20, "Mass", "Temperature")
                .lines(160, 513, 9, 20, "48 g", "charging 0 to 45 °C")
                .readPage(folder));
    assertEquals("Temperature", table.at(1, 0).orElseThrow().text());
  }

  @Test
  void neighbouringTablesStayApart() throws SheetException {
    Page page =
        Drawn.sheet()
            .rules(50, 190, 100, 120, 140)
            .uprights(100, 140, 50, 120, 190)
            .rules(210, 350, 100, 120, 140)
            .uprights(100, 140, 210, 280, 350)
            .lines(55, 113, 9, 20, "a", "b")
            .lines(125, 113, 9, 20, "1 V", "2 V")
            .lines(215, 113, 9, 20, "c", "d")
            .lines(285, 113, 9, 20, "3 V", "4 V")
            .readPage(folder);
    assertEquals(2, page.tables().size());
    assertEquals("c", page.tables().get(1).at(0, 0).orElseThrow().text());
  }

  @Test
  void frameAroundThePageSwallowsNothing() throws SheetException {
    Page page =
        Drawn.sheet()
            .rules(20, 380, 20, 580)
            .uprights(20, 580, 20, 380)
            .rules(20, 380, 60)
            .uprights(20, 60, 200)
            .text(30, 45, 9, "Lake survey boat")
            .text(210, 45, 9, "Cell sheet")
            .text(30, 100, 9, "Nominal voltage 3.6 V")
            .readPage(folder);
    assertEquals(List.of("Nominal voltage 3.6 V"), texts(page));
    assertEquals(1, page.tables().size());
  }

  @Test
  void boxAroundANoteIsNoTable() throws SheetException {
    Page page =
        Drawn.sheet()
            .rules(50, 350, 100, 140)
            .uprights(100, 140, 50, 350)
            .text(60, 123, 9, "Keep away from water.")
            .readPage(folder);
    assertTrue(page.tables().isEmpty());
    assertEquals(List.of("Keep away from water."), texts(page));
  }

  @Test
  void gridOfAChartIsNoTable() throws SheetException {
    Drawn sheet =
        Drawn.sheet()
            .rules(80, 320, 100, 140, 180, 220, 260)
            .uprights(100, 260, 80, 140, 200, 260, 320)
            .text(150, 115, 7, "0.2C")
            .text(210, 115, 7, "1C");
    sheet.quietly(
        () -> {
          sheet.content().moveTo(80, 490);
          sheet.content().curveTo(150, 470, 250, 460, 310, 350);
          sheet.content().stroke();
        });
    Page page = sheet.readPage(folder);
    assertTrue(page.tables().isEmpty());
  }

  private static Table only(Page page) {
    assertEquals(1, page.tables().size());
    Table table = page.tables().get(0);
    assertTrue(table.ruled());
    return table;
  }

  private static List<String> texts(Page page) {
    return page.lines().stream().map(Line::text).toList();
  }
}
