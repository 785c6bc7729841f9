package commonsheet.export.report;

import commonsheet.export.Caution;
import commonsheet.export.ShortlistWords;
import commonsheet.export.plot.Markup;
import commonsheet.export.plot.Plot;
import commonsheet.export.plot.PlotSvg;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/**
 * A report as one page of HTML that asks for nothing from elsewhere. Its policy lets no script run
 * but its own, even if a sheet's text should ever come through as markup.
 */
final class ReportPage {
  private static final String STYLE = resource("report.css");
  private static final String SCRIPT = resource("report.js");

  /** With more cells than this a browser takes seconds to sort the table. */
  static final int MOST_CELLS = 250;

  private final Report report;
  private final ReportCharts charts;
  private final Footnotes notes = new Footnotes();
  private final Markup out = new Markup();

  private ReportPage(Report report) {
    this.report = report;
    charts = new ReportCharts(report);
  }

  /** The text of the page. */
  static String of(Report report) {
    ReportPage page = new ReportPage(report.ofFirst(MOST_CELLS));
    page.write();
    return page.out.toString();
  }

  private void write() {
    out.documentType("html");
    out.open("html").with("lang", "en");
    head();
    out.open("body").open("main");
    introduction();
    if (!report.cells().isEmpty()) {
      new FigureTable(report, charts, notes, out).write();
      charts();
      PageLists lists = new PageLists(report, charts, notes, out);
      lists.reasons();
      lists.packs();
      lists.incomparable();
      lists.notes();
      lists.sources();
    }
    out.open("footer");
    caution();
    out.closeLine();
    out.close();
    out.open("script").verbatim(SCRIPT).close();
    out.close().close().text("\n");
  }

  private void head() {
    out.open("head");
    out.empty("meta").with("charset", "utf-8");
    out.empty("meta").with("http-equiv", "Content-Security-Policy");
    out.with(
        "content",
        "default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-"
            + sha256(SCRIPT)
            + "'; base-uri 'none'; form-action 'none'");
    out.empty("meta").with("name", "viewport");
    out.with("content", "width=device-width, initial-scale=1");
    out.leaf("title", "Cells at " + ShortlistWords.condition(report.condition()));
    out.open("style").verbatim(STYLE).close();
    out.closeLine();
  }

  private void introduction() {
    out.leaf("h1", "Cells at " + ShortlistWords.condition(report.condition()));
    out.leaf("p", "lead", ShortlistWords.outcome(report.shortlist()));
    out.leaf("p", String.join(" ", ShortlistWords.asked(report.shortlist())));
    out.leaf("p", "quiet", ConditionWords.tolerance(report.condition()));
    if (report.cells().size() < report.compared()) {
      out.leaf(
          "p",
          "This page shows the first "
              + report.cells().size()
              + " of "
              + report.compared()
              + " cells in rank; a table of all is written by --format csv or xlsx.");
    }
    caution();
  }

  private void caution() {
    out.leaf("p", "caution", Caution.TEXT).text("\n");
  }

  private void charts() {
    List<Plot> plots = charts.plots();
    out.leaf("h2", "Charts");
    out.open("div").with("class", "charts");
    for (Plot plot : plots) {
      out.open("figure");
      out.leaf("h3", plot.title());
      out.leaf("figcaption", plot.description());
      PlotSvg.write(plot, out);
      out.closeLine();
    }
    new OriginKey(out).write();
    out.closeLine();
  }

  private static String sha256(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String resource(String name) {
    String path = "/commonsheet/export/" + name;
    try (InputStream in = ReportPage.class.getResourceAsStream(path)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the resource " + path + " is damaged", e);
    }
  }
}
