package commonsheet.export.sizing;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The page {@code docs/export.md} names every column, member and term. */
class ExportDocumentTest {
  private static String page() throws Exception {
    return Files.readString(Path.of("docs", "export.md"));
  }

  private static void named(List<String> names) throws Exception {
    String page = page();
    for (String name : names) {
      assertTrue(page.contains('`' + name + '`'), name + " is not in docs/export.md");
    }
  }

  @Test
  void everyColumnOfRows() throws Exception {
    List<RowQuantity> quantities = RowLayout.standard().columns();
    List<String> names = new ArrayList<>();
    quantities.forEach(q -> names.add(q.name() + RowLayout.standard().suffix(q)));
    RowFields.standard().stream()
        .map(Field::name)
        .filter(name -> quantities.stream().noneMatch(q -> name.startsWith(q.name() + '_')))
        .forEach(names::add);
    named(names);
  }

  @Test
  void everyMemberOfAVoltageTable() throws Exception {
    JsonNode schema =
        new ObjectMapper()
            .readTree(Files.readString(Path.of("schemas", "voltage-table.schema.json")));
    List<String> names = new ArrayList<>();
    names.addAll(members(schema));
    for (String member : List.of("cell", "source", "review", "units", "valid")) {
      names.addAll(members(schema.at("/properties/" + member)));
    }
    named(names);
  }

  private static List<String> members(JsonNode schema) {
    List<String> names = new ArrayList<>();
    schema.path("properties").fieldNames().forEachRemaining(names::add);
    assertTrue(names.size() > 1, "the members of the schema are not found");
    return names;
  }

  @Test
  void everyTermOfOurOwnAndEveryTermOfEmmo() throws Exception {
    List<String> names = new ArrayList<>();
    for (Map.Entry<String, JsonNode> term : LinkedTerms.context().properties()) {
      String iri =
          term.getValue().isTextual()
              ? term.getValue().asText()
              : term.getValue().path("@id").asText();
      if (iri.startsWith("commonsheet:")) {
        names.add(term.getKey());
      }
    }
    LinkedTerms.standard().statements().values().forEach(terms -> names.addAll(terms.values()));
    LinkedTerms.standard().ranges().values().forEach(names::addAll);
    named(names);
  }
}
