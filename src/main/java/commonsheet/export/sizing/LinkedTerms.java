package commonsheet.export.sizing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * The content of linked-terms.yaml, which explains its members.
 *
 * @param conditionUnits UCUM code by the name of a condition
 */
record LinkedTerms(
    Map<String, Map<String, String>> statements,
    Map<String, List<String>> ranges,
    Map<String, String> conditions,
    Map<String, String> cases,
    Map<String, String> units,
    Map<String, String> conditionUnits) {
  private static final LinkedTerms STANDARD =
      read("linked-terms.yaml", new YAMLMapper(), LinkedTerms.class);
  private static final JsonNode CONTEXT =
      read("linked-context.json", new ObjectMapper(), JsonNode.class);

  static LinkedTerms standard() {
    return STANDARD;
  }

  /** The context that goes into every file, so that none has to be fetched. */
  static ObjectNode context() {
    return CONTEXT.deepCopy();
  }

  /** The EMMO term that says exactly what the statement says, or null. */
  String of(Statement statement) {
    Map<String, String> terms = statements.getOrDefault(statement.quantity(), Map.of());
    Statistic statistic = statement.statistic();
    String exact = terms.get(statistic == null ? "unsaid" : statistic.label());
    return exact == null ? terms.get("any") : exact;
  }

  /** The IRI of a unit, in full where the context's prefix stands for it. */
  String unit(String ucum) {
    return "unit:" + units.get(ucum);
  }

  private static <T> T read(String name, ObjectMapper mapper, Class<T> type) {
    String path = "/commonsheet/export/" + name;
    try (InputStream in = LinkedTerms.class.getResourceAsStream(path)) {
      return mapper.readValue(in, type);
    } catch (IOException e) {
      throw new UncheckedIOException("the resource " + path + " is damaged", e);
    }
  }
}
