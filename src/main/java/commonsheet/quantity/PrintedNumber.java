package commonsheet.quantity;

import java.math.BigDecimal;

/**
 * A number as it stands in a text.
 *
 * @param value by the style of the sheet
 * @param other what it is in the other style, or null where both agree: 2,550 is 2550 or 2.55
 * @param end the place after it
 */
record PrintedNumber(BigDecimal value, BigDecimal other, int end) {
  PrintedNumber negated() {
    return new PrintedNumber(value.negate(), other == null ? null : other.negate(), end);
  }

  /**
   * This number as it makes sense in a unit: the other reading where only that one is usual.
   *
   * @param unit null where none is printed
   */
  PrintedNumber settledBy(UnitTable.Entry unit) {
    if (other == null || unit == null || unit.isUsual(value) || !unit.isUsual(other)) {
      return this;
    }
    return new PrintedNumber(other, value, end);
  }

  /**
   * Whether the unit leaves open which of the two readings is meant, or speaks against the style. A
   * decimal by the style is doubted only where its unit makes it unlikely; thousands are believed
   * only where it settles them.
   */
  boolean isAmbiguous(UnitTable.Entry unit, NumberStyle style) {
    if (other == null) {
      return false;
    }
    boolean decimal = value.scale() > 0;
    if (unit == null) {
      return !decimal && style == NumberStyle.DECIMAL_COMMA;
    }
    return decimal
        ? !unit.isUsual(value) && unit.isUsual(other)
        : unit.isUsual(other) || !unit.isUsual(value);
  }
}
