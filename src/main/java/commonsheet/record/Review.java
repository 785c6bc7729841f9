package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * Who prepared and who approved the record. Times are ISO 8601.
 *
 * @param state draft or approved
 * @param content SHA-256 of the content that was approved
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Review(
    String state,
    String preparedBy,
    String preparedAt,
    String approvedBy,
    String approvedAt,
    String content) {
  public static final Review DRAFT = new Review("draft", null, null, null, null, null);
}
