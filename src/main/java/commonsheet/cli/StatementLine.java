package commonsheet.cli;

import commonsheet.record.Conditions;
import commonsheet.record.Original;
import commonsheet.record.Statement;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.stream.Collectors;

/** A statement on one line, with the names and units that records use. */
final class StatementLine {
  /** More digits than sheets print, fewer than binary numbers make up. */
  private static final MathContext DIGITS = new MathContext(8);

  private StatementLine() {}

  /** Such as {@code p. 3 capacity minimum 2.5 A.h (dischargeRate 0.2) — read}. */
  static String of(Statement statement) {
    Integer page = statement.evidence().page();
    return (page == null ? "" : "p. " + page + " ")
        + inShort(statement)
        + conditions(statement.conditions())
        + " — "
        + statement.standing().name().toLowerCase(Locale.ROOT);
  }

  /** Such as {@code capacity minimum 2.5 A.h}. */
  static String inShort(Statement statement) {
    return statement.quantity()
        + (statement.statistic() == null ? "" : " " + statement.statistic().label())
        + " "
        + value(statement.value(), statement.low(), statement.high())
        + (statement.unit().equals("1") ? "" : " " + statement.unit());
  }

  /** What was read before a person corrected it, such as {@code minimum 25 A.h}. */
  static String original(Statement statement) {
    Original before = statement.original();
    return (before.quantity() == null ? "" : before.quantity() + " ")
        + (before.statistic() == null ? "" : before.statistic().label() + " ")
        + value(before.value(), before.low(), before.high())
        + (statement.unit().equals("1") ? "" : " " + statement.unit())
        + conditions(before.conditions());
  }

  private static String value(Double value, Double low, Double high) {
    boolean bounded = low != null || high != null;
    String bounds = bounded ? number(low) + " to " + number(high) : "";
    if (value == null) {
      return bounds;
    }
    return number(value) + (bounded ? " [" + bounds + "]" : "");
  }

  /** Such as {@code (dischargeRate 0.2)}, with the space before it; nothing for none. */
  static String conditions(Conditions conditions) {
    return conditions.isEmpty()
        ? ""
        : conditions.values().entrySet().stream()
            .map(condition -> condition.getKey() + " " + number(condition.getValue()))
            .collect(Collectors.joining(", ", " (", ")"));
  }

  private static String number(Double value) {
    if (value == null) {
      return "…";
    }
    BigDecimal number = new BigDecimal(value, DIGITS);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
