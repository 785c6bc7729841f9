package commonsheet.compare;

import java.util.List;

/**
 * The currents drawn during a discharge, each for a share of the time.
 *
 * @param shares at least one; their shares of the time add up to 1, currents differ and ascend
 */
public record Load(List<Share> shares) {
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

  /** In A. */
  public double highestCurrent() {
    return shares.stream().mapToDouble(Share::current).max().orElseThrow();
  }

  /** The load on each of several that share it evenly. */
  public Load sharedAmong(int parts) {
    return new Load(shares.stream().map(s -> new Share(s.current() / parts, s.time())).toList());
  }
}
