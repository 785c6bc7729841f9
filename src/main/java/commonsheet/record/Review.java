package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;

/**
 * Who prepared and who approved the record, and what persons did with it. Times are ISO 8601.
 *
 * @param state draft; approved, while the content is the one that was approved; reopened, when it
 *     was approved and has changed since
 * @param preparedBy who worked on the record before it was approved; null where nobody did but the
 *     program
 * @param content SHA-256 of the content that was approved, see {@link ContentHash}
 * @param ownWork true where the approver had worked on the record and said so; null otherwise
 * @param steps what persons did, oldest first
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Review(
    String state,
    String preparedBy,
    String preparedAt,
    String approvedBy,
    String approvedAt,
    String content,
    Boolean ownWork,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) List<ReviewStep> steps) {
  /** The state of a record that nobody has approved. */
  public static final String DRAFT_STATE = "draft";

  /** The state of a record whose content is the one that was approved. */
  public static final String APPROVED = "approved";

  /** The state of a record whose content has changed since it was approved. */
  public static final String REOPENED = "reopened";

  public static final Review DRAFT = new Review(DRAFT_STATE, null, null, null, null, null);

  public Review {
    steps = steps == null ? List.of() : List.copyOf(steps);
  }

  /** A review without steps. */
  public Review(
      String state,
      String preparedBy,
      String preparedAt,
      String approvedBy,
      String approvedAt,
      String content) {
    this(state, preparedBy, preparedAt, approvedBy, approvedAt, content, null, null);
  }

  /** The same review in another state. */
  public Review in(String other) {
    return new Review(
        other, preparedBy, preparedAt, approvedBy, approvedAt, content, ownWork, steps);
  }

  /** The same review with one more step. */
  public Review with(ReviewStep step) {
    List<ReviewStep> more = new ArrayList<>(steps);
    more.add(step);
    return new Review(
        state, preparedBy, preparedAt, approvedBy, approvedAt, content, ownWork, more);
  }
}
