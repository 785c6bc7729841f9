package commonsheet.quantity;

import java.math.BigDecimal;

/**
 * What a figure says in numbers, without the words around it.
 *
 * @param value null for a range
 * @param low with high the ends of a range or tolerance, or both null
 * @param unit the unit of all three, or null
 */
record Extent(
    BigDecimal value,
    BigDecimal low,
    BigDecimal high,
    PrintedUnit unit,
    boolean ambiguous,
    int end) {
  /**
   * C-rates of ten and more are rarer on cell datasheets than temperatures that lost their degree
   * sign.
   */
  private static final BigDecimal LEAST_TEMPERATURE = BigDecimal.TEN;

  private static final BigDecimal WIDEST_RATES = BigDecimal.valueOf(15);

  static Extent of(BigDecimal value, PrintedUnit unit, boolean ambiguous, int end) {
    return new Extent(value, null, null, unit, ambiguous, end);
  }

  Extent withUnit(PrintedUnit newUnit, int newEnd) {
    return new Extent(value, low, high, newUnit, ambiguous, newEnd);
  }

  Extent doubted(boolean doubt) {
    return new Extent(value, low, high, unit, ambiguous || doubt, end);
  }

  /**
   * Decides between rate and temperature for a bare C, and marks what a doubtful spelling leaves
   * open.
   */
  Extent settled() {
    if (unit == null) {
      return this;
    }
    if (unit.loneC()) {
      return looksLikeTemperature() ? withUnit(unit.as("Cel", true), end).doubted(true) : this;
    }
    return doubted(unit.doubtful());
  }

  private boolean looksLikeTemperature() {
    BigDecimal greatest = high == null ? value : high;
    BigDecimal least = low == null ? value : low;
    return least.signum() < 0
        || greatest.signum() == 0
        || greatest.compareTo(LEAST_TEMPERATURE) >= 0
        || greatest.subtract(least).compareTo(WIDEST_RATES) > 0;
  }
}
