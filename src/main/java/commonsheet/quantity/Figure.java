package commonsheet.quantity;

import java.util.Objects;

/**
 * A number with its bound, tolerance or range and its unit as printed in a text. Numbers are in the
 * printed unit.
 *
 * @param start where the figure begins in the text it was found in
 * @param end the first place after it
 * @param text the words from start to end, as printed
 * @param value the number; null where only a range is printed
 * @param low lower end of the range or tolerance as an absolute number, or null ("48.0±1.0 g": 47)
 * @param high upper end likewise; low and high are both present or both null
 * @param bound whether the number is a limit
 * @param qualifier the word tied to this very number, or null; a {@code min} or {@code max} also
 *     sets the bound
 * @param approximate whether the text says so: ≈, about, 约
 * @param unit null where none is printed
 * @param ambiguous whether the text can be read in two ways, such as {@code 4,200 V} or {@code 45C}
 */
public record Figure(
    int start,
    int end,
    String text,
    Double value,
    Double low,
    Double high,
    Bound bound,
    Qualifier qualifier,
    boolean approximate,
    TradeUnit unit,
    boolean ambiguous) {
  public Figure {
    Objects.requireNonNull(text);
    Objects.requireNonNull(bound);
    if ((low == null) != (high == null)) {
      throw new IllegalArgumentException("a figure has both a low and a high end or neither");
    }
    if (value == null && low == null) {
      throw new IllegalArgumentException("a figure has a value or a range");
    }
  }

  /** Whether the figure is a range without a value of its own: "-20 ~ +60 °C". */
  public boolean isRange() {
    return value == null;
  }

  /**
   * This figure with its numbers converted.
   *
   * @param ucumCode the unit wanted, such as {@code A.h}
   * @throws IllegalArgumentException if this figure has no unit or one of another dimension, or the
   *     code is unknown
   */
  public Figure in(String ucumCode) {
    if (unit == null) {
      throw new IllegalArgumentException(
          "\"" + text + "\" has no unit; it cannot be converted to " + ucumCode);
    }
    String from = unit.ucum();
    return new Figure(
        start,
        end,
        text,
        converted(value, from, ucumCode),
        converted(low, from, ucumCode),
        converted(high, from, ucumCode),
        bound,
        qualifier,
        approximate,
        UnitTable.standard().unit(ucumCode),
        ambiguous);
  }

  private static Double converted(Double number, String from, String to) {
    return number == null ? null : Units.convert(number, from, to);
  }
}
