package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * What was read before a person corrected it.
 *
 * @param quantity as it was; null where it has not changed
 * @param value null where only a range was read, like {@code low} and {@code high} where no bounds
 * @param evidence where it was read; null where a person pointed to no other place since
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Original(
    String quantity,
    Statistic statistic,
    Double value,
    Double low,
    Double high,
    @JsonInclude(JsonInclude.Include.ALWAYS) Conditions conditions,
    Evidence evidence) {
  public Original {
    conditions = conditions == null ? Conditions.NONE : conditions;
  }

  /** What was read at the place where the statement stands. */
  public Original(
      String quantity,
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      Conditions conditions) {
    this(quantity, statistic, value, low, high, conditions, null);
  }

  /** A statement as it was read. */
  public static Original of(Statement read) {
    return new Original(
        null, read.statistic(), read.value(), read.low(), read.high(), read.conditions());
  }
}
