package commonsheet.cli;

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
        + conditions(statement)
        + " — "
        + statement.standing().name().toLowerCase(Locale.ROOT);
  }

  /** Such as {@code capacity minimum 2.5 A.h}. */
  static String inShort(Statement statement) {
    return statement.quantity()
        + (statement.statistic() == null ? "" : " " + statement.statistic().label())
        + " "
        + value(statement)
        + (statement.unit().equals("1") ? "" : " " + statement.unit());
  }

  private static String value(Statement statement) {
    boolean bounded = statement.low() != null || statement.high() != null;
    String bounds =
        bounded ? number(statement.low()) + " to " + number(statement.high()) : "";
    if (statement.value() == null) {
      return bounds;
    }
    return number(statement.value()) + (bounded ? " [" + bounds + "]" : "");
  }

  private static String conditions(Statement statement) {
    return statement.conditions().isEmpty()
        ? ""
        : statement.conditions().values().entrySet().stream()
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
