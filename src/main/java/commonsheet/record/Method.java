package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How a value was obtained from its place on the sheet. */
public enum Method {
  @JsonProperty("table-cell")
  TABLE_CELL,
  @JsonProperty("text-line")
  TEXT_LINE,
  @JsonProperty("vector-curve")
  VECTOR_CURVE,
  @JsonProperty("colour-trace")
  COLOUR_TRACE,
  @JsonProperty("hand-placed")
  HAND_PLACED,
  @JsonProperty("measured")
  MEASURED,
  @JsonProperty("typed-in")
  TYPED_IN,
  @JsonProperty("derived")
  DERIVED
}
