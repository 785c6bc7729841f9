package commonsheet.workbench.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import commonsheet.workbench.Served;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The browser that the program starts gets an address that is good once. */
class StartedBrowserTest {
  @TempDir Path folder;

  @Test
  void theAddressOpensTheListOnceAndIsTakenOutOfTheBar() throws Exception {
    try (Served served = Served.over(folder);
        BrowserContext first = InstalledBrowser.get().newContext();
        BrowserContext second = InstalledBrowser.get().newContext()) {
      String address = served.workbench().addressForOnce();
      Page page = first.newPage();
      page.navigate(address);
      assertThat(page.locator("body")).containsText("TC-26E");
      assertFalse(page.url().contains("once"), page.url());
      page.reload();
      assertThat(page.locator("body")).containsText("TC-26E");

      Page late = second.newPage();
      late.navigate(address);
      assertThat(late.locator("#told")).containsText("good for once only");
      assertEquals(0, late.getByText("TC-26E").count());
    }
  }
}
