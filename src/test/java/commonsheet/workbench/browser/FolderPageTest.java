package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of the folder's records in a real browser. */
class FolderPageTest {
  private static final String[] SHEETS = {
    "ellerbeck-eb21700-48", "harrowmere-hm18650-29e", "brackenfold-range"
  };

  @TempDir Path home;

  private static Locator rows(Page page) {
    return page.locator(".records tbody tr[data-file]");
  }

  private static Locator search(Page page) {
    return page.getByLabel("Find records");
  }

  private static Locator heading(Page page, String name) {
    return page.locator("th[data-column=" + name + "]");
  }

  @Test
  void listsTheRecordsOfTheFolder() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      Page page = workbench.page("");
      assertThat(page.getByText("EB21700-48").first()).isVisible();
      assertEquals(List.of(), OpenWorkbench.inaccessible(page));
    }
  }

  @Test
  void isReadableOnATabletAndInTheDark() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      for (ColorScheme colours : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
        Page page = workbench.page("", 820, 1180, colours);
        assertThat(rows(page)).hasCount(1);
        assertEquals(List.of(), OpenWorkbench.inaccessible(page));
        Object wider = page.evaluate("document.documentElement.scrollWidth > innerWidth");
        assertEquals(false, wider);
      }
    }
  }

  @Test
  void findsByTextAndStateAndSortsByColumn() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, SHEETS)) {
      Page page = workbench.page("");
      assertThat(rows(page)).hasCount(5);
      search(page).fill("brackenfold 21700");
      assertThat(rows(page)).hasCount(1);
      assertThat(rows(page)).containsText("BF21-50");
      search(page).fill("");
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Approved")).click();
      assertThat(rows(page)).hasCount(0);
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Show all")).click();
      heading(page, "unsettled").getByRole(AriaRole.BUTTON).click();
      assertThat(heading(page, "unsettled")).hasAttribute("aria-sort", "ascending");
      assertThat(heading(page, "maker")).hasAttribute("aria-sort", "none");
      assertThat(rows(page).last()).containsText("EB21700-48");
      heading(page, "unsettled").getByRole(AriaRole.BUTTON).click();
      assertThat(heading(page, "unsettled")).hasAttribute("aria-sort", "descending");
      assertThat(rows(page).first()).containsText("EB21700-48");
    }
  }

  @Test
  void keyboardAloneFindsOpensAndCompares() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, SHEETS)) {
      Page page = workbench.page("");
      assertThat(rows(page)).hasCount(5);
      page.keyboard().press("/");
      assertThat(search(page)).isFocused();
      page.keyboard().type("brackenfold");
      assertThat(rows(page)).hasCount(3);
      page.keyboard().press("ArrowDown");
      assertThat(rows(page).first()).isFocused();
      page.keyboard().press(" ");
      page.keyboard().press("ArrowDown");
      page.keyboard().press(" ");
      assertThat(page.locator(".records tr[aria-selected=true]")).hasCount(2);
      page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("See differences"))
          .press("Enter");
      assertThat(page.getByRole(AriaRole.ROWHEADER, named("Model"))).isVisible();
      assertThat(page.locator("tr[data-kind=differs]").first()).isVisible();
      assertThat(page.locator("tr[data-kind=same]")).hasCount(0);
      assertEquals(List.of(), OpenWorkbench.inaccessible(page));
      page.getByRole(AriaRole.BUTTON, button("Show what is the same")).press("Enter");
      assertThat(page.locator("tr[data-kind=same]").first()).isVisible();
      page.goBack();
      assertThat(rows(page)).hasCount(3);
      rows(page).nth(1).focus();
      page.keyboard().press("Enter");
      assertThat(page).hasURL(Pattern.compile("#record\\?file=brackenfold-cells-bf18-34\\.json"));
    }
  }

  private static Page.GetByRoleOptions named(String name) {
    return new Page.GetByRoleOptions().setName(Pattern.compile("^" + name));
  }

  private static Page.GetByRoleOptions button(String name) {
    return new Page.GetByRoleOptions().setName(name);
  }

  @Test
  void sheetWithoutARecordIsReadFromThePage() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      Page page = workbench.page("");
      assertThat(rows(page)).hasCount(1);
      page.getByRole(AriaRole.BUTTON, button("Read this sheet: harrowmere-hm18650-29e.pdf"))
          .click();
      rows(page).nth(1).waitFor(new Locator.WaitForOptions().setTimeout(120_000));
      assertThat(rows(page).nth(1)).containsText("HM18650-29E");
      assertThat(page.locator(".unread").getByRole(AriaRole.LINK)).hasCount(1);
    }
  }

  @Test
  void emptyFolderSaysWhatToDo() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home)) {
      Page page = workbench.page("");
      assertThat(page.getByText("No records here yet")).isVisible();
      assertThat(page.getByText("Sheets without a record")).isVisible();
      assertEquals(List.of(), OpenWorkbench.inaccessible(page));
    }
  }

  @Test
  void damagedFileIsShownWithWhatIsWrong() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home, "ellerbeck-eb21700-48")) {
      Files.writeString(workbench.folder().resolve("cut.json"), "{\"schema\": \"<b>x</b>");
      Files.writeString(workbench.folder().resolve("other.json"), "{}");
      Page page = workbench.page("");
      assertThat(page.locator(".unreadable li")).hasCount(1);
      assertThat(page.locator(".unreadable")).containsText("cut.json");
      assertEquals(0, page.locator(".unreadable b").count());
      assertEquals(List.of(), OpenWorkbench.inaccessible(page));
    }
  }

  @Test
  void recordWithoutASheetIsBegun() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home)) {
      Page page = workbench.page("#new");
      page.getByLabel("Model").fill("Tarn 5000");
      page.getByLabel("What it is").fill("label of a pack");
      assertEquals(List.of(), OpenWorkbench.inaccessible(page));
      page.getByLabel("Where", new Page.GetByLabelOptions().setExact(true)).fill("the shelf");
      page.getByLabel("Where", new Page.GetByLabelOptions().setExact(true)).press("Enter");
      assertThat(page).hasURL(Pattern.compile("#record\\?file=tarn-5000\\.json"));
      String json = Files.readString(workbench.folder().resolve(workbench.onlyRecord()));
      assertTrue(json.contains("label of a pack") && json.contains("the shelf"), json);
    }
  }

  @Test
  void textOfASheetNeverBecomesMarkup() throws Exception {
    try (OpenWorkbench workbench = OpenWorkbench.with(home)) {
      Page page = workbench.page("#new");
      page.getByLabel("Maker (optional)").fill("<img src=x onerror=alert(1)>");
      page.getByLabel("Model").fill("<b>bold</b>");
      page.getByLabel("What it is").fill("page");
      page.getByLabel("Where", new Page.GetByLabelOptions().setExact(true)).fill("there");
      page.getByRole(AriaRole.BUTTON, button("Make the record")).click();
      assertThat(page).hasURL(Pattern.compile("#record"));
      page.evaluate("location.hash = '#folder'");
      assertThat(rows(page)).containsText("<b>bold</b>");
      assertEquals(0, page.locator(".records b, .records img").count());
    }
  }
}
