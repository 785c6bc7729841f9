package commonsheet.export;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.Function;

/** A value with its bounds and unit in a few characters, as the trade prints it. */
public final class AmountText {
  /** Enough to give back every number a record holds, without the noise of binary ones. */
  private static final MathContext DIGITS = new MathContext(8);

  private AmountText() {}

  /**
   * For people to read, to 5 digits: {@code 3.35 Ah}, {@code 45 ±1 g}, {@code -20 to 60 °C}.
   *
   * @param value in the unit, or null
   * @param low bound in the unit, or null, like {@code high}
   * @param unit UCUM code; {@code 1} for none
   */
  public static String shown(Double value, Double low, Double high, String unit) {
    return of(value, low, high, unit, Printed::shown);
  }

  /** The same without any rounding, so that whoever types it anew says the same. */
  public static String exact(Double value, Double low, Double high, String unit) {
    return of(value, low, high, unit, Printed::number);
  }

  private static String of(
      Double value, Double low, Double high, String unit, Function<Double, String> number) {
    String behind = unit.equals("1") ? "" : " " + MeasureHead.unit(unit);
    if (value == null) {
      return range(low, high, number) + behind;
    }
    if (low == null || high == null) {
      return number.apply(value)
          + (low == null && high == null ? "" : ", " + range(low, high, number))
          + behind;
    }
    if (value < low || value > high) {
      return number.apply(value) + ", " + range(low, high, number) + behind;
    }
    return number.apply(value)
        // "1 mV ±5 mV": without its own unit the 1 could be read as volts.
        + (value > 0 && low < 0 ? behind : "")
        + tolerance(number.apply(distance(value, high)), number.apply(distance(low, value)))
        + behind;
  }

  private static String tolerance(String above, String below) {
    return above.equals(below) ? " ±" + above : " +" + above + "/-" + below;
  }

  private static String range(Double low, Double high, Function<Double, String> number) {
    if (low == null) {
      return high == null ? "" : "up to " + number.apply(high);
    }
    return high == null
        ? "from " + number.apply(low)
        : number.apply(low) + " to " + number.apply(high);
  }

  private static double distance(double from, double to) {
    return exact(to).subtract(exact(from)).doubleValue();
  }

  private static BigDecimal exact(double number) {
    return BigDecimal.valueOf(number).round(DIGITS);
  }
}
