package commonsheet.export;

import commonsheet.compare.Contender;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.compare.Shortlist;
import commonsheet.compare.Verdict;
import commonsheet.quantity.PlainNumber;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Writes a shortlist for a terminal: the question, the answer, and what stands behind it. */
public final class TerminalShortlist {
  /** Below this width, words break too often to be read; a narrower terminal wraps by itself. */
  private static final int NARROWEST = 60;

  /** A column of numbers under a head that is short enough for a terminal. */
  private record Shown(Measure measure, String... head) {
    String name() {
      return String.join("", head).replace("-", "").toLowerCase(Locale.ROOT);
    }
  }

  private static final List<Shown> SHOWN =
      List.of(
          new Shown(Measure.DELIVERED_CAPACITY, "Capacity"),
          new Shown(Measure.DELIVERED_ENERGY, "Energy"),
          new Shown(Measure.DELIVERED_SPECIFIC_ENERGY, "Per mass"),
          new Shown(Measure.MEAN_VOLTAGE, "Mean"),
          new Shown(Measure.LOWEST_VOLTAGE, "Lowest"),
          new Shown(Measure.VOLTAGE_DROP, "Drop"),
          new Shown(Measure.HEAT, "Heat"),
          new Shown(Measure.CURVE_RESISTANCE, "Resist-", "ance"));

  private static final double PERCENT = 100;

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
    section("How the figures were got", notes().lines());
    section("What cannot be set side by side", shortlist.remarks());
    section("Sources", sources());
    out.append('\n');
    paragraph(Caution.TEXT);
  }

  private void verdicts() throws IOException {
    TextTable table = new TextTable(List.of(ranks(), names()));
    table.add(left("Verdict", contenders.stream().map(c -> c.verdict().label()).toList()));
    table.add(column(Measure.CURRENT_RATING, "Rating"));
    table.add(
        new TextTable.Column(
            List.of("Margin", "%"),
            contenders.stream().map(TerminalShortlist::margin).toList(),
            true));
    table.add(column(Measure.NOMINAL_CAPACITY, "Nominal"));
    table.add(column(Measure.MASS, "Mass"));
    table.add(left("State", contenders.stream().map(TerminalShortlist::state).toList()));
    table.write(width, out);
    for (Verdict verdict : Verdict.values()) {
      section(
          verdict.label().substring(0, 1).toUpperCase(Locale.ROOT) + verdict.label().substring(1),
          contenders.stream()
              .filter(c -> c.verdict() == verdict && hasMoreToSay(c))
              .map(c -> CellName.among(contenders, c) + ": " + c.reason())
              .toList());
    }
  }

  /** A cell that carries the current without a doubt has its margin in the table. */
  private static boolean hasMoreToSay(Contender contender) {
    return contender.verdict() != Verdict.CARRIES || contender.reason().indexOf(';') >= 0;
  }

  private static String margin(Contender contender) {
    if (contender.margin() == null) {
      return FigureText.NONE;
    }
    double percent = contender.margin() * PERCENT;
    String number = PlainNumber.of(percent, Math.abs(percent) < 1 ? 1 : 2);
    return percent > 0 ? '+' + number : number;
  }

  private void figures() throws IOException {
    paragraph(
        "What each delivers; mean voltage, the lowest under the peak, the drop and the heat against"
            + " its curve of the lowest rate, and the resistance between its curves:");
    TextTable table = new TextTable(List.of(ranks(), names()));
    List<Figure> all = new ArrayList<>();
    for (Measure stated : List.of(Measure.CURRENT_RATING, Measure.NOMINAL_CAPACITY, Measure.MASS)) {
      contenders.forEach(c -> all.add(c.cell().figure(stated)));
    }
    for (Shown shown : SHOWN) {
      table.add(column(shown.measure(), shown.head()));
      contenders.forEach(c -> all.add(c.cell().figure(shown.measure())));
    }
    table.write(width, out);
    out.append('\n');
    for (String line : FigureText.legend(all)) {
      entry(line);
    }
  }

  private TextTable.Column column(Measure measure, String... head) {
    List<String> lines = new ArrayList<>(List.of(head));
    lines.add(MeasureHead.unit(measure.unit()));
    return new TextTable.Column(
        lines,
        contenders.stream().map(c -> FigureText.of(c.cell().figure(measure))).toList(),
        true);
  }

  private FigureNotes notes() {
    FigureNotes notes = new FigureNotes();
    for (Contender each : contenders) {
      for (Shown shown : SHOWN) {
        notes.add(
            CellName.among(contenders, each),
            shown.name(),
            each.cell().figure(shown.measure()).notes());
      }
    }
    return notes;
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
