package commonsheet.workbench.browser;

import static org.junit.jupiter.api.Assumptions.abort;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The Chromium of this machine, started once for all tests. Where there is none, the tests that
 * need it are skipped and say so; the variable COMMONSHEET_BROWSER names one elsewhere.
 */
final class InstalledBrowser {
  /** Without them it looks for updates, and for a sandbox that a container does not have. */
  private static final List<String> ARGUMENTS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  private static Browser browser;

  private InstalledBrowser() {}

  /** The browser, started with the first test that asks. */
  static synchronized Browser get() {
    if (browser == null) {
      Path program = program();
      Playwright playwright =
          Playwright.create(
              new Playwright.CreateOptions()
                  .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
      browser =
          playwright
              .chromium()
              .launch(
                  new BrowserType.LaunchOptions().setExecutablePath(program).setArgs(ARGUMENTS));
      Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
    }
    return browser;
  }

  private static Path program() {
    return Stream.of(
            System.getenv("COMMONSHEET_BROWSER"), "/usr/bin/chromium", "/usr/bin/chromium-browser")
        .filter(Objects::nonNull)
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst()
        .orElseGet(
            () ->
                abort(
                    "Browser tests were skipped: no Chromium is installed"
                        + " (on Debian: apt-get install chromium)."));
  }
}
