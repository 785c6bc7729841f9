package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import commonsheet.record.CellRecord;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet beside the record in a real browser. */
class RecordSheetTest {
  private static final Pattern WIDTH = Pattern.compile("/api/place/picture.*width=(\\d+)");

  @TempDir Path home;

  @Test
  void aValueLightsUpItsPlaceAndAPlaceItsValue() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.row("s4").click();
      assertThat(screen.litMark()).hasAttribute("data-part", "s4");
      assertThat(screen.litMark()).isInViewport();
      screen.mark("s12").click();
      assertEquals("s12", screen.chosen());
      assertThat(screen.row("s12")).isInViewport();
      assertThat(screen.list()).isFocused();
      screen.press("End");
      assertThat(screen.page.locator(".trace[data-chosen=true] .line")).isInViewport();
    }
  }

  @Test
  void pagesAreAsSharpAsTheyAreLarge() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      List<Integer> widths = new ArrayList<>();
      Page page = workbench.page("");
      page.onRequest(
          request -> {
            var found = WIDTH.matcher(request.url());
            if (found.find()) {
              widths.add(Integer.valueOf(found.group(1)));
            }
          });
      page.evaluate(
          "address => { location.hash = address; }", "#record?file=" + workbench.onlyRecord());
      RecordScreen screen = RecordScreen.of(page);
      assertThat(page.locator(".sheet-page[data-shown]").first()).isVisible();
      int before = widths.get(0);
      screen.press("+", "+", "+", "+");
      page.waitForCondition(() -> widths.get(widths.size() - 1) >= 2 * before);
      screen.press("0");
      assertThat(screen.list()).isFocused();
    }
  }

  @Test
  void wordsAreFoundAndMarked() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("s");
      screen.type("voltage");
      assertThat(screen.page.locator(".sheet-search .count")).containsText("1 of ");
      assertThat(screen.page.locator(".hit[data-current=true]")).isInViewport();
      screen.press("Enter");
      assertThat(screen.page.locator(".sheet-search .count")).containsText("2 of ");
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.press("Escape");
      assertThat(screen.page.locator(".hit")).hasCount(0);
      assertThat(screen.list()).isFocused();
    }
  }

  @Test
  void aValueIsAddedFromADrawnBox() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      RecordScreen screen = RecordScreen.of(workbench);
      BoundingBox row = screen.mark("s2").boundingBox();
      double left = screen.page.locator(".sheet-page").first().boundingBox().x + 40;
      screen.press("d");
      screen.page.mouse().move(left, row.y - 3);
      screen.page.mouse().down();
      screen.page.mouse().move(row.x + row.width + 6, row.y + row.height + 3);
      screen.page.mouse().up();

      assertThat(screen.field("edit-typed")).hasValue(Pattern.compile("4650\\s?mAh"));
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.field("edit-quantity").fill("capacity");
      screen.press("Enter");
      screen.page.locator(".editor .button.main").click();
      assertThat(screen.told()).containsText("added");

      Statement added = typedIn(RecordFile.read(workbench));
      assertEquals("capacity", added.quantity());
      assertEquals(4.65, added.value());
      assertEquals(1, added.evidence().page());
      assertTrue(added.evidence().text().contains("4650"));
      assertEquals(Standing.CORRECTED, added.standing());
    }
  }

  @Test
  void aPlaceIsChosenWordByWordWithTheKeyboard() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      RecordScreen screen = RecordScreen.of(workbench);
      screen.press("w");
      assertThat(screen.page.locator(".words-list")).isFocused();
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      int steps = 0;
      while (!screen
              .page
              .locator(".words-list [data-at=true]")
              .getAttribute("aria-label")
              .contains("4800")
          && steps++ < 60) {
        screen.press("ArrowRight");
      }
      screen.press("Shift+ArrowRight", "Enter");
      assertThat(screen.field("edit-typed")).hasValue(Pattern.compile("4800\\s?mAh"));
    }
  }

  @Test
  void withoutItsSheetTheWordsAsPrintedAreShown() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordFile.replace(workbench, RecordFile.read(workbench).source().sha256(), "0".repeat(64));
      RecordScreen screen = RecordScreen.of(workbench);
      assertThat(screen.page.getByText("The sheet cannot be shown")).isVisible();
      assertThat(screen.page.locator(".no-sheet")).containsText("harrowmere-hm18650-29e.pdf");
      assertThat(screen.page.locator(".no-sheet")).containsText("Capacity *2 Typ. 2900mAh");
      assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
      screen.press("c");
      screen.awaitSettled(1);
    }
  }

  @Test
  void worksOnTabletsAndInTheDark() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      String address = "#record?file=" + workbench.onlyRecord();
      for (int[] size : new int[][] {{1024, 768}, {820, 1180}}) {
        RecordScreen screen =
            RecordScreen.of(workbench.page(address, size[0], size[1], ColorScheme.DARK));
        assertThat(screen.litMark()).isInViewport();
        assertThat(screen.chosenPanel().getByText("Confirm")).isInViewport();
        assertThat(screen.row("s1")).isInViewport();
        assertEquals(List.of(), OpenWorkbench.inaccessible(screen.page));
        int wider = (int) screen.page.evaluate("document.documentElement.scrollWidth - innerWidth");
        assertEquals(0, wider, "nothing to scroll sideways");
      }
    }
  }

  private static Statement typedIn(CellRecord record) {
    return record.statements().stream()
        .filter(each -> each.evidence().method() == Method.TYPED_IN)
        .findFirst()
        .orElseThrow();
  }
}
