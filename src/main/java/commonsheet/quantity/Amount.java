package commonsheet.quantity;

import java.math.BigDecimal;

/**
 * One number with the unit directly behind it.
 *
 * @param unit null where none follows
 * @param end the place after number and unit
 */
record Amount(PrintedNumber number, PrintedUnit unit, int end) {
  /** The number as it makes sense in a unit, which may stand further on in the figure. */
  BigDecimal valueIn(PrintedUnit inUnit) {
    return number.settledBy(inUnit == null ? null : inUnit.entry()).value();
  }

  boolean isAmbiguousIn(PrintedUnit inUnit, NumberStyle style) {
    return number.isAmbiguous(inUnit == null ? null : inUnit.entry(), style);
  }
}
