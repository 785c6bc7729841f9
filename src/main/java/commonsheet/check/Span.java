package commonsheet.check;

import commonsheet.record.Statement;

/**
 * What a statement gives as its value, in its unit.
 *
 * @param low lowest value it allows; the value itself where it gives no tolerance
 * @param middle the value, or the middle of a range
 * @param high highest value it allows
 */
record Span(double low, double middle, double high) {
  static Span of(Statement statement) {
    Double value = statement.value();
    if (statement.low() == null || statement.high() == null) {
      return new Span(value, value, value);
    }
    double middle = value == null ? (statement.low() + statement.high()) / 2 : value;
    return new Span(statement.low(), middle, statement.high());
  }

  /** Whether no value fits both and they are further apart than a share of the larger. */
  boolean contradicts(Span other, double tolerance) {
    boolean overlap = low <= other.high && other.low <= high;
    double larger = Math.max(Math.abs(middle), Math.abs(other.middle));
    return !overlap && Math.abs(middle - other.middle) > tolerance * larger;
  }
}
