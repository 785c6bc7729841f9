package commonsheet.chart.points;

import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.columns.ColumnTable;
import commonsheet.columns.Heading;
import commonsheet.columns.QuantityColumns;
import java.util.List;

/** Reads the samples of a log from its table. */
final class LogReader {
  private static final List<String> WANTED = List.of("time", "current", "voltage");
  private static final String AMBIENT = "ambientTemperature";

  private static final String ADVICE = "name it as docs/points.md says";

  private final ColumnFile file;
  private final ColumnTable table;
  private final QuantityColumns columns;
  private final LogSamples samples = new LogSamples();
  private int currentDecimals;
  private int voltageDecimals;

  private LogReader(ColumnFile file, ColumnTable table) {
    this.file = file;
    this.table = table;
    this.columns = new QuantityColumns(file, table);
  }

  /**
   * The samples of a log and how finely it is written.
   *
   * @param currentStep last digit of the currents, in A
   * @param voltageStep last digit of the voltages, in V
   */
  record Log(LogSamples samples, double currentStep, double voltageStep) {}

  static Log read(ColumnFile file) throws ColumnException {
    try (ColumnTable table = ColumnTable.open(file, LogReader::named)) {
      return new LogReader(file, table).samples();
    }
  }

  private static int named(List<Heading> headings) {
    return (int)
        WANTED.stream().filter(wanted -> headings.stream().anyMatch(h -> h.names(wanted))).count();
  }

  private Log samples() throws ColumnException {
    int time = columns.require("time", ADVICE);
    int current = columns.require("current", ADVICE);
    int voltage = columns.require("voltage", ADVICE);
    int ambient = columns.find(AMBIENT);
    columns.requireUnit(current, "A or mA");
    columns.requireUnit(voltage, "V or mV");
    double last = Double.NEGATIVE_INFINITY;
    for (ColumnTable.Row row = table.next(); row != null; row = table.next()) {
      double now = columns.seconds(row, time);
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
          columns.value(row, current),
          columns.value(row, voltage),
          ambient < 0 || row.cell(ambient).isEmpty() ? Double.NaN : columns.value(row, ambient));
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

  private double step(int column, int decimals) {
    Heading heading = table.headings().get(column);
    return heading.canonical(1) * Math.pow(10, -decimals);
  }
}
