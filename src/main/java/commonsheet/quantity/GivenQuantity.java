package commonsheet.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A quantity that a person gives: a number, and its unit where it is not the usual one. */
public final class GivenQuantity {
  private static final Pattern FORM =
      Pattern.compile("([+-]?(?:\\d+(?:[.,]\\d+)?|[.,]\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)");

  /** 10,500 can be ten thousand five hundred as well as ten and a half. */
  private static final Pattern TWO_WAYS = Pattern.compile("[+-]?\\d+,\\d{3}(?!\\d).*");

  private GivenQuantity() {}

  /**
   * The number in a unit.
   *
   * @param text such as {@code 10}, {@code 10A} or {@code 9500 mA}
   * @param ucum code of the unit wanted, which is also that of a bare number
   * @throws IllegalArgumentException where the text is none; the message says why, and is the
   *     second half of a sentence
   */
  public static double parse(String text, String ucum) {
    String plain = text.strip().replace('−', '-');
    Matcher parts = FORM.matcher(plain);
    if (!parts.matches()) {
      throw new IllegalArgumentException("\"" + text + "\" is no number with a unit");
    }
    if (TWO_WAYS.matcher(plain).matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" can be read in two ways; write it with a decimal point or without one");
    }
    double number = Double.parseDouble(parts.group(1).replace(',', '.'));
    if (Double.isInfinite(number)) {
      throw new IllegalArgumentException("\"" + text + "\" is beyond all measure");
    }
    String unit = parts.group(2).strip();
    return unit.isEmpty() ? number : converted(number, text, unit, ucum);
  }

  private static double converted(double number, String text, String unit, String ucum) {
    String code = Units.code(unit).orElse("");
    // Without its degree sign a temperature looks like a rate.
    String found = code.equals("h-1") && ucum.equals("Cel") ? "Cel" : code;
    try {
      return Units.convert(number, found, ucum);
    } catch (IllegalArgumentException other) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not in a unit that can be converted to " + ucum, other);
    }
  }
}
