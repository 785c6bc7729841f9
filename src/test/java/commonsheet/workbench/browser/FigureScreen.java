package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import commonsheet.sheet.Point;
import java.io.IOException;
import java.util.List;

/** The page of charts as a person sees it. */
final class FigureScreen {
  /** Milliseconds; machines that build and test at once are slow. */
  private static final int PATIENCE = 30_000;

  final Page page;

  private FigureScreen(Page page) {
    this.page = page;
  }

  /** The page with a curve chosen, when its picture is there. */
  static FigureScreen of(OpenWorkbench workbench, String curve) throws IOException {
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE);
    Page page = workbench.page("#figure?file=" + workbench.onlyRecord() + "&curve=" + curve);
    page.setDefaultTimeout(PATIENCE);
    FigureScreen screen = new FigureScreen(page);
    assertThat(screen.at("pick-" + curve)).hasAttribute("aria-pressed", "true");
    screen.page.locator("#figure image").first().waitFor();
    return screen;
  }

  Locator at(String id) {
    return page.locator("#" + id);
  }

  Locator told() {
    return page.locator("#told");
  }

  void tool(String name) {
    button(name).click();
    assertThat(button(name)).hasAttribute("aria-pressed", "true");
  }

  Locator button(String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }

  void press(String... keys) {
    for (String key : keys) {
      page.keyboard().press(key);
    }
  }

  /** Clicks at a place of the sheet's page, in points. */
  void click(Point place) {
    double[] on = onScreen(place);
    page.mouse().click(on[0], on[1]);
  }

  /** Draws from one place of the sheet's page to another. */
  void drag(Point from, Point to) {
    double[] start = onScreen(from);
    double[] end = onScreen(to);
    page.mouse().move(start[0], start[1]);
    page.mouse().down();
    page.mouse().move((start[0] + end[0]) / 2, (start[1] + end[1]) / 2);
    page.mouse().move(end[0], end[1]);
    page.mouse().up();
  }

  private double[] onScreen(Point place) {
    List<?> on =
        (List<?>)
            page.evaluate(
                "([x, y]) => { const p = new DOMPoint(x, y).matrixTransform("
                    + "document.getElementById('figure').getScreenCTM()); return [p.x, p.y]; }",
                List.of(place.x(), place.y()));
    return on.stream().mapToDouble(each -> ((Number) each).doubleValue()).toArray();
  }

  /** Saves by the keyboard and waits until the page says that it is in the file. */
  void save() {
    press("Control+s");
    assertThat(told()).containsText("Saved.");
    assertThat(at("save")).isDisabled();
  }
}
