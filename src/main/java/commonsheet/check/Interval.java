package commonsheet.check;

/** Numbers from a lowest to a highest one, ends included. */
record Interval(double low, double high) {
  boolean holds(double number) {
    return low <= number && number <= high;
  }

  /** Whether some number is in both. */
  boolean meets(Interval other) {
    return low <= other.high && other.low <= high;
  }

  /** Wider by a share of each end. */
  Interval widened(double share) {
    return new Interval(low * (1 - share), high * (1 + share));
  }

  /** Products of the numbers of both; for positive ones. */
  Interval times(Interval other) {
    return new Interval(low * other.low, high * other.high);
  }

  /** Quotients of the numbers of both; for positive ones. */
  Interval over(Interval other) {
    return new Interval(low / other.high, high / other.low);
  }

  Interval times(double factor) {
    return new Interval(low * factor, high * factor);
  }

  /** Such as {@code 20 to 320}, or one number where both ends print alike. */
  String text(int digits) {
    String from = commonsheet.quantity.PlainNumber.of(low, digits);
    String to = commonsheet.quantity.PlainNumber.of(high, digits);
    return from.equals(to) ? from : from + " to " + to;
  }
}
