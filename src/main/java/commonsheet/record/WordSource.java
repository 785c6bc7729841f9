package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Where the printed words came from: the PDF's own text, or recognised from a picture. */
public enum WordSource {
  @JsonProperty("text")
  TEXT,
  @JsonProperty("ocr")
  OCR
}
