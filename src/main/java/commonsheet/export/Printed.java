package commonsheet.export;

import commonsheet.quantity.PlainNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Printed words and numbers, made fit for one line. */
public final class Printed {
  /** Enough to give back every number a record holds, without the noise of binary ones. */
  private static final int DIGITS = 8;

  /** Significant digits for people; digits before the decimal point are never rounded away. */
  private static final int SHOWN = 5;

  private Printed() {}

  /**
   * The text without control characters and without characters that turn the direction of writing,
   * since it comes from files of unknown origin; white space collapsed; null as empty.
   */
  public static String clean(String text) {
    return text == null
        ? ""
        : text.replaceAll("[\\p{Cntrl}\\s\\u0080-\\u009F\\u2028\\u2029]+", " ")
            .replaceAll("[\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]", "")
            .strip();
  }

  /** The shortest plain notation to 8 digits, such as {@code 2.5} or {@code -20}. */
  public static String number(double value) {
    return PlainNumber.of(value, DIGITS);
  }

  /** The same for people, to 5 digits, such as {@code 0.33333}. */
  public static String shown(double value) {
    return shown(exact(value));
  }

  /**
   * How far {@code to} lies above {@code from}, for people, without the noise of binary numbers.
   */
  static String distance(double from, double to) {
    return shown(exact(to).subtract(exact(from)));
  }

  private static BigDecimal exact(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(DIGITS));
  }

  private static String shown(BigDecimal number) {
    int beforePoint = number.precision() - number.scale();
    return PlainNumber.of(
        number.setScale(Math.max(0, SHOWN - beforePoint), RoundingMode.HALF_EVEN));
  }
}
