package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunningTextTest {
  @TempDir Path folder;

  @Test
  void headerTableAndPageNumberRun() throws SheetException {
    Drawn sheet = new Drawn();
    for (int page = 1; page <= 4; page++) {
      if (page > 1) {
        sheet.page(400, 600);
      }
      sheet
          .rules(50, 350, 20, 40, 60)
          .uprights(20, 60, 50, 200, 350)
          .text(60, 33, 9, "Lake Survey Cells")
          .text(210, 33, 9, "Page " + page + "/4")
          .text(60, 53, 9, "Specification")
          .text(210, 53, 9, "LS-18650-25")
          .text(60, 120, 9, "Text of page number " + "abcd".charAt(page - 1))
          .text(195, 590, 8, String.valueOf(page));
    }
    Sheet read = sheet.read(folder);
    for (Page page : read.pages()) {
      assertTrue(page.tables().isEmpty());
      assertEquals(1, page.lines().size());
      assertEquals(8, page.running().size());
      assertTrue(page.words().containsAll(page.running()));
    }
  }

  @Test
  void tableHeadThatIsRepeatedStaysWithItsTable() throws SheetException {
    Drawn sheet = new Drawn();
    for (int page = 1; page <= 3; page++) {
      if (page > 1) {
        sheet.page(400, 600);
      }
      sheet
          .text(60, 25, 9, "Lake Survey Cells")
          .rules(50, 350, 50, 70, 90, 110)
          .uprights(50, 110, 50, 200, 350)
          .text(60, 63, 9, "Item")
          .text(210, 63, 9, "Requirement")
          .lines(60, 83, 9, 20, "ab".repeat(page), "cd".repeat(page))
          .lines(210, 83, 9, 20, "ef".repeat(page), "gh".repeat(page));
    }
    for (Page page : sheet.read(folder).pages()) {
      assertEquals("Item", page.tables().get(0).at(0, 0).orElseThrow().text());
      assertEquals(List.of("Lake", "Survey", "Cells"), texts(page.running()));
    }
  }

  @Test
  void nothingRunsOnASinglePage() throws SheetException {
    assertTrue(Drawn.sheet().text(60, 25, 9, "Title").readPage(folder).running().isEmpty());
  }

  private static List<String> texts(List<Word> words) {
    return words.stream().map(Word::text).toList();
  }
}
