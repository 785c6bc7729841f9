package commonsheet.cli;

import commonsheet.chart.overlay.Figure;
import commonsheet.layout.Explanation;
import commonsheet.layout.Outcome;
import commonsheet.record.CellRecord;
import commonsheet.record.Statement;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;

/** How a sheet was read, as a list by pages, then what was read. */
final class ExplainReport {
  private final PrintWriter out;
  private final Integer page;

  /**
   * Prepares a report.
   *
   * @param page the only page to tell of, from 1; null for all
   */
  ExplainReport(PrintWriter out, Integer page) {
    this.out = out;
    this.page = page;
  }

  void print(Path file, SheetOutcome.Read read) {
    Explanation explanation = read.reading().explanation();
    out.println(
        file
            + ": "
            + SheetLine.count(read.sheet().pages().size(), "page")
            + ", read as "
            + String.join(", ", explanation.languages()));
    out.println("Layout " + explanation.layout() + ": " + explanation.why() + ".");
    if (read.reading().reason() != null) {
      out.println("No record: " + read.reading().reason() + ".");
    }
    outcomes(explanation);
    read.reading().records().forEach(this::statements);
    charts(read);
  }

  private void charts(SheetOutcome.Read read) {
    if (read.untraced() != null) {
      out.println();
      out.println("Its charts were not read, because of " + read.untraced() + ".");
    }
    for (CellRecord record : read.reading().records()) {
      List<Figure> figures =
          Figure.of(read.charts(), record.curves()).stream()
              .filter(figure -> isAsked(figure.page()))
              .toList();
      if (!figures.isEmpty()) {
        out.println();
        out.println("Charts");
        figures.forEach(new ChartLines(out)::print);
      }
    }
  }

  private void outcomes(Explanation explanation) {
    List<Outcome> outcomes =
        explanation.outcomes().stream().filter(outcome -> isAsked(outcome.page())).toList();
    int current = 0;
    for (Outcome outcome : outcomes) {
      if (outcome.page() != current) {
        current = outcome.page();
        out.println();
        out.println("Page " + current);
      }
      out.println((outcome.matched() ? "  + " : "  - ") + line(outcome));
    }
    out.println();
    long matched = outcomes.stream().filter(Outcome::matched).count();
    out.println(
        matched
            + " of "
            + SheetLine.count(outcomes.size(), "labelled line")
            + " gave a statement.");
  }

  private static String line(Outcome outcome) {
    return onOneLine(outcome.label())
        + " | "
        + onOneLine(outcome.value())
        + " → "
        + onOneLine(outcome.result());
  }

  private void statements(CellRecord record) {
    out.println();
    out.println(SheetLine.of(record));
    for (Statement statement : record.statements()) {
      if (isAsked(statement.evidence().page())) {
        out.println("  " + StatementLine.of(statement));
        statement.doubts().forEach(doubt -> out.println("      ? " + onOneLine(doubt)));
      }
    }
  }

  /** A statement that comes from others stands on no page, and is told of with every page. */
  private boolean isAsked(Integer number) {
    return page == null || number == null || number.equals(page);
  }

  private static String onOneLine(String text) {
    return text == null ? "" : text.strip().replaceAll("\\s+", " ");
  }
}
