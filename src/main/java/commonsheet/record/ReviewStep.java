package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * What a person did with a record.
 *
 * @param by who, as they call themselves
 * @param at when, ISO 8601
 * @param about ids of statements and curves, or members of the cell such as {@code cell.model};
 *     what a step is about may since have gone
 * @param rule of the finding that was accepted; null for other steps
 * @param remark in their own words, or null
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record ReviewStep(
    Kind step, String by, String at, List<String> about, String rule, String remark) {
  /** What was done. */
  public enum Kind {
    /** The record was made ready for a reviewer. */
    @JsonProperty("prepared")
    PREPARED,
    @JsonProperty("confirmed")
    CONFIRMED,
    @JsonProperty("corrected")
    CORRECTED,
    /** A value that was not read was typed in. */
    @JsonProperty("added")
    ADDED,
    @JsonProperty("rejected")
    REJECTED,
    /** Given back with a remark, to be looked at again. */
    @JsonProperty("returned")
    RETURNED,
    /** A finding was accepted with a reason. */
    @JsonProperty("accepted")
    ACCEPTED,
    @JsonProperty("approved")
    APPROVED,
    /** An approved record was changed. */
    @JsonProperty("reopened")
    REOPENED;

    /** The name used in records, such as {@code confirmed}. */
    public String label() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** Whether whoever did it has worked on the content, so that approving it is approving that. */
    public boolean isPreparation() {
      return switch (this) {
        case PREPARED, CORRECTED, ADDED, REJECTED, ACCEPTED -> true;
        case CONFIRMED, RETURNED, APPROVED, REOPENED -> false;
      };
    }
  }

  public ReviewStep {
    about = about == null ? List.of() : List.copyOf(about);
  }
}
