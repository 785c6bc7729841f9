package commonsheet.compare;

import java.util.List;

/**
 * The currents drawn during a discharge, each for a share of the time, and the highest one.
 *
 * @param shares at least one; their shares of the time add up to 1, currents differ and ascend
 * @param peak the highest current that is held for some seconds, in A; not below any of the shares.
 *     It may lie above them all where it is drawn too seldom to count
 */
public record Load(List<Share> shares, double peak) {
  /** How far the shares of the time may be from 1 together; they are often given as percentages. */
  private static final double ROUNDING = 0.005;

  /**
   * A current that is drawn for a share of the time.
   *
   * @param current in A, not negative
   * @param time share of the time, above 0 and up to 1
   */
  public record Share(double current, double time) {
    public Share {
      if (!(current >= 0) || Double.isInfinite(current)) {
        throw new IllegalArgumentException("a load has currents of 0 A or more, not " + current);
      }
      if (!(time > 0 && time <= 1 + ROUNDING)) {
        throw new IllegalArgumentException(
            "a current is drawn for a share of the time above 0 and up to 1, not " + time);
      }
    }
  }

  public Load {
    shares = List.copyOf(shares);
    double time = shares.stream().mapToDouble(Share::time).sum();
    if (Math.abs(time - 1) > ROUNDING) {
      throw new IllegalArgumentException(
          "the shares of the time of a load must add up to 1, and these give " + time);
    }
    double highest = highest(shares);
    if (!(peak >= highest) || Double.isInfinite(peak)) {
      throw new IllegalArgumentException(
          "the peak of a load is at least its highest current, " + highest + " A, not " + peak);
    }
  }

  /** A load whose peak is the highest of its currents. */
  public Load(List<Share> shares) {
    this(shares, highest(shares));
  }

  /** One current all the time, in A. */
  public static Load constant(double current) {
    return new Load(List.of(new Share(current, 1)));
  }

  public boolean isConstant() {
    return shares.size() == 1;
  }

  /** The mean over time, in A. */
  public double averageCurrent() {
    return shares.stream().mapToDouble(s -> s.current() * s.time()).sum();
  }

  /** The same load with a higher peak, in A. */
  public Load withPeak(double higher) {
    return new Load(shares, higher);
  }

  /** The load on each of several that share it evenly. */
  public Load sharedAmong(int parts) {
    return new Load(
        shares.stream().map(s -> new Share(s.current() / parts, s.time())).toList(), peak / parts);
  }

  private static double highest(List<Share> shares) {
    return shares.stream().mapToDouble(Share::current).max().orElse(Double.NaN);
  }
}
