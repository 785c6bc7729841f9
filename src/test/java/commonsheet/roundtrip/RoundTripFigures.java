package commonsheet.roundtrip;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * The figures of some charts of the round trip together. Errors are shares of the scales over
 * points spread evenly along all read curves; NaN where there is none.
 *
 * @param rightRate curves found, followed and named rightly, of all curves
 * @param sureRate the same, of those that stand without doubt
 * @param silent wrong and spurious curves that stand without doubt
 * @param sureError95 the 95th percentile over the curves that stand without doubt
 * @param yError95 that of the error in y at equal x, away from steep parts
 * @param withinRate points whose true error is within the stated uncertainty
 * @param seconds mean time of a chart
 * @param processorSeconds mean processor time of a chart, all threads
 */
record RoundTripFigures(
    int found,
    int whole,
    int curves,
    double rightRate,
    double sureRate,
    int wrong,
    int missed,
    int spurious,
    int silent,
    double medianError,
    double error95,
    double sureError95,
    double yError95,
    double withinRate,
    double seconds,
    double processorSeconds) {
  static RoundTripFigures of(List<ChartResult> results) {
    int curves = sum(results, r -> r.chart().lines().size());
    double[] errors = all(results, ChartResult::distances);
    double[] yErrors = all(results, ChartResult::yErrors);
    return new RoundTripFigures(
        (int) results.stream().filter(ChartResult::found).count(),
        (int) results.stream().filter(ChartResult::whole).count(),
        curves,
        (double) sum(results, ChartResult::right) / curves,
        (double) sum(results, ChartResult::sure) / curves,
        sum(results, r -> r.score().tally().wrong() + r.overrun().size()),
        sum(results, r -> r.score().tally().missed()),
        sum(results, r -> r.score().tally().spurious()),
        sum(results, ChartResult::silent),
        percentile(errors, 0.5),
        percentile(errors, 0.95),
        percentile(all(results, ChartResult::sureDistances), 0.95),
        percentile(yErrors, 0.95),
        (double) sum(results, ChartResult::within) / sum(results, ChartResult::points),
        results.stream().mapToDouble(ChartResult::seconds).average().orElse(Double.NaN),
        results.stream().mapToDouble(ChartResult::processorSeconds).average().orElse(Double.NaN));
  }

  private static int sum(List<ChartResult> results, ToIntFunction<ChartResult> count) {
    return results.stream().mapToInt(count).sum();
  }

  private static double[] all(List<ChartResult> results, Function<ChartResult, double[]> values) {
    return results.stream().map(values).flatMapToDouble(Arrays::stream).toArray();
  }

  static double percentile(double[] values, double share) {
    if (values.length == 0) {
      return Double.NaN;
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }
}
