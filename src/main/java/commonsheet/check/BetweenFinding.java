package commonsheet.check;

import commonsheet.record.Severity;
import java.util.List;

/**
 * Something a person should look at in two records together.
 *
 * @param rule id of the rule that found it
 * @param records ids of the two records
 * @param about the statements concerned: one of the first, one of the second record; empty where
 *     the records as such are
 * @param message a sentence a person can act on
 * @param source where the rule comes from
 */
public record BetweenFinding(
    String rule,
    Severity severity,
    List<String> records,
    List<String> about,
    String message,
    String source) {
  public BetweenFinding {
    records = List.copyOf(records);
    about = List.copyOf(about);
  }
}
