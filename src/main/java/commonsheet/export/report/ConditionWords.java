package commonsheet.export.report;

import commonsheet.compare.Condition;
import commonsheet.export.Printed;
import commonsheet.quantity.PlainNumber;

/** Small words about conditions, beside those of ShortlistWords. */
final class ConditionWords {
  private static final int DIGITS = 3;

  private ConditionWords() {}

  /** How far a sheet's condition may be from that of the comparison. */
  static String tolerance(Condition condition) {
    return "Conditions count as the same within "
        + Printed.shown(condition.tolerance().voltage())
        + " V and "
        + Printed.shown(condition.tolerance().temperature())
        + " K.";
  }

  /** A margin as a percentage with its sign, such as {@code +20 %}; empty where it is not known. */
  static String margin(Double margin) {
    if (margin == null) {
      return "";
    }
    String percent = PlainNumber.of(Math.rint(margin * 1000) / 10, DIGITS);
    return (margin > 0 ? "+" : "") + percent.replace('-', '−') + "\u00a0%";
  }

  static String amperes(double current) {
    return number(current) + " A";
  }

  static String number(double value) {
    return PlainNumber.of(value, DIGITS);
  }
}
