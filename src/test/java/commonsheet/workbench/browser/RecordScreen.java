package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;

/** The page of a record as a person sees it. */
final class RecordScreen {
  private static final Pattern SETTLED = Pattern.compile("(\\d+) of (\\d+) settled");

  /** Milliseconds; machines that build and test at once are slow. */
  private static final int PATIENCE = 20_000;

  final Page page;

  private RecordScreen(Page page) {
    this.page = page;
  }

  /** The page of a record, when its list has the focus. */
  static RecordScreen of(Page page) {
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE);
    RecordScreen screen = new RecordScreen(page);
    assertThat(screen.list()).isFocused();
    return screen;
  }

  /** The page of the only record of a workbench, opened by a person of their own. */
  static RecordScreen of(OpenWorkbench workbench) throws java.io.IOException {
    return of(workbench.page("#record?file=" + workbench.onlyRecord()));
  }

  Locator list() {
    return page.getByRole(AriaRole.LISTBOX, named("Values and curves"));
  }

  Locator row(String id) {
    return page.locator("#part-" + id);
  }

  /** The id of the value that is chosen. */
  String chosen() {
    return page.locator(".part[aria-selected=true]").getAttribute("id").substring("part-".length());
  }

  Locator chosenPanel() {
    return page.getByRole(AriaRole.REGION, named("Chosen value"));
  }

  /** The frame on the sheet that is lit up. */
  Locator litMark() {
    return page.locator(".mark[data-chosen=true]");
  }

  Locator mark(String id) {
    return page.locator(".mark[data-part=" + id + "]");
  }

  Locator told() {
    return page.locator("#told");
  }

  void press(String... keys) {
    for (String key : keys) {
      page.keyboard().press(key);
    }
  }

  void type(String text) {
    page.keyboard().insertText(text);
  }

  /** Opens the form for the chosen value and waits until it can be typed in. */
  void edit(String id) {
    row(id).click();
    press("e");
    assertThat(field("edit-typed")).isFocused();
  }

  Locator field(String id) {
    return page.locator("#" + id);
  }

  /** How many values are settled, as the page says. */
  int settled() {
    return count(1);
  }

  /** How many there are to settle, as the page says. */
  int total() {
    return count(2);
  }

  private int count(int group) {
    var found = SETTLED.matcher(page.locator(".progress .count").innerText());
    return found.find() ? Integer.parseInt(found.group(group)) : -1;
  }

  void awaitSettled(int count) {
    assertThat(page.locator(".progress .count")).containsText(count + " of ");
  }

  private static Page.GetByRoleOptions named(String name) {
    return new Page.GetByRoleOptions().setName(name);
  }
}
