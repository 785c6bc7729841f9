package commonsheet.chart.points;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One discharge within a log: samples under load, one after the other, with pauses left out.
 *
 * @param charge given until each sample, in A.h, from 0
 * @param voltage of each sample, in V
 * @param load of each sample, in A, positive
 * @param ambient mean temperature of the surroundings in °C; not a number where not logged
 * @param edge charge that can have flowed before the first sample, in A.h
 */
record LogDischarge(double[] charge, double[] voltage, double[] load, double ambient, double edge) {
  /** Below this share of the strongest current the cell counts as resting. */
  private static final double REST = 0.01;

  /** A discharge of less charge than this share of the largest is a pulse or an interruption. */
  private static final double WORTH = 0.5;

  private static final double SECONDS_PER_HOUR = 3600;

  /** How far the load may be from its middle value and still count as one current. */
  private static final double CONSTANT = 0.02;

  /** Share of the samples that have to be so, since loads take a moment to settle. */
  private static final double MOSTLY = 0.95;

  /** The samples of one direction of the current, first and last included. */
  private record Run(int first, int last) {}

  /** The discharges of a log, in the order of time; which sign they have is told by the voltage. */
  static List<LogDischarge> of(LogSamples samples) {
    double strongest = 0;
    for (int i = 0; i < samples.size(); i++) {
      strongest = Math.max(strongest, Math.abs(samples.current(i)));
    }
    List<LogDischarge> discharges = new ArrayList<>();
    for (Run run : runs(samples, REST * strongest)) {
      if (samples.voltage(run.last()) < samples.voltage(run.first())) {
        discharges.add(discharge(samples, run, REST * strongest));
      }
    }
    double largest = discharges.stream().mapToDouble(LogDischarge::total).max().orElse(0);
    return discharges.stream().filter(d -> d.total() > 0 && d.total() >= WORTH * largest).toList();
  }

  /** The charge given in all, in A.h. */
  double total() {
    return charge[charge.length - 1];
  }

  /** The one current of the discharge in A; not a number where it varies. */
  double constantLoad() {
    double[] sorted = load.clone();
    Arrays.sort(sorted);
    double middle = sorted[sorted.length / 2];
    double sum = 0;
    int near = 0;
    for (double each : load) {
      if (Math.abs(each - middle) <= CONSTANT * middle) {
        sum += each;
        near++;
      }
    }
    return near >= MOSTLY * load.length ? sum / near : Double.NaN;
  }

  private static List<Run> runs(LogSamples samples, double rest) {
    List<Run> runs = new ArrayList<>();
    int first = -1;
    int last = -1;
    for (int i = 0; i < samples.size(); i++) {
      double current = samples.current(i);
      if (Math.abs(current) <= rest) {
        continue;
      }
      if (first >= 0 && current * samples.current(first) < 0) {
        runs.add(new Run(first, last));
        first = -1;
      }
      first = first < 0 ? i : first;
      last = i;
    }
    if (first >= 0) {
      runs.add(new Run(first, last));
    }
    return runs;
  }

  private static LogDischarge discharge(LogSamples samples, Run run, double rest) {
    int most = run.last() - run.first() + 1;
    double[] charge = new double[most];
    double[] voltage = new double[most];
    double[] load = new double[most];
    double given = 0;
    double warmth = 0;
    int kept = 0;
    for (int i = run.first(); i <= run.last(); i++) {
      if (i > run.first()) {
        double hours = (samples.time(i) - samples.time(i - 1)) / SECONDS_PER_HOUR;
        given += hours * Math.abs(samples.current(i) + samples.current(i - 1)) / 2;
      }
      if (Math.abs(samples.current(i)) > rest) {
        charge[kept] = given;
        voltage[kept] = samples.voltage(i);
        load[kept] = Math.abs(samples.current(i));
        warmth += samples.ambient(i);
        kept++;
      }
    }
    double edge = hoursBefore(samples, run) * Arrays.stream(load, 0, kept).max().orElse(0);
    return new LogDischarge(
        Arrays.copyOf(charge, kept),
        Arrays.copyOf(voltage, kept),
        Arrays.copyOf(load, kept),
        warmth / kept,
        edge);
  }

  /**
   * For how long the load can have flowed before its first sample: since the sample at rest before
   * it, but no longer than the log's own pace, which is often slower at rest.
   */
  private static double hoursBefore(LogSamples samples, Run run) {
    if (run.first() == 0 || run.first() == run.last()) {
      return 0;
    }
    double[] steps = new double[run.last() - run.first()];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = samples.time(run.first() + i + 1) - samples.time(run.first() + i);
    }
    Arrays.sort(steps);
    double before = samples.time(run.first()) - samples.time(run.first() - 1);
    return Math.min(before, steps[steps.length / 2]) / SECONDS_PER_HOUR;
  }
}
