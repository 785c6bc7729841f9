package commonsheet.roundtrip;

import commonsheet.record.Curve;
import commonsheet.record.Standing;
import commonsheet.score.ChartScore;
import commonsheet.score.ChartScorer;
import commonsheet.score.CurveOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * How well one drawn chart was read back.
 *
 * @param distances from points spread along the read curves to the true lines, shares of the scales
 * @param sureDistances those of them of curves that stand without doubt
 * @param yErrors the same as distances at equal x, away from steep parts
 * @param within points of the curves whose true error is at most the stated uncertainty
 * @param points all points of the curves
 * @param seconds what opening, finding and reading took
 * @param processorSeconds the processor time of it, all threads
 * @param failure why nothing could be read at all, or null
 */
record ChartResult(
    DrawnChart chart,
    ChartScore score,
    List<Integer> overrun,
    double[] distances,
    double[] sureDistances,
    double[] yErrors,
    int within,
    int points,
    double seconds,
    double processorSeconds,
    String failure) {
  /** Points along a read curve that are measured. */
  private static final int ALONG = 200;

  /** The share of a read curve that must lie on its line, or it runs on where there is no curve. */
  private static final double SHARE = 0.9;

  static ChartResult of(
      DrawnChart chart,
      List<Curve> curves,
      double seconds,
      double processorSeconds,
      String failure) {
    ChartScore score = ChartScorer.score(chart.name(), List.of(chart.truth()), curves);
    List<CurveOutcome> outcomes = score.charts().get(0).curves();
    List<Integer> overrun = new ArrayList<>();
    DoubleStream.Builder distances = DoubleStream.builder();
    DoubleStream.Builder sure = DoubleStream.builder();
    DoubleStream.Builder yErrors = DoubleStream.builder();
    int within = 0;
    int points = 0;
    for (int i = 0; i < outcomes.size(); i++) {
      CurveOutcome outcome = outcomes.get(i);
      if (!outcome.axesRight() || outcome.read().points().size() < 2) {
        continue;
      }
      TrueLine own = chart.lines().get(i);
      List<double[]> along = own.through(outcome.read().points()).spread(ALONG);
      double tolerance = outcome.expected().samples().get(0).tolerance();
      long on = along.stream().filter(p -> own.distance(p[0], p[1]) <= tolerance).count();
      if (outcome.kind() == CurveOutcome.Kind.RIGHT && on < SHARE * ALONG) {
        overrun.add(i);
      }
      // A wrong name is no error of the points: they are held against the line they follow.
      TrueLine followed = nearest(chart, own, along);
      for (double[] p : along) {
        double distance = followed.distance(p[0], p[1]);
        distances.add(distance);
        if (outcome.read().standing() != Standing.UNSURE) {
          sure.add(distance);
        }
        double error = followed.errorAt(p[0], p[1]);
        if (!Double.isNaN(error)) {
          yErrors.add(error);
        }
      }
      Curve.Uncertainty half = outcome.read().uncertainty();
      for (List<Double> p : outcome.read().points()) {
        points++;
        if (followed.within(p.get(0), p.get(1), half.x(), half.y())) {
          within++;
        }
      }
    }
    return new ChartResult(
        chart,
        score,
        List.copyOf(overrun),
        distances.build().toArray(),
        sure.build().toArray(),
        yErrors.build().toArray(),
        within,
        points,
        seconds,
        processorSeconds,
        failure);
  }

  private static TrueLine nearest(DrawnChart chart, TrueLine own, List<double[]> along) {
    TrueLine best = own;
    double least = Double.POSITIVE_INFINITY;
    for (TrueLine line : chart.lines()) {
      if (line.sameScales(own)) {
        double sum =
            along.stream().mapToDouble(p -> Math.min(0.05, line.distance(p[0], p[1]))).sum();
        if (sum < least) {
          least = sum;
          best = line;
        }
      }
    }
    return best;
  }

  boolean found() {
    return score.charts().get(0).found();
  }

  boolean whole() {
    return score.charts().get(0).whole() && overrun.isEmpty() && score.spurious().isEmpty();
  }

  /** Curves that are found, followed and named rightly. */
  int right() {
    return score.tally().right() - overrun.size();
  }

  /** Those of them that stand without doubt. */
  int sure() {
    List<CurveOutcome> outcomes = score.charts().get(0).curves();
    int sure = 0;
    for (int i = 0; i < outcomes.size(); i++) {
      if (outcomes.get(i).kind() == CurveOutcome.Kind.RIGHT
          && !overrun.contains(i)
          && outcomes.get(i).read().standing() != Standing.UNSURE) {
        sure++;
      }
    }
    return sure;
  }

  /** Wrong, running on or spurious without saying so. */
  int silent() {
    List<CurveOutcome> outcomes = score.charts().get(0).curves();
    long runningOn =
        overrun.stream().filter(i -> outcomes.get(i).read().standing() != Standing.UNSURE).count();
    return score.tally().silent() + (int) runningOn;
  }

  /** One line for each thing that is not right. */
  List<String> faults() {
    if (failure != null) {
      return List.of(failure);
    }
    if (!found()) {
      return List.of("not found");
    }
    List<String> faults = new ArrayList<>();
    List<CurveOutcome> outcomes = score.charts().get(0).curves();
    for (int i = 0; i < outcomes.size(); i++) {
      CurveOutcome outcome = outcomes.get(i);
      if (outcome.kind() != CurveOutcome.Kind.RIGHT) {
        faults.add(fault(outcome));
      } else if (overrun.contains(i)) {
        faults.add("runs on where there is no curve: " + outcome.expected().label());
      }
    }
    score.spurious().forEach(curve -> faults.add("of another plot: " + fault(curve)));
    return faults;
  }

  private static String fault(CurveOutcome outcome) {
    String label = outcome.expected() == null ? null : outcome.expected().label();
    String read =
        outcome.read() == null
            ? ""
            : Stream.of(
                    "read as " + outcome.read().label(),
                    outcome.read().standing().label(),
                    outcome.read().doubts().isEmpty() ? "" : outcome.read().doubts().toString())
                .filter(s -> !s.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    return outcome.kind().label()
        + (label == null ? "" : " " + label)
        + (outcome.differences().isEmpty() ? "" : ": " + outcome.differences())
        + (read.isEmpty() ? "" : " (" + read + ")");
  }
}
