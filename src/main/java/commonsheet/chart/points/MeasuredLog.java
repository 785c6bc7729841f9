package commonsheet.chart.points;

import commonsheet.chart.plot.Thinning;
import commonsheet.columns.ColumnException;
import commonsheet.columns.ColumnFile;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Discharges that a user measured: a log of time, current and voltage becomes curves of voltage
 * over charge, with method {@code measured}. The charge is the current integrated over time by
 * trapezia.
 */
public final class MeasuredLog {
  /** More discharges than these in one log are a cycling test, which no chart shows. */
  private static final int MOST_CURVES = 20;

  /** Share of the uncertainty that thinning may use up. */
  private static final double THINNING = 0.1;

  /** The finest that voltages are kept, in V; loggers resolve less. */
  private static final double FINEST_VOLTAGE = 1e-4;

  /** The finest that charges are kept, as a share of the whole. */
  private static final double FINEST_CHARGE = 1e-4;

  /** Digits that a mean current is worth. */
  private static final double CURRENT_DIGITS = 1e4;

  private static final double HUNDREDTHS = 100;
  private static final double TENTHS = 10;
  private static final double SECONDS_PER_HOUR = 3600;

  private MeasuredLog() {}

  /**
   * Reads a log. Columns are told by their names, those of the Battery Data Format and common plain
   * ones with their unit; {@code docs/points.md} lists them. Which sign a discharge has is told by
   * the voltage that falls.
   *
   * @param path a text file of at most 256 MB and five million samples
   * @return the discharges in the order of time, without ids; at least one. Those of less than half
   *     the charge of the largest are left out
   * @throws ColumnException where the file is none, a column is missing or has no unit, a cell is
   *     no number, the time goes back, or nothing is discharged
   */
  public static List<Curve> read(Path path) throws ColumnException {
    ColumnFile file = ColumnFile.of(path);
    LogReader.Log log = LogReader.read(file);
    if (log.samples().size() < 2) {
      throw file.wrong("the log has " + log.samples().size() + " samples, too few for a discharge");
    }
    List<LogDischarge> discharges = LogDischarge.of(log.samples());
    if (discharges.isEmpty()) {
      throw file.wrong(
          "the log holds no discharge: nowhere does the voltage fall while a current flows; check"
              + " which columns are current and voltage");
    }
    if (discharges.size() > MOST_CURVES) {
      throw file.wrong(
          "the log holds " + discharges.size() + " discharges; cut it to those to be kept");
    }
    String sha256 = file.sha256();
    List<Curve> curves = new ArrayList<>();
    for (LogDischarge discharge : discharges) {
      String label = discharges.size() == 1 ? file.stem() : file.stem() + " " + (curves.size() + 1);
      curves.add(curve(discharge, log, label, file.name(), sha256));
    }
    return curves;
  }

  private static Curve curve(
      LogDischarge discharge, LogReader.Log log, String label, String name, String sha256) {
    double[] voltage = discharge.voltage();
    double duration = discharge.total() / mean(discharge.load()) * SECONDS_PER_HOUR;
    double errorX = discharge.edge() + log.currentStep() / 2 * duration / SECONDS_PER_HOUR;
    double errorY = log.voltageStep() / 2;
    double toleranceX = Math.max(THINNING * errorX, FINEST_CHARGE * discharge.total());
    double toleranceY = Math.max(THINNING * errorY, FINEST_VOLTAGE);
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < voltage.length; i++) {
      points.add(new double[] {discharge.charge()[i], voltage[i]});
    }
    Thinning.Thinned thinned = Thinning.of(points, toleranceX, toleranceY, 1);
    double scale = thinned.off() / THINNING;
    List<String> doubts = new ArrayList<>();
    Conditions conditions = conditions(discharge, doubts);
    String note =
        String.format(
            Locale.ROOT,
            "current integrated over time; %d samples, of which %d are kept; what the instrument"
                + " itself is off by is not known",
            voltage.length,
            thinned.points().size());
    return new Curve(
        null,
        "discharge",
        label,
        conditions,
        new Curve.Axis("capacity", "A.h", List.of()),
        new Curve.Axis("voltage", "V", List.of()),
        thinned.points().stream().map(p -> List.of(p[0], p[1])).toList(),
        new Curve.Uncertainty(
            Math.max(errorX, scale * toleranceX), Math.max(errorY, scale * toleranceY)),
        Method.MEASURED,
        Evidence.ofFile(name, sha256, Method.MEASURED, note),
        doubts.isEmpty() ? Standing.READ : Standing.UNSURE,
        doubts);
  }

  private static Conditions conditions(LogDischarge discharge, List<String> doubts) {
    double[] voltage = discharge.voltage();
    Conditions conditions =
        Conditions.NONE.with(
            Conditions.CUTOFF_VOLTAGE,
            Math.round(voltage[voltage.length - 1] * HUNDREDTHS) / HUNDREDTHS);
    double load = discharge.constantLoad();
    if (Double.isNaN(load)) {
      doubts.add("The current varies by more than 2 %, so that no one current can be named.");
    } else {
      conditions =
          conditions.with(
              Conditions.DISCHARGE_CURRENT, Math.round(load * CURRENT_DIGITS) / CURRENT_DIGITS);
    }
    return Double.isNaN(discharge.ambient())
        ? conditions
        : conditions.with(
            Conditions.TEMPERATURE, Math.round(discharge.ambient() * TENTHS) / TENTHS);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
