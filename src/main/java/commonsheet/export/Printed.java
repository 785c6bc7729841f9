package commonsheet.export;

import java.math.BigDecimal;
import java.math.MathContext;

/** Printed words and numbers, made fit for one line. */
final class Printed {
  private static final MathContext DIGITS = new MathContext(8);

  private Printed() {}

  /**
   * The text without control characters and without characters that turn the direction of writing,
   * since it comes from files of unknown origin; white space collapsed; null as empty.
   */
  static String clean(String text) {
    return text == null
        ? ""
        : text.replaceAll("[\\p{Cntrl}\\s\\u0080-\\u009F\\u2028\\u2029]+", " ")
            .replaceAll("[\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]", "")
            .strip();
  }

  /** The shortest plain notation to 8 digits, such as {@code 2.5} or {@code -20}. */
  static String number(double value) {
    BigDecimal rounded = new BigDecimal(value, DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
