package commonsheet.chart.axis;

import commonsheet.chart.text.ChartText;
import commonsheet.chart.text.UnitText;
import commonsheet.quantity.TradeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as it stands beside an axis.
 *
 * @param value in the printed unit
 * @param unit a unit printed behind it, or null
 */
record TickNumber(double value, TradeUnit unit) {
  /** Sign, digits with marks of thousands and decimals, power of ten, and what stands behind. */
  private static final Pattern SHAPE =
      Pattern.compile("([+-]?)\\s?([0-9][0-9., ]*|[.,][0-9]+)(?:[eE]([+-]?[0-9]{1,2}))?\\s?(\\D*)");

  private static final Pattern POWER = Pattern.compile("10\\s?\\^\\s?([+-]?[0-9]{1,2})");

  /**
   * The number of a text that is nothing but a number, with or without a unit; null for any other.
   *
   * @param decimalComma whether a comma stands before decimals instead of between thousands
   */
  static TickNumber of(String text, boolean decimalComma) {
    String folded = ChartText.folded(text);
    Matcher power = POWER.matcher(folded);
    if (power.matches()) {
      return new TickNumber(Math.pow(10, Integer.parseInt(power.group(1))), null);
    }
    Matcher shape = SHAPE.matcher(folded);
    if (!shape.matches()) {
      return null;
    }
    Double digits = number(shape.group(2).strip(), decimalComma);
    if (digits == null) {
      return null;
    }
    TradeUnit unit = null;
    String behind = shape.group(4).strip();
    if (!behind.isEmpty()) {
      unit = UnitText.of(behind, null);
      if (unit == null || behind.contains("(")) {
        return null;
      }
    }
    double scaled =
        shape.group(3) == null ? digits : digits * Math.pow(10, Integer.parseInt(shape.group(3)));
    return new TickNumber(shape.group(1).equals("-") && scaled != 0 ? -scaled : scaled, unit);
  }

  private static Double number(String digits, boolean decimalComma) {
    String decimal = decimalComma ? "," : ".";
    String thousands = decimalComma ? "." : ",";
    String plain = digits;
    boolean grouped =
        digits.matches("[0-9]{1,3}(" + Pattern.quote(thousands) + "[0-9]{3})+([.,][0-9]+)?")
            || digits.matches("[0-9]{1,3}( [0-9]{3})+([.,][0-9]+)?");
    if (grouped) {
      plain = digits.replace(thousands, "").replace(" ", "");
    }
    plain = plain.replace(decimal, ".");
    return plain.matches("[0-9]*\\.?[0-9]+") ? Double.valueOf(plain) : null;
  }
}
