package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How far a value can be trusted, and who has settled it. */
public enum Standing {
  /** Read from the sheet without doubt. */
  @JsonProperty("read")
  READ,
  /** Read from the sheet, with the doubts given beside it. */
  @JsonProperty("unsure")
  UNSURE,
  /** A person compared it with the sheet and agreed. */
  @JsonProperty("confirmed")
  CONFIRMED,
  /** A person replaced what was read. */
  @JsonProperty("corrected")
  CORRECTED,
  /** A person found that the sheet does not say this. */
  @JsonProperty("rejected")
  REJECTED;

  /** Whether a person has settled it. */
  public boolean isSettled() {
    return this == CONFIRMED || this == CORRECTED || this == REJECTED;
  }

  /** The name used in records, such as {@code read}. */
  public String label() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
