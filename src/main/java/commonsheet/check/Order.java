package commonsheet.check;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * One quantity that may not be above another: against the greatest stated value of the other,
 * whatever its conditions, so that limits for the cold or for a hot cell do no harm.
 */
final class Order extends NamedRule {
  /** Rounding in a sheet's own conversions, as a share. */
  private static final double ROUNDING = 0.005;

  private final String lower;
  private final String upper;
  private final boolean equal;
  private final String advice;

  private Order(JsonNode rule) {
    super(
        rule.get("id").asText(),
        Severity.valueOf(rule.get("severity").asText().toUpperCase(Locale.ROOT)),
        rule.get("source").asText());
    this.lower = rule.get("lower").asText();
    this.upper = rule.get("upper").asText();
    this.equal = rule.get("equal").asBoolean();
    this.advice = rule.get("advice").asText();
  }

  /** Every rule of orders.yaml. */
  static List<CheckRule> all() {
    List<CheckRule> rules = new ArrayList<>();
    CheckData.read("orders.yaml").get("rules").forEach(rule -> rules.add(new Order(rule)));
    return rules;
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    return Readings.of(record, upper).stream()
        .max(Comparator.comparingDouble(s -> Span.of(s).high()))
        .stream()
        .flatMap(
            most ->
                Readings.of(record, lower).stream()
                    .filter(least -> isAbove(least, most))
                    .map(least -> finding(least, most)));
  }

  private boolean isAbove(Statement least, Statement most) {
    double low = Span.of(least).low();
    double high = Span.of(most).high();
    return equal ? low > high * (1 + ROUNDING) : low >= high;
  }

  private Finding finding(Statement least, Statement most) {
    return finding(
        List.of(least.id(), most.id()),
        "The "
            + Wording.name(least)
            + " of "
            + Wording.valueAndPage(least)
            + " is not below the "
            + Wording.name(most)
            + " of "
            + Wording.valueAndPage(most)
            + "; "
            + advice
            + ".");
  }
}
