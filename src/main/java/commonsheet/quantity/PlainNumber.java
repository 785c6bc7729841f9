package commonsheet.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as people write them: no exponent, no zeros at the end. */
public final class PlainNumber {
  private PlainNumber() {}

  /**
   * The shortest notation of a number, such as {@code 2.5}, {@code -20} or {@code 2592000}.
   *
   * @param value a finite number
   * @param digits how many significant digits are kept; digits before the decimal point are never
   *     rounded away
   * @throws NumberFormatException for a number that is not finite
   */
  public static String of(double value, int digits) {
    BigDecimal exact = BigDecimal.valueOf(value);
    int whole = exact.precision() - exact.scale();
    return of(exact.round(new MathContext(Math.max(digits, whole))));
  }

  /** All digits of a number, in the shortest notation. */
  public static String of(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
