package commonsheet.record;

/**
 * A person's word that a finding is no reason to change the record.
 *
 * @param by who
 * @param at when, ISO 8601
 * @param reason why it may stand
 */
public record Acceptance(String by, String at, String reason) {}
