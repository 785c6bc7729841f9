package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a sheet says is text on the page, whatever it looks like. */
class RecordTextTest {
  private static final String MARKUP =
      "<img src=x onerror=\\\"document.title='run'\\\"><script>document.title='run'</script>{{7*7}}";

  @TempDir Path home;

  @Test
  void markupOnASheetIsShownAsItIsPrinted() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "harrowmere-hm18650-29e")) {
      RecordFile.replace(workbench, "Capacity *2 Typ. 2900mAh", MARKUP);
      RecordFile.replace(workbench, "\"Harrowmere Cells\"", "\"Harrowmere " + MARKUP + "\"");
      RecordFile.replace(workbench, "\"label\": \"0.2C", "\"label\": \"" + MARKUP);
      RecordScreen screen = RecordScreen.of(workbench);
      screen.row("s7").click();
      assertThat(screen.chosenPanel()).containsText("onerror=\"document.title='run'\"");
      assertThat(screen.row("c1")).containsText("<script>");
      screen.press("e");
      assertThat(screen.field("edit-typed")).isFocused();
      assertEquals(0, screen.page.locator("img[src=x]").count());
      assertEquals(0, screen.page.locator("#page script").count());
      String title = screen.page.title();
      assertEquals(true, title.startsWith("Harrowmere <img"), title);
    }
  }
}
