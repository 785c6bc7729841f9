package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * Something a person should look at.
 *
 * @param rule id of the rule that found it
 * @param about ids of the statements and curves concerned; empty where it concerns the sheet
 * @param message a sentence a person can act on
 * @param source where the rule comes from, or {@code common practice, no source}
 * @param accepted by whom and why it may stand; null while it is open
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Finding(
    String rule,
    Severity severity,
    List<String> about,
    String message,
    String source,
    Acceptance accepted) {
  public Finding {
    about = about == null ? List.of() : List.copyOf(about);
  }

  /** An open finding. */
  public Finding(
      String rule, Severity severity, List<String> about, String message, String source) {
    this(rule, severity, about, message, source, null);
  }

  /** Whether nobody has accepted it. */
  @JsonIgnore
  public boolean isOpen() {
    return accepted == null;
  }

  /** The same finding, accepted. */
  public Finding accepted(Acceptance acceptance) {
    return new Finding(rule, severity, about, message, source, acceptance);
  }

  /** The same finding, with the acceptance that it had among earlier findings. */
  public Finding acceptedAsIn(List<Finding> earlier) {
    return earlier.stream()
        .filter(finding -> !finding.isOpen() && finding.saysTheSameAs(this))
        .findFirst()
        .map(finding -> accepted(finding.accepted()))
        .orElse(this);
  }

  /** Whether both say the same of the same, accepted or not. */
  public boolean saysTheSameAs(Finding other) {
    return rule.equals(other.rule) && about.equals(other.about) && message.equals(other.message);
  }
}
