package commonsheet.quantity;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** The YAML files beside this class. */
final class Resource {
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  private Resource() {}

  /** The parsed file; a missing or broken one is a fault of the program and ends it. */
  static JsonNode read(String name) {
    try (InputStream in = Resource.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file quantity/" + name);
      }
      return YAML.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's file quantity/" + name + " is broken", e);
    }
  }

  /** The strings of a YAML list; empty where the member is absent. */
  static List<String> strings(JsonNode list) {
    List<String> strings = new ArrayList<>();
    list.forEach(item -> strings.add(item.asText()));
    return strings;
  }
}
