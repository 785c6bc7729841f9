package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Printed;
import commonsheet.export.ShortlistWords;
import commonsheet.export.plot.Markup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** What stands below the figures of a page: reasons, packs, gaps, notes, sheets. */
final class PageLists {
  private final Report report;
  private final ReportCharts charts;
  private final Footnotes notes;
  private final Markup out;

  PageLists(Report report, ReportCharts charts, Footnotes notes, Markup out) {
    this.report = report;
    this.charts = charts;
    this.notes = notes;
    this.out = out;
  }

  /** Each cell's verdict with its reason, near misses among them. */
  void reasons() {
    out.leaf("h2", "Why each cell stands where it does");
    table(
        List.of("Verdict", "Margin", "Reason"),
        report.cells().stream()
            .map(
                cell ->
                    row(
                        cell,
                        FigureTable.sign(cell.contender().verdict())
                            + ' '
                            + cell.contender().verdict().label(),
                        ConditionWords.margin(cell.contender().margin()),
                        cell.contender().reason()))
            .toList());
  }

  /** The figures of all packs together; nothing without a machine. */
  void packs() {
    ReportedPacks packs = ReportedPacks.of(report);
    if (packs.cells().isEmpty()) {
      return;
    }
    out.leaf("h2", "All packs together");
    out.leaf("p", "quiet", ShortlistWords.together(report.shortlist()));
    table(
        packs.measures().stream().map(ReportedPacks::head).toList(),
        packs.cells().stream()
            .map(
                cell ->
                    row(
                        cell,
                        packs.measures().stream()
                            .map(m -> FigureWords.value(m.shown(cell.contender().pack())))
                            .toArray(String[]::new)))
            .toList());
  }

  /** What cannot be set side by side, and why. */
  void incomparable() {
    Map<String, List<String>> gaps = new LinkedHashMap<>();
    for (ReportedCell cell : report.cells()) {
      for (Measure measure : report.measures()) {
        Figure figure = cell.figure(measure);
        if (!figure.isKnown()) {
          String reason = Printed.clean(String.join("; ", figure.notes()));
          gaps.computeIfAbsent(cell.shortName() + ": " + reason, g -> new ArrayList<>())
              .add(measure.title().toLowerCase(Locale.ROOT));
        }
      }
    }
    if (gaps.isEmpty() && report.shortlist().remarks().isEmpty()) {
      return;
    }
    out.leaf("h2", "What cannot be compared");
    out.open("ul").with("class", "notes");
    report.shortlist().remarks().forEach(remark -> out.leaf("li", Printed.clean(remark)));
    gaps.forEach((gap, measures) -> out.leaf("li", gap + " (" + String.join(", ", measures) + ")"));
    out.closeLine();
  }

  /** The notes that the small numbers lead to. */
  void notes() {
    List<String> texts = notes.texts();
    if (texts.isEmpty()) {
      return;
    }
    out.leaf("h2", "Notes");
    out.open("ol").with("class", "notes");
    for (int i = 0; i < texts.size(); i++) {
      out.open("li").with("id", "note-" + (i + 1)).text(texts.get(i)).closeLine();
    }
    out.closeLine();
  }

  /** The sheet of each cell and the state of its record. */
  void sources() {
    out.leaf("h2", "Sheets");
    List<List<String>> rows = new ArrayList<>();
    for (ReportedCell cell : report.cells()) {
      SheetUsed source = SheetUsed.of(cell);
      rows.add(
          row(
              cell,
              cell.cell().maker() == null ? "not printed" : cell.cell().maker(),
              source.file(),
              Stream.of(source.document(), source.title())
                  .filter(text -> !text.isEmpty())
                  .findFirst()
                  .orElse("not printed"),
              source.revision().isEmpty() ? "not printed" : source.revision(),
              source.date().isEmpty() ? "not printed" : source.date(),
              source.pageList(),
              SheetUsed.approval(cell)));
    }
    table(
        List.of("Maker", "Sheet", "Document", "Revision", "Date", "Pages", "State of the record"),
        rows);
  }

  private static List<String> row(ReportedCell cell, String... texts) {
    List<String> row = new ArrayList<>(List.of(Integer.toString(cell.rank()), cell.shortName()));
    row.addAll(List.of(texts));
    return row;
  }

  private void table(List<String> heads, List<List<String>> rows) {
    out.open("div").with("class", "scroll").open("table").with("class", "plain");
    out.open("thead").open("tr").leaf("th", "").leaf("th", "Cell");
    heads.forEach(head -> out.open("th").with("scope", "col").text(head).close());
    out.close().closeLine();
    out.open("tbody");
    for (List<String> row : rows) {
      out.open("tr");
      ring(Integer.parseInt(row.get(0)));
      out.open("th").with("scope", "row").text(Printed.clean(row.get(1))).close();
      row.subList(2, row.size()).forEach(text -> out.leaf("td", Printed.clean(text)));
      out.closeLine();
    }
    out.close().close().closeLine();
  }

  private void ring(int rank) {
    ReportedCell cell = report.cells().get(rank - 1);
    String look = charts.look(cell).map(l -> ' ' + l.styleClass()).orElse("");
    out.open("td").leaf("span", "ring" + look, Integer.toString(rank)).close();
  }
}
