package commonsheet.chart.axis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fits a scale to numbers at places, outvoting the numbers that do not belong. Every pair of marks
 * proposes a scale, the one most marks agree with wins, and least squares over those settle it.
 */
public final class ScaleFit {
  /** A number at a place along the axis, in points. */
  public record Mark(double at, TickLabel label) {
    public double value() {
      return label.value();
    }
  }

  /**
   * A fitted scale.
   *
   * @param in the marks that agree with it
   * @param out the marks outvoted
   * @param deviation root mean square of what the marks in lie off, in points
   */
  public record Fit(Scale scale, List<Mark> in, List<Mark> out, double deviation) {
    public Fit {
      in = List.copyOf(in);
      out = List.copyOf(out);
    }
  }

  /** A logarithmic scale has to fit so much better than a straight one to be believed. */
  private static final double CLEARLY_BETTER = 0.3;

  private ScaleFit() {}

  /**
   * The best scale through the marks.
   *
   * @param tolerance how far a mark may lie off, in points
   * @param floor least error of the scale, in points
   * @return empty for fewer than two marks, marks of one value, or marks of one place
   */
  public static Optional<Fit> of(List<Mark> marks, double tolerance, double floor) {
    Fit straight = best(marks, false, tolerance, floor);
    Fit logarithmic = best(marks, true, tolerance, floor);
    if (straight == null || logarithmic == null || logarithmic.in().size() < 3) {
      return Optional.ofNullable(straight);
    }
    boolean more = logarithmic.in().size() > straight.in().size();
    boolean closer =
        logarithmic.in().size() == straight.in().size()
            && straight.in().size() > 2
            && logarithmic.deviation() < CLEARLY_BETTER * straight.deviation()
            && straight.deviation() > tolerance / 4;
    return Optional.of(more || closer ? logarithmic : straight);
  }

  private static Fit best(List<Mark> marks, boolean logarithmic, double tolerance, double floor) {
    List<Mark> agreed = List.of();
    double least = Double.MAX_VALUE;
    for (int i = 0; i < marks.size(); i++) {
      for (int j = i + 1; j < marks.size(); j++) {
        Scale scale = through(marks.get(i), marks.get(j), logarithmic);
        if (scale == null) {
          continue;
        }
        List<Mark> in = agreeing(marks, scale, tolerance);
        double off = squares(in, scale);
        if (in.size() > agreed.size() || (in.size() == agreed.size() && off < least)) {
          agreed = in;
          least = off;
        }
      }
    }
    return agreed.isEmpty() ? null : settled(marks, agreed, logarithmic, tolerance, floor);
  }

  private static Scale through(Mark one, Mark other, boolean logarithmic) {
    if (logarithmic && (one.value() <= 0 || other.value() <= 0)) {
      return null;
    }
    double distance = other.at() - one.at();
    double step = straight(other, logarithmic) - straight(one, logarithmic);
    if (Math.abs(distance) < 1 || step == 0) {
      return null;
    }
    double slope = step / distance;
    return new Scale(logarithmic, straight(one, logarithmic) - slope * one.at(), slope, 0);
  }

  private static double straight(Mark mark, boolean logarithmic) {
    return logarithmic ? Math.log10(mark.value()) : mark.value();
  }

  private static List<Mark> agreeing(List<Mark> marks, Scale scale, double tolerance) {
    List<Mark> in = new ArrayList<>();
    for (Mark mark : marks) {
      if (Math.abs(off(mark, scale)) <= tolerance) {
        in.add(mark);
      }
    }
    return in;
  }

  private static double off(Mark mark, Scale scale) {
    return scale.logarithmic() && mark.value() <= 0
        ? Double.MAX_VALUE
        : mark.at() - scale.place(mark.value());
  }

  private static double squares(List<Mark> marks, Scale scale) {
    double sum = 0;
    for (Mark mark : marks) {
      sum += off(mark, scale) * off(mark, scale);
    }
    return sum;
  }

  /** Least squares over the marks agreed on, once more without those that then lie off. */
  private static Fit settled(
      List<Mark> marks, List<Mark> agreed, boolean logarithmic, double tolerance, double floor) {
    Scale scale = leastSquares(agreed, logarithmic);
    List<Mark> in = agreeing(marks, scale, tolerance);
    if (in.size() >= agreed.size()) {
      scale = leastSquares(in, logarithmic);
    } else {
      in = agreed;
    }
    List<Mark> out = new ArrayList<>(marks);
    out.removeAll(in);
    double deviation = Math.sqrt(squares(in, scale) / in.size());
    return new Fit(withError(scale, in, floor), in, out, deviation);
  }

  /** Places on values, since the values are exact and the places are not. */
  private static Scale leastSquares(List<Mark> marks, boolean logarithmic) {
    double meanAt = 0;
    double meanValue = 0;
    for (Mark mark : marks) {
      meanAt += mark.at() / marks.size();
      meanValue += straight(mark, logarithmic) / marks.size();
    }
    double cross = 0;
    double square = 0;
    for (Mark mark : marks) {
      double value = straight(mark, logarithmic) - meanValue;
      cross += value * (mark.at() - meanAt);
      square += value * value;
    }
    double pointsPerValue = cross / square;
    double slope = 1 / pointsPerValue;
    return new Scale(logarithmic, meanValue - slope * meanAt, slope, 0);
  }

  /**
   * Twice the standard error of the line at its outer marks, which covers about 95 % where the
   * marks scatter by chance, and no less than the floor.
   */
  private static Scale withError(Scale scale, List<Mark> in, double floor) {
    double error = floor;
    if (in.size() > 2) {
      double scatter = Math.sqrt(squares(in, scale) / (in.size() - 2));
      double mean = in.stream().mapToDouble(Mark::at).average().orElse(0);
      double spread = 0;
      double reach = 0;
      for (Mark mark : in) {
        spread += (mark.at() - mean) * (mark.at() - mean);
        reach = Math.max(reach, Math.abs(mark.at() - mean));
      }
      error = Math.hypot(floor, 2 * scatter * Math.sqrt(1.0 / in.size() + reach * reach / spread));
    }
    return new Scale(scale.logarithmic(), scale.offset(), scale.slope(), error);
  }
}
