package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * One value of one quantity under stated conditions, with its evidence.
 *
 * @param id unique within the record, {@code s1}, {@code s2}, …
 * @param quantity a name of the quantity catalogue, such as {@code capacity}
 * @param statistic as the sheet says it, or null
 * @param value in the canonical unit; null where only a range is given
 * @param low lower bound of a range or tolerance, in the canonical unit, or null
 * @param high upper bound of a range or tolerance, in the canonical unit, or null
 * @param unit UCUM code of the quantity's canonical unit
 * @param doubts why the value is unsure, one sentence each; empty when it stands as read
 * @param original what was read before a person corrected it, or null
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Statement(
    String id,
    String quantity,
    Statistic statistic,
    Double value,
    Double low,
    Double high,
    String unit,
    @JsonInclude(JsonInclude.Include.ALWAYS) Conditions conditions,
    Evidence evidence,
    Standing standing,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> doubts,
    Original original) {
  public Statement {
    conditions = conditions == null ? Conditions.NONE : conditions;
    doubts = doubts == null ? List.of() : List.copyOf(doubts);
  }

  /** A statement that nobody has corrected. */
  public Statement(
      String id,
      String quantity,
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      String unit,
      Conditions conditions,
      Evidence evidence,
      Standing standing,
      List<String> doubts) {
    this(
        id,
        quantity,
        statistic,
        value,
        low,
        high,
        unit,
        conditions,
        evidence,
        standing,
        doubts,
        null);
  }

  /** The same statement under another id. */
  public Statement named(String other) {
    return new Statement(
        other,
        quantity,
        statistic,
        value,
        low,
        high,
        unit,
        conditions,
        evidence,
        standing,
        doubts,
        original);
  }

  /** The same statement with another standing and other doubts. */
  public Statement standing(Standing other, List<String> reasons) {
    return new Statement(
        id,
        quantity,
        statistic,
        value,
        low,
        high,
        unit,
        conditions,
        evidence,
        other,
        reasons,
        original);
  }
}
