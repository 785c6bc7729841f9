package commonsheet.score;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** How a read curve and a curve of the truth agree. */
record CurveAgreement(
    CurveTruth expected, Curve read, List<Difference> differences, double distance) {
  /** The share of the samples that must lie on the curve; of two or three that is all. */
  private static final double SHARE = 0.9;

  /**
   * Compares a pair.
   *
   * @param own the conditions that tell the expected curve from the others of its chart: the read
   *     curve must have one of them ("2C (5.2A)" is told by either); none that the chart states may
   *     differ
   */
  static CurveAgreement of(ChartTruth chart, CurveTruth expected, Conditions own, Curve read) {
    List<Difference> differences = new ArrayList<>();
    text(differences, "kind", chart.kind(), read.kind());
    axis(differences, "x", expected.x(), read.x());
    axis(differences, "y", expected.y(), read.y());
    int axes = (int) differences.stream().filter(d -> d.in().contains(".")).count();
    boolean told =
        own.values().keySet().stream().anyMatch(name -> read.conditions().get(name) != null);
    expected
        .conditions()
        .values()
        .forEach(
            (name, value) -> {
              boolean needed = !told && own.get(name) != null;
              condition(differences, name, value, read.conditions().get(name), needed);
            });
    double off = axes == 0 ? samples(differences, expected, read) : 1;
    // Axes weigh most, then a point that is off, then a condition; then the nearer curve.
    double distance = Math.min(1, off);
    for (Difference difference : differences) {
      distance += difference.in().contains("condition") ? 1 : difference.in().contains(".") ? 6 : 3;
    }
    return new CurveAgreement(expected, read, List.copyOf(differences), distance);
  }

  boolean right() {
    return differences.isEmpty();
  }

  private static void axis(
      List<Difference> differences, String name, CurveTruth.Axis expected, Curve.Axis read) {
    text(differences, name + ".quantity", expected.quantity(), read.quantity());
    text(differences, name + ".unit", expected.unit(), read.unit());
  }

  private static void text(List<Difference> differences, String in, String expected, String read) {
    if (!Objects.equals(expected, read)) {
      differences.add(new Difference(in, expected, read));
    }
  }

  private static void condition(
      List<Difference> differences, String name, double expected, Double read, boolean needed) {
    boolean near =
        read == null
            ? !needed
            : Math.abs(read - expected) <= Agreement.RELATIVE * Math.max(Math.abs(expected), 1e-6);
    if (!near) {
      differences.add(
          new Difference(
              "conditions." + name,
              PlainNumber.of(expected, Agreement.DIGITS),
              read == null ? null : PlainNumber.of(read, Agreement.DIGITS)));
    }
  }

  /** Adds a difference where too many samples are off; the mean distance of the samples. */
  private static double samples(List<Difference> differences, CurveTruth expected, Curve read) {
    CurveLine line = new CurveLine(read, expected);
    double sum = 0;
    double worst = 0;
    CurveTruth.Sample far = null;
    int on = 0;
    for (CurveTruth.Sample sample : expected.samples()) {
      double distance = line.distance(sample.x(), sample.y());
      sum += distance;
      if (distance <= sample.tolerance()) {
        on++;
      } else if (distance > worst) {
        worst = distance;
        far = sample;
      }
    }
    if (on < SHARE * expected.samples().size()) {
      differences.add(
          new Difference(
              "points",
              "a curve through "
                  + PlainNumber.of(far.x(), Agreement.DIGITS)
                  + ", "
                  + PlainNumber.of(far.y(), Agreement.DIGITS),
              String.format(Locale.ROOT, "one %.1f %% of the scales away", worst * 100)));
    }
    return sum / expected.samples().size();
  }
}
