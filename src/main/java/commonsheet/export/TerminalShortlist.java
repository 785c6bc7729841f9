package commonsheet.export;

import commonsheet.compare.Contender;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.compare.Shortlist;
import commonsheet.compare.Verdict;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Writes a shortlist for a terminal: the question, the answer, and what stands behind it. */
public final class TerminalShortlist {
  /** Below this width, words break too often to be read; a narrower terminal wraps by itself. */
  private static final int NARROWEST = 60;

  /** What is delivered, after what it takes to tell how far a figure can be trusted. */
  private static final List<Measure> SHOWN =
      List.of(
          Measure.CURRENT_RATING,
          Measure.NOMINAL_CAPACITY,
          Measure.MASS,
          Measure.DELIVERED_CAPACITY,
          Measure.DELIVERED_ENERGY,
          Measure.DELIVERED_SPECIFIC_ENERGY,
          Measure.MEAN_VOLTAGE,
          Measure.LOWEST_VOLTAGE,
          Measure.VOLTAGE_DROP,
          Measure.HEAT,
          Measure.CURVE_RESISTANCE);

  private final Shortlist shortlist;
  private final List<Contender> contenders;
  private final int width;
  private final Appendable out;

  private TerminalShortlist(Shortlist shortlist, int width, Appendable out) {
    this.shortlist = shortlist;
    this.contenders = shortlist.contenders();
    this.width = Math.max(NARROWEST, width);
    this.out = out;
  }

  /**
   * Writes the shortlist with its legend, sources and the caution; lines end with LF.
   *
   * @param width columns of the terminal; less than 60 counts as 60
   */
  public static void write(Shortlist shortlist, int width, Appendable out) throws IOException {
    new TerminalShortlist(shortlist, width, out).write();
  }

  private void write() throws IOException {
    paragraph("Cells at " + ShortlistWords.condition(shortlist.condition()));
    out.append('\n');
    for (String sentence : ShortlistWords.asked(shortlist)) {
      paragraph(sentence);
    }
    paragraph(ShortlistWords.outcome(shortlist));
    out.append('\n');
    verdicts();
    out.append('\n');
    figures();
    if (shortlist.requirement() != null) {
      new PackTable(shortlist).write(width, out);
    }
    section("How the figures were got", notes());
    section("What cannot be set side by side", shortlist.remarks());
    section("Sources", sources());
    out.append('\n');
    paragraph(Caution.TEXT);
  }

  private void verdicts() throws IOException {
    TextTable table = new TextTable(List.of(ranks(), names()));
    table.add(left("Verdict", contenders.stream().map(c -> c.verdict().label()).toList()));
    table.add(left("Record", contenders.stream().map(TerminalShortlist::state).toList()));
    table.write(width, out);
    out.append('\n');
    for (Verdict verdict : Verdict.values()) {
      reasons(verdict);
    }
  }

  private void reasons(Verdict verdict) throws IOException {
    List<Contender> those = contenders.stream().filter(c -> c.verdict() == verdict).toList();
    if (those.isEmpty()) {
      return;
    }
    String title = verdict.label();
    out.append(title.substring(0, 1).toUpperCase(Locale.ROOT)).append(title.substring(1));
    out.append('\n');
    for (Contender each : those) {
      entry(CellName.among(contenders, each) + ": " + each.reason());
    }
  }

  private void figures() throws IOException {
    TextTable table = new TextTable(List.of(ranks(), names()));
    List<Figure> shown = new ArrayList<>();
    for (Measure measure : SHOWN) {
      List<Figure> column = contenders.stream().map(c -> c.cell().figure(measure)).toList();
      shown.addAll(column);
      table.add(
          new TextTable.Column(
              MeasureHead.lines(measure), column.stream().map(FigureText::of).toList(), true));
    }
    table.write(width, out);
    out.append('\n');
    for (String line : FigureText.legend(shown)) {
      entry(line);
    }
  }

  private List<String> notes() {
    List<String> lines = new ArrayList<>();
    for (Contender each : contenders) {
      Set<String> said = new LinkedHashSet<>();
      for (Measure measure : SHOWN) {
        said.addAll(each.cell().figure(measure).notes());
      }
      if (!said.isEmpty()) {
        lines.add(CellName.among(contenders, each) + ": " + String.join("; ", said));
      }
    }
    return lines;
  }

  private List<String> sources() {
    return contenders.stream()
        .map(c -> CellName.among(contenders, c) + ": " + SheetSource.of(c.cell()))
        .toList();
  }

  private TextTable.Column ranks() {
    List<String> ranks = new ArrayList<>();
    for (int i = 1; i <= contenders.size(); i++) {
      ranks.add(String.valueOf(i));
    }
    return new TextTable.Column(List.of(), ranks, true);
  }

  private TextTable.Column names() {
    return left("Cell", contenders.stream().map(c -> CellName.among(contenders, c)).toList());
  }

  private static TextTable.Column left(String head, List<String> entries) {
    return new TextTable.Column(List.of(head), entries, false);
  }

  private static String state(Contender contender) {
    return contender.cell().record().review() == null
        ? "draft"
        : Printed.clean(contender.cell().record().review().state());
  }

  private void section(String title, List<String> lines) throws IOException {
    if (lines.isEmpty()) {
      return;
    }
    out.append('\n').append(title).append('\n');
    for (String line : lines) {
      entry(line);
    }
  }

  private void entry(String text) throws IOException {
    List<String> lines = Wrapping.wrapHanging(text, width - 2);
    for (String line : lines) {
      out.append("  ").append(line).append('\n');
    }
  }

  private void paragraph(String text) throws IOException {
    for (String line : Wrapping.wrap(text, width)) {
      out.append(line).append('\n');
    }
  }
}
