package commonsheet.discharge;

/**
 * A number with the bounds that the uncertainty of its curve leaves it.
 *
 * @param low not above {@code value}
 * @param high not below {@code value}
 */
public record Estimate(double value, double low, double high) {
  /** A number that may be off by as much to either side. */
  public static Estimate within(double value, double halfWidth) {
    return new Estimate(value, value - halfWidth, value + halfWidth);
  }

  /** The wider of its two sides. */
  public double halfWidth() {
    return Math.max(high - value, value - low);
  }

  /** The half-width as a share of the value. */
  public double relative() {
    return halfWidth() / Math.abs(value);
  }
}
