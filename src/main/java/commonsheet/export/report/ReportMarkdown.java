package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.compare.Verdict;
import commonsheet.export.Caution;
import commonsheet.export.FigureText;
import commonsheet.export.MarkdownText;
import commonsheet.export.ShortlistWords;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A report in GitHub Flavored Markdown, short enough for a post in a forum. */
final class ReportMarkdown {
  /** The columns a builder asks for first, beside the one that the cells are ranked by. */
  private static final List<Measure> SHORT =
      List.of(
          Measure.CURRENT_RATING,
          Measure.DELIVERED_CAPACITY,
          Measure.DELIVERED_ENERGY,
          Measure.DELIVERED_SPECIFIC_ENERGY,
          Measure.LOWEST_VOLTAGE,
          Measure.MASS);

  private final Report report;
  private final StringBuilder out = new StringBuilder();

  private ReportMarkdown(Report report) {
    this.report = report;
  }

  /** The text; lines end with LF. */
  static String of(Report report) {
    ReportMarkdown markdown = new ReportMarkdown(report);
    markdown.write();
    return markdown.out.toString();
  }

  private void write() {
    paragraph("**Cells at " + escape(ShortlistWords.condition(report.condition())) + "**");
    paragraph(escape(String.join(" ", ShortlistWords.asked(report.shortlist()))));
    paragraph(escape(ShortlistWords.outcome(report.shortlist())));
    table();
    list("", report.cells().stream().filter(c -> !carries(c)).map(this::reason).toList());
    packs();
    list("Not comparable:", report.shortlist().remarks().stream().map(this::escape).toList());
    list("Not known, or in doubt, and how it was got:", notes());
    list("Sheets:", report.cells().stream().map(this::source).toList());
    paragraph(escape(legend() + ConditionWords.tolerance(report.condition())));
    out.append("> ").append(escape(Caution.TEXT)).append('\n');
  }

  private void table() {
    if (report.cells().isEmpty()) {
      return;
    }
    List<Measure> measures =
        Stream.concat(SHORT.stream(), Stream.of(report.shortlist().rankedBy())).distinct().toList();
    List<String> heads = new ArrayList<>();
    for (Measure measure : measures) {
      heads.add(measure.title() + ", " + Unit.shown(measure.unit()));
    }
    heads(List.of("Cell", "Verdict"), heads);
    for (ReportedCell cell : report.cells()) {
      List<String> entries = new ArrayList<>(List.of(cell.name(), verdict(cell)));
      measures.forEach(measure -> entries.add(FigureText.of(cell.figure(measure))));
      row(cell, entries);
    }
    out.append('\n');
  }

  /** All packs together; nothing without a machine. */
  private void packs() {
    ReportedPacks packs = ReportedPacks.of(report);
    if (packs.cells().isEmpty()) {
      return;
    }
    paragraph(escape(ShortlistWords.together(report.shortlist())));
    heads(List.of("Packs of"), packs.measures().stream().map(ReportedPacks::head).toList());
    for (ReportedCell cell : packs.cells()) {
      List<String> entries = new ArrayList<>(List.of(cell.shortName()));
      for (PackMeasure measure : packs.measures()) {
        entries.add(FigureText.of(measure.shown(cell.contender().pack())));
      }
      row(cell, entries);
    }
    out.append('\n');
  }

  /** The head of a table: rank, columns of words, columns of numbers. */
  private void heads(List<String> words, List<String> numbers) {
    line(Stream.of(List.of(""), words, numbers).flatMap(List::stream).map(this::escape).toList());
    List<String> rules = new ArrayList<>(List.of("--:"));
    rules.addAll(Collections.nCopies(words.size(), ":--"));
    rules.addAll(Collections.nCopies(numbers.size(), "--:"));
    line(rules);
  }

  private void row(ReportedCell cell, List<String> entries) {
    Stream<String> rank = Stream.of(Integer.toString(cell.rank()));
    line(Stream.concat(rank, entries.stream().map(this::escape)).toList());
  }

  private static String verdict(ReportedCell cell) {
    String margin = ConditionWords.margin(cell.contender().margin());
    return cell.contender().verdict().label() + (margin.isEmpty() ? "" : " (" + margin + ')');
  }

  private String reason(ReportedCell cell) {
    return "**" + escape(cell.name()) + "**: " + escape(cell.contender().reason());
  }

  private List<String> notes() {
    return Footnotes.ofGaps(report, SHORT).stream().map(this::escape).toList();
  }

  /** What the marks mean, in one line; nothing where there are none. */
  private String legend() {
    Set<Figure> shown = new LinkedHashSet<>();
    for (ReportedCell cell : report.cells()) {
      SHORT.forEach(measure -> shown.add(cell.figure(measure)));
      shown.add(cell.figure(report.shortlist().rankedBy()));
    }
    ReportedPacks packs = ReportedPacks.of(report);
    for (ReportedCell cell : packs.cells()) {
      packs.measures().forEach(measure -> shown.add(measure.of(cell.contender().pack())));
    }
    List<String> lines = FigureText.legend(shown);
    return lines.isEmpty() ? "" : String.join("; ", lines) + ". ";
  }

  private String source(ReportedCell cell) {
    return escape(
        cell.shortName()
            + ": "
            + SheetUsed.of(cell).text()
            + " ("
            + SheetUsed.approval(cell)
            + ')');
  }

  private static boolean carries(ReportedCell cell) {
    return cell.contender().verdict() == Verdict.CARRIES;
  }

  private void list(String head, List<String> entries) {
    if (entries.isEmpty()) {
      return;
    }
    if (!head.isEmpty()) {
      paragraph(head);
    }
    entries.forEach(entry -> out.append("- ").append(entry).append('\n'));
    out.append('\n');
  }

  private void paragraph(String text) {
    out.append(text).append("\n\n");
  }

  private void line(List<String> entries) {
    out.append(entries.stream().collect(Collectors.joining(" | ", "| ", " |"))).append('\n');
  }

  private String escape(String text) {
    return MarkdownText.of(text);
  }
}
