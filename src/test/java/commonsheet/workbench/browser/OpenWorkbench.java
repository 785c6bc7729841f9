package commonsheet.workbench.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import commonsheet.record.RecordException;
import commonsheet.workbench.Workbench;
import commonsheet.workbench.WorkbenchSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A workbench over a folder with the records of invented sheets, and browsers that look at it.
 * Every page has a browser profile of its own, as another person's would.
 */
final class OpenWorkbench implements AutoCloseable {
  private static final Set<String> TOLD = Set.of("serious", "critical");

  private final Browser browser = InstalledBrowser.get();
  private final List<BrowserContext> contexts = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();
  private final Path folder;
  private Workbench workbench;

  private OpenWorkbench(Path folder, Workbench workbench) {
    this.folder = folder;
    this.workbench = workbench;
  }

  /**
   * Opens it over a new folder within {@code home}.
   *
   * @param sheets file names of fixtures without {@code .pdf}
   */
  static OpenWorkbench with(Path home, String... sheets) throws IOException, RecordException {
    Path folder = Files.createDirectories(home.resolve("records"));
    for (String sheet : sheets) {
      FixtureRecords.write(sheet, folder);
    }
    return new OpenWorkbench(folder, start(folder));
  }

  private static Workbench start(Path folder) throws IOException {
    return Workbench.open(new WorkbenchSettings(folder, List.of(FixtureRecords.SHEETS), 0, null));
  }

  /** Ends the program and starts it again; its address and key are new. */
  void restart() throws IOException {
    workbench.close();
    workbench = start(folder);
  }

  Path folder() {
    return folder;
  }

  /** The only record of the folder, as requests name it. */
  String onlyRecord() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json") && !name.startsWith("."))
          .reduce(
              (one, other) -> {
                throw new IllegalStateException("both " + one + " and " + other);
              })
          .orElseThrow();
    }
  }

  /** A light page of 1280 × 800 at an address such as {@code #record?file=a.json}. */
  Page page(String address) {
    return page(address, 1280, 800, ColorScheme.LIGHT);
  }

  /** A page that has started; what its code complains of is told when the workbench is closed. */
  Page page(String address, int width, int height, ColorScheme colours) {
    BrowserContext context =
        browser.newContext(
            new Browser.NewContextOptions().setViewportSize(width, height).setColorScheme(colours));
    contexts.add(context);
    Page page = context.newPage();
    page.onPageError(faults::add);
    page.onConsoleMessage(
        message -> {
          // Refused requests are also told as errors of the console; tests look at these
          // themselves.
          if (message.type().equals("error")
              && !message.text().contains("Failed to load resource")) {
            faults.add(message.text());
          }
        });
    page.navigate(workbench.address());
    page.evaluate("name => localStorage.setItem('commonsheet-person', name)", "first reviewer");
    if (!address.isEmpty()) {
      page.evaluate("address => { location.hash = address; }", address);
    }
    return page;
  }

  /** What axe-core calls a serious or critical fault of accessibility, one line each. */
  static List<String> inaccessible(Page page) {
    return new AxeBuilder(page)
        .analyze().getViolations().stream()
            .filter(rule -> TOLD.contains(rule.getImpact()))
            .map(OpenWorkbench::line)
            .toList();
  }

  private static String line(Rule rule) {
    return rule.getId() + ": " + rule.getHelp() + " " + rule.getNodes().get(0).getHtml();
  }

  /** Ends all of it; fails where the code of a page complained. */
  @Override
  public void close() {
    contexts.forEach(BrowserContext::close);
    workbench.close();
    if (!faults.isEmpty()) {
      throw new AssertionError("The pages complained: " + faults);
    }
  }
}
