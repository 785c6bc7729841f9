package commonsheet.chart.points;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the samples of a log from its table. */
final class LogReader {
  private static final List<String> WANTED = List.of("time", "current", "voltage");
  private static final String AMBIENT = "ambientTemperature";

  /** 1:30:00, 01:30:00.500, or with days before: 2d 01:30:00. */
  private static final Pattern CLOCK =
      Pattern.compile("(?:(\\d+)\\s*d?\\s+)?(\\d+):(\\d{1,2}):(\\d{1,2}(?:[.,]\\d+)?)");

  private static final int SECONDS_PER_MINUTE = 60;
  private static final int SECONDS_PER_HOUR = 3600;
  private static final int SECONDS_PER_DAY = 86_400;
  private static final double NANOS = 1e9;

  private final PointsFile file;
  private final PointsTable table;
  private final LogSamples samples = new LogSamples();
  private int currentDecimals;
  private int voltageDecimals;

  private LogReader(PointsFile file, PointsTable table) {
    this.file = file;
    this.table = table;
  }

  /**
   * The samples of a log and how finely it is written.
   *
   * @param currentStep last digit of the currents, in A
   * @param voltageStep last digit of the voltages, in V
   */
  record Log(LogSamples samples, double currentStep, double voltageStep) {}

  static Log read(PointsFile file) throws PointsException {
    try (PointsTable table = PointsTable.open(file, LogReader::named)) {
      return new LogReader(file, table).samples();
    }
  }

  private static int named(List<Heading> headings) {
    return (int)
        WANTED.stream().filter(wanted -> headings.stream().anyMatch(h -> h.names(wanted))).count();
  }

  private Log samples() throws PointsException {
    int time = column("time");
    int current = column("current");
    int voltage = column("voltage");
    int ambient = best(AMBIENT);
    requireUnit(current, "A or mA");
    requireUnit(voltage, "V or mV");
    double last = Double.NEGATIVE_INFINITY;
    for (PointsTable.Row row = table.next(); row != null; row = table.next()) {
      double now = time(row, time);
      if (now < last) {
        throw file.wrong(
            row.line(),
            "the time goes back from "
                + last
                + " to "
                + now
                + " s; sort the log, or cut it to one test");
      }
      last = now;
      samples.add(
          now,
          value(row, current),
          value(row, voltage),
          ambient < 0 || row.cell(ambient).isEmpty() ? Double.NaN : value(row, ambient));
      currentDecimals = Math.max(currentDecimals, table.decimals(row, current));
      voltageDecimals = Math.max(voltageDecimals, table.decimals(row, voltage));
      if (samples.size() > LogSamples.MOST) {
        throw file.wrong(
            "the log has more than "
                + LogSamples.MOST
                + " samples; cut it to the discharge, or keep every tenth line");
      }
    }
    return new Log(samples, step(current, currentDecimals), step(voltage, voltageDecimals));
  }

  /** The column of a quantity, which has to be there. */
  private int column(String quantity) throws PointsException {
    int column = best(quantity);
    if (column < 0) {
      List<String> there = new ArrayList<>();
      for (Heading heading : table.headings()) {
        if (!heading.text().isEmpty()) {
          there.add("\"" + heading.text() + "\"");
        }
      }
      throw file.wrong(
          "there is no column for the "
              + quantity
              + (there.isEmpty()
                  ? "; a line has to name the columns, such as Test Time / s,Current / A,Voltage / V"
                  : " among " + String.join(", ", there) + "; name it as docs/points.md says"));
    }
    return column;
  }

  /** The column of a quantity whose name is preferred and whose unit is known; -1 for none. */
  private int best(String quantity) {
    int best = -1;
    for (int i = 0; i < table.headings().size(); i++) {
      if (table.headings().get(i).names(quantity)
          && (best < 0 || cost(table.headings().get(i)) < cost(table.headings().get(best)))) {
        best = i;
      }
    }
    return best;
  }

  private static int cost(Heading heading) {
    int withoutUnit = heading.unit() == null && !heading.clock() ? 1000 : 0;
    return heading.meaning().rank() + withoutUnit;
  }

  private void requireUnit(int column, String units) throws PointsException {
    Heading heading = table.headings().get(column);
    if (heading.unit() == null) {
      throw file.wrong(
          "column \""
              + heading.text()
              + "\" does not say its unit; name it with one of "
              + units
              + " behind a slash");
    }
  }

  private double value(PointsTable.Row row, int column) throws PointsException {
    Heading heading = table.headings().get(column);
    double number = table.number(row, column);
    return heading.unit().equals(heading.meaning().unit()) ? number : heading.canonical(number);
  }

  private double step(int column, int decimals) {
    Heading heading = table.headings().get(column);
    return heading.canonical(1) * Math.pow(10, -decimals);
  }

  /** In s, from a number with a unit, a clock, or a date with a time. */
  private double time(PointsTable.Row row, int column) throws PointsException {
    String cell = row.cell(column);
    Matcher clock = CLOCK.matcher(cell);
    if (clock.matches()) {
      double days = clock.group(1) == null ? 0 : Double.parseDouble(clock.group(1));
      return days * SECONDS_PER_DAY
          + Double.parseDouble(clock.group(2)) * SECONDS_PER_HOUR
          + Double.parseDouble(clock.group(3)) * SECONDS_PER_MINUTE
          + Double.parseDouble(clock.group(4).replace(',', '.'));
    }
    if (cell.length() > "2026-05-03".length() && cell.indexOf(':') > 0) {
      try {
        LocalDateTime date = LocalDateTime.parse(cell.replace(' ', 'T').replaceFirst("Z$", ""));
        return date.toEpochSecond(ZoneOffset.UTC) + date.getNano() / NANOS;
      } catch (DateTimeParseException other) {
        throw file.wrong(
            row.line(),
            "\"" + cell + "\" is no time; write seconds, 1:30:00 or 2026-05-03 10:15:00");
      }
    }
    requireUnit(column, "s, min or h");
    return value(row, column);
  }
}
