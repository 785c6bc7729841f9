package commonsheet.export;

import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;

/** A statement in a few words for people, without the unit that its row's title gives. */
final class StatementText {
  /** Follows a number that the tool is unsure of. */
  static final String UNSURE = " ?";

  private StatementText() {}

  /** Such as {@code 2.5 ? (0.2 C discharge, to 2.5 V)} or {@code max. 25 (1 kHz)}. */
  static String of(Column column, Statement statement) {
    StringBuilder text = new StringBuilder();
    Statistic statistic = column.unimplied(statement);
    if (statistic != null) {
      text.append(abbreviation(statistic)).append(' ');
    }
    text.append(
        statement.value() == null
            ? range(statement.low(), statement.high())
            : Printed.shown(statement.value()) + tolerance(statement));
    if (statement.standing() == Standing.UNSURE) {
      text.append(UNSURE);
    }
    if (!statement.conditions().isEmpty()) {
      text.append(" (").append(ConditionText.of(statement.conditions())).append(')');
    }
    return text.toString();
  }

  /** Such as {@code -20 to 60}; with one bound only, {@code from -20} or {@code up to 60}. */
  static String range(Double low, Double high) {
    if (low == null) {
      return high == null ? "" : "up to " + Printed.shown(high);
    }
    return high == null
        ? "from " + Printed.shown(low)
        : Printed.shown(low) + " to " + Printed.shown(high);
  }

  private static String abbreviation(Statistic statistic) {
    return switch (statistic) {
      case MINIMUM -> "min.";
      case MAXIMUM -> "max.";
      case TYPICAL -> "typ.";
      case NOMINAL, RATED, STANDARD -> statistic.label();
    };
  }

  /** As printed on sheets: {@code ±1}, {@code +0/-0.7}; where one side is open, the other bound. */
  private static String tolerance(Statement statement) {
    Double low = statement.low();
    Double high = statement.high();
    if (low == null || high == null) {
      return low == null && high == null ? "" : ", " + range(low, high);
    }
    String above = Printed.distance(statement.value(), high);
    String below = Printed.distance(low, statement.value());
    return above.equals(below) ? " ±" + above : " +" + above + "/-" + below;
  }
}
