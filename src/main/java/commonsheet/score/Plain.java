package commonsheet.score;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers in plain notation. */
final class Plain {
  private static final MathContext DIGITS = new MathContext(8);

  private Plain() {}

  /** The shortest plain notation to 8 digits, such as {@code 2.5} or {@code 2592000}. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value, DIGITS);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
