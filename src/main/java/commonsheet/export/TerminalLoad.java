package commonsheet.export;

import commonsheet.compare.log.LoggedLoad;
import commonsheet.quantity.PlainNumber;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Writes for a terminal what a log says a machine draws. */
public final class TerminalLoad {
  private static final int DIGITS = 3;
  private static final int LONGEST_BAR = 40;
  private static final int HOUR = 3600;
  private static final int MINUTE = 60;
  private static final double PERCENT = 100;
  private static final int TITLES = 16;

  private final LoggedLoad found;
  private final int width;
  private final Appendable out;

  private TerminalLoad(LoggedLoad found, int width, Appendable out) {
    this.found = found;
    this.width = width;
    this.out = out;
  }

  /**
   * Writes averages, peaks, the histogram and what was assumed; lines end with LF.
   *
   * @param width columns of the terminal
   */
  public static void write(LoggedLoad found, int width, Appendable out) throws IOException {
    new TerminalLoad(found, width, out).write();
  }

  private void write() throws IOException {
    LoggedLoad.Source source = found.source();
    paragraph(
        Printed.clean(source.file())
            + ": "
            + source.samples()
            + " samples of \""
            + Printed.clean(source.currentColumn())
            + "\" over \""
            + Printed.clean(source.timeColumn())
            + "\"");
    out.append('\n');
    line("Time under load", time(found.duration()));
    line(
        "Charge drawn",
        number(found.charge())
            + " Ah"
            + (found.returned() > found.charge() / 1000
                ? "; " + number(found.returned()) + " Ah came back"
                : ""));
    line("Average", number(found.load().averageCurrent()) + " A");
    line("Sustained peak", peaks());
    if (found.rest() > 0) {
      line("Rest", time(found.rest()));
    }
    if (found.gaps().count() > 0) {
      line("Gaps", found.gaps().count() + ", the longest of " + time(found.gaps().longest()));
    }
    out.append('\n');
    histogram();
    out.append('\n');
    paragraph("The peak asked of cells is the one sustained for 10 s.");
    for (String note : found.notes()) {
      paragraph(note);
    }
  }

  private void paragraph(String text) throws IOException {
    for (String line : Wrapping.wrapHanging(text, width)) {
      out.append(line).append('\n');
    }
  }

  private void line(String title, String text) throws IOException {
    paragraph(title + " ".repeat(TITLES - title.length()) + text);
  }

  private String peaks() {
    List<String> texts = new ArrayList<>();
    for (LoggedLoad.Peak peak : found.peaks()) {
      texts.add(
          peak.current() == null
              ? "none over " + number(peak.window()) + " s, the log being shorter"
              : number(peak.current()) + " A over " + number(peak.window()) + " s");
    }
    return String.join(", ", texts);
  }

  private void histogram() throws IOException {
    double most = found.bins().stream().mapToDouble(LoggedLoad.Bin::time).max().orElse(1);
    List<String> ranges = new ArrayList<>();
    found.bins().forEach(b -> ranges.add(number(b.low()) + " to " + number(b.high()) + " A"));
    int longest = ranges.stream().mapToInt(String::length).max().orElse(0);
    for (int i = 0; i < ranges.size(); i++) {
      LoggedLoad.Bin bin = found.bins().get(i);
      String share = PlainNumber.of(bin.time() * PERCENT, DIGITS);
      int bar = (int) Math.round(LONGEST_BAR * bin.time() / most);
      String line =
          " ".repeat(longest - ranges.get(i).length())
              + ranges.get(i)
              + "  "
              + " ".repeat(Math.max(0, 6 - share.length()))
              + share
              + " %  "
              + "#".repeat(bar);
      out.append(line.stripTrailing()).append('\n');
    }
  }

  /** Such as {@code 1 h 5 min 9 s}. */
  private static String time(double seconds) {
    long whole = Math.round(seconds);
    if (whole < MINUTE) {
      return number(seconds) + " s";
    }
    String hours = whole >= HOUR ? whole / HOUR + " h " : "";
    return hours + whole % HOUR / MINUTE + " min " + whole % MINUTE + " s";
  }

  private static String number(double value) {
    return PlainNumber.of(value, DIGITS);
  }
}
