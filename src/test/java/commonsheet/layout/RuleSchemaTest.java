package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.record.Conditions;
import commonsheet.record.Statistic;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Holds the schema of rule files against its own standard and against what the program knows. */
class RuleSchemaTest {
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final JsonNode SCHEMA = read();

  private static JsonNode read() {
    try {
      return new ObjectMapper()
          .readTree(Files.readString(Path.of("schemas", "layout-rule.schema.json")));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The meta-schema published by json-schema.org, as it comes with the validator. */
  @Test
  void isASchemaOf2020() {
    Schema meta =
        REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(List.of(), meta.validate(SCHEMA));
  }

  @Test
  void describesEveryPropertyAndGivesValidExamples() {
    List<Executable> checks = new ArrayList<>();
    properties(SCHEMA, "")
        .forEach(
            (place, property) ->
                checks.add(
                    () -> {
                      assertTrue(property.path("description").asText().length() > 5, place);
                      assertFalse(property.path("examples").isEmpty(), place);
                      property
                          .path("examples")
                          .forEach(
                              example ->
                                  assertEquals(
                                      List.of(), schemaAt(place).validate(example), place));
                    }));
    assertTrue(checks.size() > 60, "the walk over the properties misses some");
    assertAll(checks);
  }

  @Test
  void knowsTheQuantitiesOfTheCatalogue() {
    List<String> names =
        QuantityCatalogue.standard().all().stream().map(QuantityKind::name).toList();
    assertEquals(names, texts(SCHEMA.at("/$defs/label/properties/quantity/enum")));
    assertEquals(names, names(SCHEMA.at("/properties/defaults/properties/conditions/properties")));
  }

  @Test
  void knowsTheConditionsOfARecord() {
    assertEquals(Conditions.NAMES, names(SCHEMA.at("/$defs/conditions/properties")));
  }

  @Test
  void knowsTheStatisticsOfARecord() throws NoSuchFieldException {
    List<String> names = new ArrayList<>();
    for (Statistic statistic : Statistic.values()) {
      names.add(
          Statistic.class.getField(statistic.name()).getAnnotation(JsonProperty.class).value());
    }
    assertEquals(names, texts(SCHEMA.at("/$defs/label/properties/statistic/enum")));
  }

  @Test
  void namesOnlyRolesThatTablesKnow() {
    for (String role : texts(SCHEMA.at("/$defs/column/properties/role/enum"))) {
      Role.named(new ColumnRule(role, List.of("x"), null).asHeading().role());
    }
  }

  @Test
  void hasTheMembersOfTheJavaTypes() {
    assertEquals(components(LayoutRule.class), names(SCHEMA.at("/properties")));
    assertEquals(
        components(LayoutRule.Recognise.class),
        names(SCHEMA.at("/properties/recognise/properties")));
    assertEquals(components(LabelRule.class), names(SCHEMA.at("/$defs/label/properties")));
    assertEquals(
        components(LayoutRule.Defaults.class), names(SCHEMA.at("/properties/defaults/properties")));
  }

  @Test
  void builtInRulesAreListedAndValid() throws IOException {
    List<String> files = RuleFolder.builtInFiles();
    try (var present = Files.list(Path.of("src/main/resources/commonsheet/layouts"))) {
      assertEquals(
          present
              .map(p -> p.getFileName().toString())
              .filter(n -> n.endsWith(".yaml"))
              .sorted()
              .toList(),
          files.stream().sorted().toList());
    }
    RuleSchema schema = new RuleSchema();
    RuleMeaning meaning = new RuleMeaning();
    for (String file : files) {
      RuleFile checked = RuleFile.checked(file, RuleFolder.resource(file), schema, meaning);
      assertEquals(List.of(), checked.problems(), file);
      assertEquals(RuleFile.trusted(file, RuleFolder.resource(file)).rule(), checked.rule(), file);
    }
  }

  private static Schema schemaAt(String place) {
    ObjectNode around = SCHEMA.deepCopy();
    around.removeAll();
    around.set("$defs", SCHEMA.path("$defs"));
    around.setAll((ObjectNode) SCHEMA.at(place));
    return REGISTRY.getSchema(around);
  }

  private static Map<String, JsonNode> properties(JsonNode node, String place) {
    Map<String, JsonNode> found = new LinkedHashMap<>();
    node.fields()
        .forEachRemaining(
            field -> {
              String inside = place + "/" + field.getKey();
              if (field.getKey().equals("properties")) {
                field
                    .getValue()
                    .fields()
                    .forEachRemaining(p -> found.put(inside + "/" + p.getKey(), p.getValue()));
              }
              if (!field.getKey().equals("examples")) {
                found.putAll(properties(field.getValue(), inside));
              }
            });
    return found;
  }

  private static List<String> components(Class<?> type) {
    return Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(text -> texts.add(text.asText()));
    return texts;
  }
}
