package commonsheet.export.report;

import commonsheet.quantity.PlainNumber;

/** Numbers for programs: plain notation, and more digits than any figure is known to. */
final class Numbers {
  /** Points of curves have six; computed figures are known to four at best. */
  static final int DIGITS = 10;

  private Numbers() {}

  /** Such as {@code 3.8123}; null stays null. */
  static String text(Double value) {
    return value == null ? null : PlainNumber.of(value, DIGITS);
  }
}
