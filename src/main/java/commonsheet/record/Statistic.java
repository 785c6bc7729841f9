package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * What a stated value is of its kind, as the sheet says it. Absent (null) where the sheet says
 * none.
 */
public enum Statistic {
  @JsonProperty("nominal")
  NOMINAL,
  @JsonProperty("typical")
  TYPICAL,
  @JsonProperty("rated")
  RATED,
  @JsonProperty("minimum")
  MINIMUM,
  @JsonProperty("maximum")
  MAXIMUM,
  @JsonProperty("standard")
  STANDARD;

  /** The name used in records and truth files, such as {@code minimum}. */
  public String label() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
