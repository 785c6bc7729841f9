package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * Tells that a file is sound by a schema, many times faster than a validator that can say what is
 * wrong and where. It is made from the schema itself and knows the keywords that our schemas use,
 * as JSON Schema 2020-12 defines them. What it accepts, the schema accepts; what it does not accept
 * is for the validator to judge, and so is everything under a keyword that it does not know.
 */
final class PlainlySound {
  /** What every value passes. */
  static final Predicate<JsonNode> ALL = node -> true;

  private static final Predicate<JsonNode> NONE = node -> false;

  /** Keywords by which a condition can be refused as surely as accepted. */
  private static final Set<String> DECISIVE = Set.of("properties", "required", "const", "enum");

  private final JsonNode root;
  private final Map<String, Predicate<JsonNode>> references = new HashMap<>();

  private PlainlySound(JsonNode root) {
    this.root = root;
  }

  /** The test for a schema. */
  static Predicate<JsonNode> by(JsonNode schema) {
    return new PlainlySound(schema).test(schema);
  }

  private Predicate<JsonNode> test(JsonNode schema) {
    if (!schema.isObject()) {
      return schema.asBoolean() ? ALL : NONE;
    }
    List<Predicate<JsonNode>> tests = new ArrayList<>();
    for (Map.Entry<String, JsonNode> keyword : schema.properties()) {
      Predicate<JsonNode> test = keyword(keyword.getKey(), keyword.getValue(), schema);
      if (test != ALL) {
        tests.add(test);
      }
    }
    return all(tests);
  }

  private Predicate<JsonNode> keyword(String name, JsonNode value, JsonNode schema) {
    return switch (name) {
      case "$schema", "$id", "$defs", "title", "description", "examples", "x-unit" -> ALL;
      case "$ref" -> reference(value.textValue());
      case "type" -> type(value.asText());
      case "const" -> value::equals;
      case "enum" -> elements(value)::contains;
      case "allOf" -> all(tests(value));
      case "anyOf" -> any(tests(value));
      case "if" -> condition(value, schema);
      case "then", "else" -> ALL;
      case "pattern", "minLength", "maxLength" -> text(name, value);
      case "minimum" -> node -> !node.isNumber() || node.doubleValue() >= value.doubleValue();
      case "maximum" -> node -> !node.isNumber() || node.doubleValue() <= value.doubleValue();
      case "prefixItems", "items", "minItems", "uniqueItems" -> list(name, value, schema);
      default -> object(name, value, schema);
    };
  }

  private Predicate<JsonNode> object(String name, JsonNode value, JsonNode schema) {
    Predicate<JsonNode> test =
        switch (name) {
          case "properties" -> members(schema);
          case "additionalProperties", "required" ->
              schema.has("properties") ? ALL : members(schema);
          case "propertyNames" -> names(test(value));
          case "dependentRequired" -> dependent(value);
          default -> null;
        };
    if (test == null) {
      return NONE;
    }
    return test == ALL ? ALL : node -> !node.isObject() || test.test(node);
  }

  private Predicate<JsonNode> reference(String place) {
    Predicate<JsonNode> known = references.get(place);
    if (known == null) {
      // Stays so for a schema that refers to itself, which is the validator's.
      references.put(place, NONE);
      known = place.startsWith("#/") ? test(root.at(place.substring(1))) : NONE;
      references.put(place, known);
    }
    return known;
  }

  private Predicate<JsonNode> condition(JsonNode value, JsonNode schema) {
    if (!isDecisive(value)) {
      return NONE;
    }
    Predicate<JsonNode> asked = test(value);
    Predicate<JsonNode> then = schema.has("then") ? test(schema.get("then")) : ALL;
    Predicate<JsonNode> otherwise = schema.has("else") ? test(schema.get("else")) : ALL;
    return node -> (asked.test(node) ? then : otherwise).test(node);
  }

  /** Whether what this does not accept is refused by the schema: it compares texts only. */
  private static boolean isDecisive(JsonNode schema) {
    boolean texts =
        (!schema.has("const") || schema.get("const").isTextual())
            && elements(schema.path("enum")).stream().allMatch(JsonNode::isTextual);
    boolean known = schema.isObject();
    for (Map.Entry<String, JsonNode> keyword : schema.properties()) {
      known &= DECISIVE.contains(keyword.getKey());
    }
    for (JsonNode property : schema.path("properties")) {
      known &= isDecisive(property);
    }
    return texts && known;
  }

  private static Predicate<JsonNode> type(String name) {
    return switch (name) {
      case "object" -> JsonNode::isObject;
      case "array" -> JsonNode::isArray;
      case "string" -> JsonNode::isTextual;
      case "number" -> JsonNode::isNumber;
      case "integer" -> JsonNode::isIntegralNumber;
      case "boolean" -> JsonNode::isBoolean;
      default -> NONE;
    };
  }

  private static Predicate<JsonNode> text(String name, JsonNode value) {
    Predicate<String> test;
    if (name.equals("pattern")) {
      test = Pattern.compile(value.textValue()).asMatchPredicate();
    } else {
      int limit = value.asInt();
      test =
          name.equals("minLength")
              ? text -> text.codePointCount(0, text.length()) >= limit
              : text -> text.codePointCount(0, text.length()) <= limit;
    }
    return node -> !node.isTextual() || test.test(node.textValue());
  }

  private Predicate<JsonNode> list(String name, JsonNode value, JsonNode schema) {
    Predicate<JsonNode> test =
        switch (name) {
          case "prefixItems" -> schema.has("items") ? ALL : elements(tests(value), ALL);
          case "items" -> elements(tests(schema.path("prefixItems")), test(value));
          case "minItems" -> atLeast(value.asInt());
          default -> node -> !value.asBoolean() || areDifferentTexts(node);
        };
    return test == ALL ? ALL : node -> !node.isArray() || test.test(node);
  }

  private static Predicate<JsonNode> atLeast(int size) {
    return node -> node.size() >= size;
  }

  private static Predicate<JsonNode> elements(
      List<Predicate<JsonNode>> first, Predicate<JsonNode> others) {
    return node -> {
      for (int i = 0; i < node.size(); i++) {
        if (!(i < first.size() ? first.get(i) : others).test(node.get(i))) {
          return false;
        }
      }
      return true;
    };
  }

  private static boolean areDifferentTexts(JsonNode list) {
    Set<String> texts = new HashSet<>();
    for (JsonNode member : list) {
      if (!member.isTextual() || !texts.add(member.textValue())) {
        return false;
      }
    }
    return true;
  }

  private Predicate<JsonNode> members(JsonNode schema) {
    Map<String, Predicate<JsonNode>> tests = new HashMap<>();
    for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
      tests.put(property.getKey(), test(property.getValue()));
    }
    List<String> required = new ArrayList<>();
    schema.path("required").forEach(name -> required.add(name.textValue()));
    JsonNode others = schema.get("additionalProperties");
    return MemberTest.of(tests, required, others == null ? ALL : test(others));
  }

  private static Predicate<JsonNode> names(Predicate<JsonNode> test) {
    return node -> {
      for (Map.Entry<String, JsonNode> member : node.properties()) {
        if (!test.test(TextNode.valueOf(member.getKey()))) {
          return false;
        }
      }
      return true;
    };
  }

  private static Predicate<JsonNode> dependent(JsonNode value) {
    List<Predicate<JsonNode>> tests = new ArrayList<>();
    for (Map.Entry<String, JsonNode> dependency : value.properties()) {
      String name = dependency.getKey();
      for (JsonNode other : dependency.getValue()) {
        String needed = other.textValue();
        tests.add(node -> !node.has(name) || node.has(needed));
      }
    }
    return all(tests);
  }

  private List<Predicate<JsonNode>> tests(JsonNode schemas) {
    List<Predicate<JsonNode>> tests = new ArrayList<>();
    schemas.forEach(schema -> tests.add(test(schema)));
    return tests;
  }

  private static Set<JsonNode> elements(JsonNode list) {
    Set<JsonNode> members = new HashSet<>();
    list.forEach(members::add);
    return members;
  }

  static Predicate<JsonNode> all(List<Predicate<JsonNode>> tests) {
    if (tests.size() < 2) {
      return tests.isEmpty() ? ALL : tests.get(0);
    }
    List<Predicate<JsonNode>> every = List.copyOf(tests);
    return node -> {
      for (int i = 0; i < every.size(); i++) {
        if (!every.get(i).test(node)) {
          return false;
        }
      }
      return true;
    };
  }

  private static Predicate<JsonNode> any(List<Predicate<JsonNode>> tests) {
    return node -> tests.stream().anyMatch(test -> test.test(node));
  }
}
