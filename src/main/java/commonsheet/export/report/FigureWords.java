package commonsheet.export.report;

import commonsheet.compare.Figure;
import commonsheet.compare.Origin;
import commonsheet.quantity.PlainNumber;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A figure for people, rounded to what its bounds allow. */
final class FigureWords {
  /** Digits of a number whose bounds are not known. */
  private static final int DIGITS = 4;

  /** Digits that a sheet prints at most. */
  private static final int PRINTED = 5;

  private FigureWords() {}

  /** Whether there is a value or a bound. */
  static boolean says(Figure figure) {
    return figure.value() != null || figure.low() != null || figure.high() != null;
  }

  /** Such as {@code 3.81}, {@code at least 3.2}, {@code 3.1 to 3.4} or {@code not known}. */
  static String value(Figure figure) {
    if (figure.value() != null) {
      return number(figure.value(), figure) + (figure.unsure() ? " ?" : "");
    }
    return says(figure) ? bounds(figure) + (figure.unsure() ? " ?" : "") : "not known";
  }

  /** Such as {@code 3.77 to 3.85}; empty where there are no bounds beside a value. */
  static String range(Figure figure) {
    return figure.value() == null ? "" : bounds(figure);
  }

  /** Where it comes from, in one word. */
  static String origin(Figure figure) {
    return figure.origin().label();
  }

  private static String bounds(Figure figure) {
    if (figure.low() == null) {
      return figure.high() == null ? "" : "at most " + number(figure.high(), figure);
    }
    return figure.high() == null
        ? "at least " + number(figure.low(), figure)
        : number(figure.low(), figure) + " to " + number(figure.high(), figure);
  }

  /** How many decimals the figure is shown with. */
  static int decimalsShown(Figure figure) {
    Double any = figure.value() == null ? figure.low() : figure.value();
    String shown = number(any == null ? figure.high() == null ? 0 : figure.high() : any, figure);
    return shown.indexOf('.') < 0 ? 0 : shown.length() - shown.indexOf('.') - 1;
  }

  private static String number(double value, Figure figure) {
    if (figure.origin() == Origin.STATED) {
      return PlainNumber.of(value, PRINTED);
    }
    BigDecimal exact = BigDecimal.valueOf(value).round(new MathContext(10));
    int first = exact.precision() - exact.scale();
    int most = Math.max(0, DIGITS - first);
    BigDecimal rounded = exact.setScale(Math.min(most, decimals(figure)), RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** So many that the half-width of the bounds shows in the last digit; many where it is none. */
  private static int decimals(Figure figure) {
    if (figure.low() == null || figure.high() == null || figure.high() <= figure.low()) {
      return Integer.MAX_VALUE;
    }
    double half = (figure.high() - figure.low()) / 2;
    return Math.max(0, (int) -Math.floor(Math.log10(half)));
  }
}
