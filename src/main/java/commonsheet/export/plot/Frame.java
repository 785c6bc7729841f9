package commonsheet.export.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * From numbers to places in the picture.
 *
 * @param left of the plot area, in user units of the SVG, like the other three
 * @param top of the plot area
 */
record Frame(Scale x, Scale y, double left, double top, double width, double height) {
  double atX(double value) {
    return left + width * x.share(value);
  }

  double atY(double value) {
    return top + height * (1 - y.share(value));
  }

  double right() {
    return left + width;
  }

  double bottom() {
    return top + height;
  }

  /** A length or place with one decimal, which is finer than any screen. */
  static String number(double length) {
    return BigDecimal.valueOf(length)
        .setScale(1, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
