package commonsheet.compare.log;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a log without a gap.
 *
 * @param first index of its first sample
 * @param last index of its last sample
 */
record Run(CurrentSamples samples, int first, int last) {
  /** A pause of so many usual steps between samples is a gap: the logger was off. */
  private static final double GAP_STEPS = 10;

  /** Shorter pauses are no gap in s: loggers that write on change alone make such. */
  private static final double LEAST_GAP = 10;

  private static final double SECONDS_PER_HOUR = 3600;

  /** The parts of a log between its gaps; those of one sample tell nothing and are left out. */
  static List<Run> of(CurrentSamples samples) {
    double longest = Math.max(LEAST_GAP, GAP_STEPS * samples.middleStep());
    List<Run> runs = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= samples.size(); i++) {
      if (i == samples.size() || samples.time(i) - samples.time(i - 1) > longest) {
        if (samples.time(i - 1) > samples.time(first)) {
          runs.add(new Run(samples, first, i - 1));
        }
        first = i;
      }
    }
    return runs;
  }

  double start() {
    return samples.time(first);
  }

  double end() {
    return samples.time(last);
  }

  /** In s. */
  double duration() {
    return end() - start();
  }

  /** A place that moves along the run, only forward. */
  Cursor cursor() {
    return new Cursor(this);
  }

  /** Reads current and charge of a run at ascending times. */
  static final class Cursor {
    private final Run run;
    private int at;
    private double before;

    private Cursor(Run run) {
      this.run = run;
      this.at = run.first();
    }

    /** The current at a time within the run and not before the one asked last, in A. */
    double current(double time) {
      advance(time);
      CurrentSamples samples = run.samples();
      double length = samples.time(at + 1) - samples.time(at);
      double share = length == 0 ? 0 : (time - samples.time(at)) / length;
      return samples.current(at) + share * (samples.current(at + 1) - samples.current(at));
    }

    /** The charge from the start of the run to such a time, in A.h. */
    double charge(double time) {
      double there = current(time);
      CurrentSamples samples = run.samples();
      double seconds = time - samples.time(at);
      return before + seconds * (samples.current(at) + there) / 2 / SECONDS_PER_HOUR;
    }

    private void advance(double time) {
      CurrentSamples samples = run.samples();
      while (at + 1 < run.last() && samples.time(at + 1) <= time) {
        double seconds = samples.time(at + 1) - samples.time(at);
        before += seconds * (samples.current(at) + samples.current(at + 1)) / 2 / SECONDS_PER_HOUR;
        at++;
      }
    }
  }
}
