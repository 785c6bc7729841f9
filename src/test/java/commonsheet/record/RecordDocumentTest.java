package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page {@code docs/record.md} says what the schema says. */
class RecordDocumentTest {
  private static final Path DOCUMENT = Path.of("docs", "record.md");
  private static final Pattern ROW = Pattern.compile("\\| `(\\w+)` \\| `([^`]+)` \\|.*");

  @Test
  void showsAValidRecordInTheFormInWhichItIsWritten() throws Exception {
    Matcher example =
        Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(DOCUMENT));
    assertTrue(example.find());
    String text = example.group(1);
    assertEquals(text, RecordJson.write(RecordJson.read(text, "the example of docs/record.md")));
  }

  @Test
  void listsTheQuantitiesWithTheirUnits() throws IOException {
    Map<String, String> units = new LinkedHashMap<>();
    schema()
        .at("/$defs/unitOfQuantity/allOf")
        .forEach(
            tie ->
                tie.at("/if/properties/quantity/enum")
                    .forEach(
                        name ->
                            units.put(
                                name.asText(), tie.at("/then/properties/unit/const").asText())));
    assertEquals(units, table("### Quantities"));
  }

  @Test
  void listsTheConditionsWithTheirUnits() throws IOException {
    Map<String, String> units = new LinkedHashMap<>();
    schema()
        .at("/$defs/conditions/properties")
        .properties()
        .forEach(c -> units.put(c.getKey(), c.getValue().get("x-unit").asText()));
    assertEquals(units, table("### Conditions"));
  }

  private static Map<String, String> table(String heading) throws IOException {
    String rest = Files.readString(DOCUMENT).split(heading + "\n", 2)[1].split("\n#", 2)[0];
    Map<String, String> rows = new LinkedHashMap<>();
    rest.lines()
        .map(ROW::matcher)
        .filter(Matcher::matches)
        .forEach(row -> rows.put(row.group(1), row.group(2)));
    return rows;
  }

  private static JsonNode schema() throws IOException {
    return new ObjectMapper()
        .readTree(Files.readString(Path.of("schemas", "cell-record.schema.json")));
  }
}
