package commonsheet.compare.log;

import java.util.List;

/**
 * The highest mean of the current over any window of a length. The current being straight between
 * samples, the mean over a moving window is highest where the window's ends stand at samples or
 * have the same current.
 */
final class SustainedPeak {
  private static final double SECONDS_PER_HOUR = 3600;

  private final Run run;
  private final double window;
  private final Run.Cursor rear;
  private final Run.Cursor front;
  private double highest = Double.NEGATIVE_INFINITY;

  private SustainedPeak(Run run, double window) {
    this.run = run;
    this.window = window;
    this.rear = run.cursor();
    this.front = run.cursor();
  }

  /**
   * In A, over all runs.
   *
   * @param window in s
   * @return null where no run is as long
   */
  static Double of(List<Run> runs, double window) {
    double highest = Double.NEGATIVE_INFINITY;
    for (Run run : runs) {
      if (run.duration() >= window) {
        highest = Math.max(highest, new SustainedPeak(run, window).highest());
      }
    }
    return Double.isInfinite(highest) ? null : Double.valueOf(highest);
  }

  /** Moves the window from one start to the next at which either of its ends stands at a sample. */
  private double highest() {
    CurrentSamples samples = run.samples();
    double end = run.end() - window;
    int byRear = run.first();
    int byFront = run.first();
    double start = run.start();
    double rising = look(start);
    while (start < end) {
      while (byRear <= run.last() && samples.time(byRear) <= start) {
        byRear++;
      }
      while (byFront <= run.last() && samples.time(byFront) - window <= start) {
        byFront++;
      }
      double next = end;
      next = byRear <= run.last() ? Math.min(next, samples.time(byRear)) : next;
      next = byFront <= run.last() ? Math.min(next, samples.time(byFront) - window) : next;
      double after = difference(samples, next, byRear, byFront);
      if (rising > 0 && after < 0) {
        look(start + (next - start) * rising / (rising - after));
      }
      rising = look(next);
      start = next;
    }
    return highest;
  }

  /** How much more flows at the front of the window than at its rear, just before a start. */
  private double difference(CurrentSamples samples, double start, int byRear, int byFront) {
    return at(samples, start + window, byFront) - at(samples, start, byRear);
  }

  /** On the straight line that ends at a sample. */
  private double at(CurrentSamples samples, double time, int sample) {
    int end = Math.min(sample, run.last());
    int begin = Math.max(run.first(), end - 1);
    double length = samples.time(end) - samples.time(begin);
    double share = length == 0 ? 1 : (time - samples.time(begin)) / length;
    return samples.current(begin) + share * (samples.current(end) - samples.current(begin));
  }

  /** Counts the mean from a start on, and tells how fast it rises there. */
  private double look(double start) {
    double stop = Math.min(start + window, run.end());
    double charge = front.charge(stop) - rear.charge(start);
    highest = Math.max(highest, charge * SECONDS_PER_HOUR / window);
    return front.current(stop) - rear.current(start);
  }
}
