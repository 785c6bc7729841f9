package commonsheet.compare.log;

import commonsheet.compare.Load;
import java.util.List;

/**
 * What a log says a machine draws.
 *
 * @param source the log
 * @param load what was drawn while anything was; its peak is the one sustained for ten seconds
 * @param bins the same as a histogram
 * @param peaks the highest means over windows of 1, 10 and 60 s
 * @param duration under load, in s
 * @param charge drawn in that time, in A.h
 * @param returned what flowed the other way, in A.h
 * @param rest time at rest, in s; not part of the load
 * @param gaps pauses of the logger; not part of the load
 * @param correction of the sensor, or null
 * @param notes for people, a sentence each
 */
public record LoggedLoad(
    Source source,
    Load load,
    List<Bin> bins,
    List<Peak> peaks,
    double duration,
    double charge,
    double returned,
    double rest,
    Gaps gaps,
    Correction correction,
    List<String> notes) {
  public LoggedLoad {
    bins = List.copyOf(bins);
    peaks = List.copyOf(peaks);
    notes = List.copyOf(notes);
  }

  /**
   * The log.
   *
   * @param file name without its folder
   * @param sha256 of the file, lower-case hexadecimal
   * @param timeColumn as it is headed
   * @param currentColumn as it is headed
   * @param samples how many were used
   * @param discharge the sign that a discharge has there
   */
  public record Source(
      String file,
      String sha256,
      String timeColumn,
      String currentColumn,
      int samples,
      LogChoice.Sign discharge) {}

  /**
   * A bin of the histogram.
   *
   * @param low end, in A
   * @param high end, in A
   * @param current mean of what was drawn within, in A
   * @param time share of the time under load
   */
  public record Bin(double low, double high, double current, double time) {}

  /**
   * A sustained peak.
   *
   * @param window in s
   * @param current in A; null where the log is shorter
   */
  public record Peak(double window, Double current) {}

  /**
   * Pauses of the logger.
   *
   * @param count how many
   * @param time of all, in s
   * @param longest in s
   */
  public record Gaps(int count, double time, double longest) {}

  /**
   * What the currents were multiplied by.
   *
   * @param chargedBack what the charger put back, in A.h
   * @param logged what the log says was taken out, in A.h
   * @param factor the one over the other
   */
  public record Correction(double chargedBack, double logged, double factor) {}
}
