package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is accepted at first sight is held against networknt json-schema-validator. */
class PlainlySoundTest {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final SchemaFile SCHEMA = SchemaFile.named("cell-record");

  /** Values of every type, at the limits of the schema and beside them. */
  private static final List<String> VALUES =
      List.of(
          "null",
          "true",
          "false",
          "0",
          "1",
          "-1",
          "1.0",
          "1.5",
          "1e30",
          "-0.0",
          "\"\"",
          "\"x\"",
          "\"s1\"",
          "\"s1\\n\"",
          "\"c1\"",
          "\"read\"",
          "\"unsure\"",
          "\"derived\"",
          "\"measured\"",
          "\"hand-placed\"",
          "\"ocr\"",
          "\"text\"",
          "\"approved\"",
          "\"V\"",
          "\"A.h\"",
          "\"mass\"",
          "\"capacity\"",
          "\"confirmed\"",
          "[]",
          "[1]",
          "[1, 2]",
          "[\"s1\", \"s1\"]",
          "[\"s1\"]",
          "[1, 2, 3, 4]",
          "[1, 2, -3, 4]",
          "{}",
          "{\"x\": 1}",
          "[[1, 2], [3]]");

  static List<Variant> variants() throws IOException {
    return Variant.all();
  }

  @ParameterizedTest
  @MethodSource("variants")
  void judgesEveryVariantAsTheValidator(Variant variant) throws IOException {
    JsonNode record = MAPPER.readTree(variant.apply(Samples.full()));
    // A whole number written with a point is left to the validator.
    boolean valid =
        SCHEMA.judged(record, "the record").isEmpty() && !variant.line().endsWith(" 9.0");
    assertEquals(valid, SCHEMA.isPlainlySound(record), variant::line);
  }

  @Property(tries = 1500)
  void acceptsNothingThatTheValidatorRefuses(@ForAll long seed) throws IOException {
    JsonNode record = MAPPER.readTree(Samples.full());
    Random random = new Random(seed);
    for (int change = 0; change <= random.nextInt(3); change++) {
      changeSomewhere(record, random);
    }
    if (SCHEMA.isPlainlySound(record)) {
      assertEquals(List.of(), SCHEMA.judged(record, "the record"));
    }
  }

  /** The cases of the keywords' own definitions (JSON Schema Validation 2020-12, section 6). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"minLength\": 2}                      | \"𝄞\"             | false",
        "{\"maxLength\": 1}                      | \"𝄞\"             | true",
        "{\"minLength\": 2}                      | 1                | true",
        "{\"pattern\": \"^a$\"}                  | \"a\\n\"          | false",
        "{\"uniqueItems\": true}                 | [1, 1.0]         | false",
        "{\"required\": [\"a\"]}                 | []               | true",
        "{\"prefixItems\": [true], \"items\": false} | [1, 2]       | false",
        "{\"minItems\": 1}                       | {}               | true",
        "{\"additionalProperties\": false}       | {\"a\": 1}       | false",
        "{\"dependentRequired\": {\"a\": [\"b\"]}} | {\"a\": null}  | false",
        "{\"propertyNames\": {\"maxLength\": 1}} | {\"ab\": 1}      | false",
        "{\"anyOf\": [{\"type\": \"string\"}, {\"const\": true}]} | true | true"
      })
  void knowsTheKeywords(String schema, String value, boolean sound) throws IOException {
    assertEquals(sound, PlainlySound.by(MAPPER.readTree(schema)).test(MAPPER.readTree(value)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"not\": {\"type\": \"string\"}}",
        "{\"type\": [\"string\", \"number\"]}",
        "{\"$ref\": \"#/$defs/none\"}",
        "{\"$ref\": \"#\"}",
        "{\"if\": {\"minimum\": 0}, \"else\": true}",
        "{\"if\": {\"properties\": {\"a\": {\"const\": 1}}}, \"else\": true}"
      })
  void leavesToTheValidatorWhatItDoesNotKnow(String schema) throws IOException {
    assertFalse(PlainlySound.by(MAPPER.readTree(schema)).test(MAPPER.readTree("1")));
  }

  @Test
  void acceptsTheSample() throws IOException {
    assertTrue(SCHEMA.isPlainlySound(MAPPER.readTree(Samples.full())));
  }

  private static void changeSomewhere(JsonNode record, Random random) throws IOException {
    List<JsonNode> places = new ArrayList<>();
    collect(record, places);
    JsonNode place = places.get(random.nextInt(places.size()));
    JsonNode value =
        random.nextBoolean()
            ? MAPPER.readTree(VALUES.get(random.nextInt(VALUES.size())))
            : places.get(random.nextInt(places.size())).deepCopy();
    if (place instanceof ArrayNode array) {
      array.insert(random.nextInt(array.size() + 1), value);
      if (random.nextBoolean()) {
        array.remove(random.nextInt(array.size()));
      }
    } else if (place instanceof ObjectNode object && !object.isEmpty()) {
      List<String> names = new ArrayList<>();
      object.fieldNames().forEachRemaining(names::add);
      String name = names.get(random.nextInt(names.size()));
      switch (random.nextInt(3)) {
        case 0 -> object.remove(name);
        case 1 -> object.set(name, value);
        default -> object.set("file", value);
      }
    }
  }

  private static void collect(JsonNode node, List<JsonNode> places) {
    if (node.isContainerNode()) {
      places.add(node);
      node.forEach(member -> collect(member, places));
    }
  }
}
