package commonsheet.record;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;

/**
 * The sample record changed in one place.
 *
 * @param line as it stands in the resource
 * @param valid whether the schema should still accept it
 * @param value as JSON; null removes the member
 */
record Variant(String line, boolean valid, JsonPointer pointer, String value) {
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Every line of {@code variants.txt}. */
  static List<Variant> all() throws IOException {
    return Samples.text("/record/variants.txt")
        .lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .map(Variant::of)
        .toList();
  }

  /** From {@code valid|invalid POINTER [VALUE]}. */
  static Variant of(String line) {
    String[] parts = line.split(" ", 3);
    return new Variant(
        line,
        parts[0].equals("valid"),
        JsonPointer.compile(parts[1]),
        parts.length == 3 ? parts[2] : null);
  }

  /** The sample with this change; fails where the place to change is not there. */
  String apply(String sample) throws IOException {
    JsonNode record = MAPPER.readTree(sample);
    JsonNode parent = record.at(pointer.head());
    if (parent instanceof ArrayNode array) {
      array.set(pointer.last().getMatchingIndex(), MAPPER.readTree(value));
    } else {
      change((ObjectNode) parent, pointer.last().getMatchingProperty());
    }
    return MAPPER.writeValueAsString(record);
  }

  private void change(ObjectNode parent, String member) throws IOException {
    if (value != null) {
      parent.set(member, MAPPER.readTree(value));
    } else if (parent.remove(member) == null) {
      throw new IllegalStateException("nothing to remove: " + line);
    }
  }

  @Override
  public String toString() {
    return line;
  }
}
