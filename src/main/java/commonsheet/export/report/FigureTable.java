package commonsheet.export.report;

import commonsheet.compare.Contender;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.compare.Verdict;
import commonsheet.export.Printed;
import commonsheet.export.plot.Look;
import commonsheet.export.plot.Markup;
import java.util.List;
import java.util.stream.Collectors;

/** The table of figures of a page; its columns can be sorted. */
final class FigureTable {
  private static final String NUMBER = "number";

  /** Columns before the figures: rank, cell, verdict. */
  private static final int NAMES = 3;

  private final Report report;
  private final ReportCharts charts;
  private final Footnotes notes;
  private final Markup out;
  private final List<Measure> measures;

  FigureTable(Report report, ReportCharts charts, Footnotes notes, Markup out) {
    this.report = report;
    this.charts = charts;
    this.notes = notes;
    this.out = out;
    measures = report.measures();
  }

  void write() {
    out.leaf("h2", "Figures");
    out.leaf(
        "p",
        "quiet",
        "Below each figure: what it may be, and where it comes from. Small numbers lead to the"
            + " notes. A heading sorts the table.");
    out.open("div").with("class", "scroll").with("tabindex", "0").with("role", "region");
    out.with("aria-label", "Figures of the cells");
    out.open("table").with("class", "cells");
    out.open("thead");
    groups();
    heads();
    out.closeLine();
    out.open("tbody");
    report.cells().forEach(this::row);
    out.close().close().closeLine();
    out.open("p").with("id", "sorted").with("class", "hidden").with("role", "status").text("");
    out.closeLine();
  }

  private void groups() {
    out.open("tr").with("class", "groups");
    out.open("td").with("colspan", Integer.toString(NAMES)).text("").close();
    group("As the sheet states", measures.stream().filter(FigureTable::isStated).count());
    group("Under the load", measures.stream().filter(m -> !isStated(m)).count());
    out.closeLine();
  }

  private void group(String title, long columns) {
    if (columns > 0) {
      out.open("th").with("scope", "colgroup").with("colspan", Long.toString(columns));
      out.leaf("span", title).close();
    }
  }

  private static boolean isStated(Measure measure) {
    return measure.compareTo(Measure.MASS) <= 0;
  }

  private void heads() {
    out.open("tr");
    head(0, "fixed rank", "Rank", "", NUMBER, "ascending");
    head(1, "fixed name", "Cell", "maker, size", "text", "none");
    head(2, "verdict", "Verdict", "margin", NUMBER, "none");
    int column = NAMES;
    for (Measure measure : measures) {
      head(
          column++,
          measure == report.shortlist().rankedBy() ? "figure ranked" : "figure",
          measure.title(),
          Unit.shown(measure.unit()),
          NUMBER,
          "none");
    }
    out.closeLine();
  }

  private void head(
      int column, String style, String title, String unit, String kind, String sorted) {
    boolean highFirst = column >= NAMES && !measures.get(column - NAMES).equals(Measure.MASS);
    out.open("th").with("scope", "col").with("class", style);
    out.with("data-column", Integer.toString(column)).with("data-kind", kind);
    out.with("data-title", title).with("data-first", highFirst ? "descending" : "ascending");
    out.with("aria-sort", sorted);
    out.open("button").with("type", "button").text(title);
    out.leaf("span", "unit", unit).close().close();
  }

  private void row(ReportedCell cell) {
    String rank = Integer.toString(cell.rank());
    out.open("tr").with("data-rank", rank);
    out.open("td").with("class", "fixed rank").with("data-sort", rank);
    out.leaf("span", "ring" + charts.look(cell).map(FigureTable::look).orElse(""), rank).close();
    name(cell);
    verdict(cell);
    for (Measure measure : measures) {
      figure(measure, cell.figure(measure));
    }
    out.closeLine();
  }

  private static String look(Look look) {
    return ' ' + look.styleClass();
  }

  private void name(ReportedCell cell) {
    out.open("th").with("scope", "row").with("class", "fixed name").with("data-sort", cell.name());
    out.text(cell.shortName());
    out.leaf("small", Printed.clean(cell.cell().maker()));
    out.open("small").text(Printed.clean(cell.cell().sizeCode()) + ' ');
    out.open("span").with("class", SheetUsed.isApproved(cell) ? "state" : "state open");
    out.text(SheetUsed.isApproved(cell) ? "approved" : "not approved");
    out.close().close().close();
  }

  private void verdict(ReportedCell cell) {
    Contender contender = cell.contender();
    int order = contender.verdict().ordinal();
    out.open("td").with("class", "verdict").with("data-sort", Integer.toString(order));
    out.with("title", Printed.clean(contender.reason()));
    out.open("span").with("class", "sign").with("aria-hidden", "true");
    out.text(sign(contender.verdict())).close();
    out.text(contender.verdict().label());
    out.leaf("small", ConditionWords.margin(contender.margin())).close();
  }

  static String sign(Verdict verdict) {
    return switch (verdict) {
      case CARRIES -> "●";
      case NEAR_MISS -> "◐";
      case NOT_KNOWN -> "○";
      case FAILS -> "×";
    };
  }

  private void figure(Measure measure, Figure figure) {
    boolean ranked = measure == report.shortlist().rankedBy();
    out.open("td");
    out.with("class", "figure " + FigureWords.origin(figure) + (ranked ? " ranked" : ""));
    out.with("data-sort", figure.value() == null ? "" : Numbers.text(figure.value()));
    out.with("title", tooltip(figure));
    out.leaf("span", "value", FigureWords.value(figure));
    List<Integer> numbers = notes.numbers(figure);
    if (!numbers.isEmpty()) {
      out.open("sup");
      for (int i = 0; i < numbers.size(); i++) {
        out.text(i == 0 ? "" : ",");
        String number = Integer.toString(numbers.get(i));
        out.open("a").with("href", "#note-" + number).text(number).close();
      }
      out.close();
    }
    if (!FigureWords.range(figure).isEmpty()) {
      out.leaf("span", "range", FigureWords.range(figure));
    }
    if (FigureWords.says(figure)) {
      out.leaf("span", "origin", FigureWords.origin(figure));
    }
    out.close();
  }

  private static String tooltip(Figure figure) {
    String from = figure.from().isEmpty() ? "" : " (" + String.join(", ", figure.from()) + ")";
    return FigureWords.origin(figure)
        + from
        + figure.notes().stream().map(Printed::clean).collect(Collectors.joining("; ", ". ", ""));
  }
}
