package commonsheet.compare.log;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.ColumnTable;
import commonsheet.columns.Heading;
import commonsheet.columns.QuantityColumns;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Reads times and currents of a log from its columns. */
final class LogColumns {
  private static final String TIME = "time";
  private static final String CURRENT = "current";

  /** What loggers write where a sensor gave nothing. */
  private static final Set<String> NOTHING = Set.of("", "nan", "null", "none", "n/a", "-");

  private final ColumnFile file;
  private final LogChoice choice;

  private LogColumns(ColumnFile file, LogChoice choice) {
    this.file = file;
    this.choice = choice;
  }

  /**
   * What the columns hold.
   *
   * @param skipped rows without a time or a current
   */
  record Content(CurrentSamples samples, Heading timeColumn, Heading currentColumn, int skipped) {}

  static Content read(ColumnFile file, LogChoice choice) throws ColumnException {
    return new LogColumns(file, choice).read();
  }

  private Content read() throws ColumnException {
    try (ColumnTable table = ColumnTable.open(file, this::heading, LogColumns::suits)) {
      QuantityColumns columns = new QuantityColumns(file, table);
      int time = columns.require(TIME, advice("--time-column", choice.timeColumn()));
      int current = columns.require(CURRENT, advice("--current-column", choice.currentColumn()));
      columns.requireUnit(current, "A or mA");
      CurrentSamples samples = new CurrentSamples();
      int skipped = 0;
      for (ColumnTable.Row row = table.next(); row != null; row = table.next()) {
        if (isNothing(row.cell(time)) || isNothing(row.cell(current))) {
          skipped++;
        } else {
          add(samples, row.line(), columns.seconds(row, time), columns.value(row, current));
        }
      }
      return new Content(
          samples, table.headings().get(time), table.headings().get(current), skipped);
    }
  }

  private void add(CurrentSamples samples, long line, double time, double current)
      throws ColumnException {
    if (samples.size() > 0 && time < samples.time(samples.size() - 1)) {
      throw file.wrong(line, "the time goes back; sort the log, or cut it to one run");
    }
    if (samples.size() == CurrentSamples.MOST) {
      throw file.wrong(
          "the log has more than "
              + CurrentSamples.MOST
              + " samples; cut it to one run, or keep every tenth line");
    }
    samples.add(time, current);
  }

  private static int suits(List<Heading> headings) {
    boolean time = headings.stream().anyMatch(h -> h.names(TIME));
    boolean current = headings.stream().anyMatch(h -> h.names(CURRENT));
    return (time ? 1 : 0) + (current ? 1 : 0);
  }

  /** What a name means, where a column may have been chosen for a quantity. */
  private Heading heading(String text) {
    Heading named = Heading.of(text);
    Heading time = chosen(text, named, TIME, choice.timeColumn());
    return time == named ? chosen(text, named, CURRENT, choice.currentColumn()) : time;
  }

  private static Heading chosen(String text, Heading named, String quantity, String column) {
    if (column == null) {
      return named;
    }
    if (text.strip().equalsIgnoreCase(column.strip())) {
      return Heading.chosen(text, quantity);
    }
    int slash = column.lastIndexOf('/');
    if (slash > 0 && text.strip().equalsIgnoreCase(column.substring(0, slash).strip())) {
      return Heading.chosen(column, quantity);
    }
    return named.names(quantity) ? named.withoutMeaning() : named;
  }

  private static String advice(String option, String chosen) {
    return chosen == null
        ? "choose it by " + option
        : option + " \"" + chosen + "\" is none of them";
  }

  private static boolean isNothing(String cell) {
    return NOTHING.contains(cell.toLowerCase(Locale.ROOT));
  }
}
