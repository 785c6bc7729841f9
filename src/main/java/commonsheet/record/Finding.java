package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * Something a person should look at.
 *
 * @param rule id of the rule that found it
 * @param about ids of the statements and curves concerned; empty where it concerns the sheet
 * @param message a sentence a person can act on
 * @param source where the rule comes from, or {@code common practice, no source}
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Finding(
    String rule, Severity severity, List<String> about, String message, String source) {
  public Finding {
    about = about == null ? List.of() : List.copyOf(about);
  }
}
