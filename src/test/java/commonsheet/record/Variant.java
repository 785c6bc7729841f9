package commonsheet.record;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;

/** A sample record changed in one place, and whether the schema should still accept it. */
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

  private static Variant of(String line) {
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
    ObjectNode parent = (ObjectNode) record.at(pointer.head());
    String member = pointer.last().getMatchingProperty();
    if (value != null) {
      parent.set(member, MAPPER.readTree(value));
    } else if (parent.remove(member) == null) {
      throw new IllegalStateException("nothing to remove: " + line);
    }
    return MAPPER.writeValueAsString(record);
  }

  @Override
  public String toString() {
    return line;
  }
}
