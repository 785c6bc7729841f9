package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * What was read before a person corrected it.
 *
 * @param quantity as it was; null where it has not changed
 * @param value null where only a range was read, like {@code low} and {@code high} where no bounds
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Original(
    String quantity,
    Statistic statistic,
    Double value,
    Double low,
    Double high,
    @JsonInclude(JsonInclude.Include.ALWAYS) Conditions conditions) {
  public Original {
    conditions = conditions == null ? Conditions.NONE : conditions;
  }
}
