package commonsheet.record;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import systems.uom.ucum.format.UCUMFormat;

/** Holds the schema file against the Java types, UCUM, and its own promises. */
class RecordSchemaTest {
  private static final JsonNode SCHEMA = schema();

  private static JsonNode schema() {
    try {
      return new ObjectMapper()
          .readTree(Files.readString(Path.of("schemas", "cell-record.schema.json")));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void describesEveryPropertyAndGivesAnExample() {
    List<Executable> checks = new ArrayList<>();
    properties(SCHEMA, "")
        .forEach(
            (pointer, property) ->
                checks.add(
                    () -> {
                      assertTrue(property.path("description").asText().length() > 5, pointer);
                      assertFalse(property.path("examples").isEmpty(), pointer);
                    }));
    assertTrue(checks.size() > 70, "the walk over the properties misses some");
    assertAll(checks);
  }

  /** Bounds and the points' uncertainty have the unit of the statement or axis, as they say. */
  @Test
  void namesTheUnitOfEveryNumberThatHasOneOfItsOwn() {
    properties(SCHEMA, "")
        .forEach(
            (pointer, property) -> {
              String type = property.path("type").asText();
              boolean number = type.equals("number") || type.equals("integer");
              if (number && !property.path("description").asText().contains("unit")) {
                assertTrue(property.has("x-unit"), pointer);
              }
            });
  }

  /** UCUM's own table, by the library systems-ucum. */
  @Test
  void usesUnitsThatUcumKnows() {
    List<String> units = new ArrayList<>();
    SCHEMA.findValues("x-unit").forEach(unit -> units.add(unit.asText()));
    SCHEMA
        .at("/$defs/unitOfQuantity/allOf")
        .forEach(tie -> units.add(tie.at("/then/properties/unit/const").asText()));
    UCUMFormat ucum = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);
    assertAll(units.stream().distinct().map(unit -> () -> assertNotNull(ucum.parse(unit), unit)));
  }

  @Test
  void tiesEveryQuantityToOneUnit() {
    List<String> tied = new ArrayList<>();
    SCHEMA
        .at("/$defs/unitOfQuantity/allOf")
        .forEach(
            tie -> tie.at("/if/properties/quantity/enum").forEach(name -> tied.add(name.asText())));
    assertEquals(texts(SCHEMA.at("/$defs/quantity/enum")), tied);
  }

  @Test
  void hasTheConditionsOfTheJavaType() {
    List<String> names = new ArrayList<>();
    SCHEMA.at("/$defs/conditions/properties").fieldNames().forEachRemaining(names::add);
    assertEquals(Conditions.NAMES, names);
  }

  @Test
  void hasTheNamesOfTheJavaEnumerations() {
    assertEquals(
        names(Statistic.class), texts(SCHEMA.at("/$defs/statement/properties/statistic/enum")));
    assertEquals(names(Standing.class), texts(SCHEMA.at("/$defs/standing/enum")));
    assertEquals(names(Method.class), texts(SCHEMA.at("/$defs/method/enum")));
    assertEquals(
        names(WordSource.class), texts(SCHEMA.at("/$defs/evidence/properties/words/enum")));
    assertEquals(
        names(Severity.class), texts(SCHEMA.at("/$defs/finding/properties/severity/enum")));
    assertEquals(CellRecord.SCHEMA, SCHEMA.at("/properties/schema/const").asText());
    assertEquals(RecordIds.MAX_LENGTH, SCHEMA.at("/properties/id/maxLength").asInt());
  }

  @Test
  void hasTheMembersOfTheJavaTypesInTheirOrder() {
    Map<Class<?>, String> places = new LinkedHashMap<>();
    places.put(CellRecord.class, "");
    places.put(Cell.class, "/$defs/cell");
    places.put(Source.class, "/$defs/source");
    places.put(Source.Layout.class, "/$defs/source/properties/layout");
    places.put(Statement.class, "/$defs/statement");
    places.put(Original.class, "/$defs/original");
    places.put(Curve.Original.class, "/$defs/originalCurve");
    places.put(Acceptance.class, "/$defs/acceptance");
    places.put(ReviewStep.class, "/$defs/reviewStep");
    places.put(Evidence.class, "/$defs/evidence");
    places.put(Curve.class, "/$defs/curve");
    places.put(Curve.Axis.class, "/$defs/axis");
    places.put(Curve.Uncertainty.class, "/$defs/curve/properties/uncertainty");
    places.put(Finding.class, "/$defs/finding");
    places.put(Review.class, "/$defs/review");
    places.forEach(
        (type, place) -> {
          List<String> components =
              Arrays.stream(type.getRecordComponents()).map(c -> c.getName()).toList();
          List<String> properties = new ArrayList<>();
          SCHEMA.at(place + "/properties").fieldNames().forEachRemaining(properties::add);
          assertEquals(components, properties, type.getSimpleName());
          assertEquals("false", SCHEMA.at(place + "/additionalProperties").asText(), place);
        });
  }

  /**
   * Every property of every object in the schema, by its place; not those of conditionals or bans.
   */
  private static Map<String, JsonNode> properties(JsonNode node, String pointer) {
    Map<String, JsonNode> found = new LinkedHashMap<>();
    node.properties()
        .forEach(
            member -> {
              String place = pointer + "/" + member.getKey();
              if (List.of("if", "then", "else", "allOf").contains(member.getKey())) {
                return;
              }
              if (member.getKey().equals("properties")) {
                member.getValue().properties().stream()
                    .filter(p -> !p.getValue().isBoolean())
                    .forEach(p -> found.put(place + p.getKey(), p.getValue()));
              }
              found.putAll(properties(member.getValue(), place));
            });
    return found;
  }

  private static <E extends Enum<E>> List<String> names(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(RecordSchemaTest::name).toList();
  }

  private static String name(Enum<?> constant) {
    try {
      return constant
          .getDeclaringClass()
          .getField(constant.name())
          .getAnnotation(JsonProperty.class)
          .value();
    } catch (NoSuchFieldException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(text -> texts.add(text.asText()));
    return texts;
  }
}
