package commonsheet.bench;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import commonsheet.record.CellRecord;
import commonsheet.record.RecordJson;
import commonsheet.record.Source;
import commonsheet.workbench.Requests;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Measures what a person waits for in the workbench: the list of a large folder, pages of a long
 * sheet, the pages in a browser. Run by {@code src/bench/workbench}; see docs/benchmark.md.
 */
public final class WorkbenchTimes {
  private static final int TIMES = 15;
  private static final int PAGES = 40;
  private static final int WIDTH = 1280;
  private static final double MILLISECONDS = 1e6;

  private WorkbenchTimes() {}

  /** New folder to work in, the number of records, and the browser's program. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    int number = Integer.parseInt(arguments[1]);
    IntStream.range(0, number).parallel().forEach(i -> InventedLibrary.write(folder, i));
    Path sheet = folder.resolve("long.pdf");
    LongSheet.write(sheet, PAGES);
    Files.writeString(folder.resolve("invented-0.json"), RecordJson.write(ofSheet(sheet)));
    try (Requests workbench = Requests.to(folder)) {
      list(workbench, number);
      pictures(workbench);
      browse(workbench, Path.of(arguments[2]));
    }
  }

  /** The first invented record, as if it had been read from the sheet. */
  private static CellRecord ofSheet(Path sheet) throws Exception {
    CellRecord record = InventedLibrary.record(0);
    String hash =
        HexFormat.of()
            .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(sheet)));
    return new CellRecord(
        record.schema(),
        record.id(),
        record.cell(),
        new Source(null, null, null, null, sheet.getFileName().toString(), hash, PAGES, null, null),
        record.statements(),
        record.curves(),
        record.findings(),
        record.review());
  }

  private interface Work {
    void run() throws IOException, InterruptedException;
  }

  private static double milliseconds(Work work) throws IOException, InterruptedException {
    long begin = System.nanoTime();
    work.run();
    return (System.nanoTime() - begin) / MILLISECONDS;
  }

  private static void list(Requests workbench, int number) throws Exception {
    double first = milliseconds(() -> workbench.ask("folder"));
    List<Double> later = new ArrayList<>();
    for (int i = 0; i < TIMES; i++) {
      later.add(milliseconds(() -> workbench.ask("folder")));
    }
    tell(number + " records listed, answer of the program", first, later);
  }

  private static void pictures(Requests workbench) throws Exception {
    List<Double> later = new ArrayList<>();
    double first = picture(workbench, 1);
    for (int page = 2; page <= PAGES; page++) {
      later.add(picture(workbench, page));
    }
    tell("picture of a page, " + WIDTH + " pixels wide, none seen before", first, later);
  }

  private static double picture(Requests workbench, int page) throws Exception {
    return milliseconds(
        () ->
            workbench.ask(
                "place/picture",
                "file",
                "invented-0.json",
                "page",
                String.valueOf(page),
                "width",
                String.valueOf(WIDTH)));
  }

  private static void browse(Requests workbench, Path program) {
    try (Playwright playwright =
            Playwright.create(
                new Playwright.CreateOptions()
                    .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        Browser browser =
            playwright
                .chromium()
                .launch(
                    new BrowserType.LaunchOptions()
                        .setExecutablePath(program)
                        .setArgs(List.of("--no-sandbox", "--disable-gpu", "--disable-quic")))) {
      Page page = browser.newPage();
      page.navigate(workbench.address());
      page.waitForSelector(".records tbody tr[data-file]");
      page.evaluate("localStorage.setItem('commonsheet-person', 'a reader')");
      tell("list, from loading the page to its rows", loads(page, ".records tr[data-file]"));
      tell("a key typed in the list's search, to the rows drawn", typed(page));
      page.evaluate("location.hash = '#record?file=invented-0.json'");
      page.waitForSelector("[role=option]");
      tell("record, from loading the page to its values", loads(page, "[role=option]"));
    }
  }

  /** From the beginning of loading, as the browser counts it. */
  private static List<Double> loads(Page page, String ready) {
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < TIMES; i++) {
      page.reload();
      page.waitForSelector(ready);
      times.add(
          ((Number)
                  page.evaluate(
                      "() => new Promise(done => requestAnimationFrame("
                          + "() => done(performance.now())))"))
              .doubleValue());
    }
    return times;
  }

  private static List<Double> typed(Page page) {
    List<Double> times = new ArrayList<>();
    for (String text : List.of("c", "ce", "cel", "ce", "c", "", "i", "in", "inv", "1", "12", "")) {
      times.add(
          ((Number)
                  page.evaluate(
                      "text => new Promise(done => {"
                          + "const search = document.querySelector('input[type=search]');"
                          + "const begin = performance.now();"
                          + "search.value = text;"
                          + "search.dispatchEvent(new Event('input'));"
                          + "requestAnimationFrame(() => setTimeout("
                          + "() => done(performance.now() - begin)));})",
                      text))
              .doubleValue());
    }
    return times;
  }

  private static void tell(String what, double first, List<Double> later) {
    System.out.printf(Locale.ROOT, "%s: first %.0f ms%n", what, first);
    tell(what, later);
  }

  private static void tell(String what, List<Double> times) {
    List<Double> sorted = times.stream().sorted().toList();
    System.out.printf(
        Locale.ROOT,
        "%s: median of %d %.0f ms, longest %.0f ms%n",
        what,
        sorted.size(),
        sorted.get(sorted.size() / 2),
        sorted.get(sorted.size() - 1));
  }
}
