package commonsheet.check;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The rules and limits that are data: the YAML files of this package. */
final class CheckData {
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  private CheckData() {}

  /** A parsed file; a missing or broken one is a fault of the program and ends it. */
  static JsonNode read(String name) {
    try (InputStream in = CheckData.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file check/" + name);
      }
      return YAML.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's file check/" + name + " is broken", e);
    }
  }

  /** A list of two numbers. */
  static Interval interval(JsonNode pair) {
    return new Interval(pair.get(0).asDouble(), pair.get(1).asDouble());
  }
}
