package commonsheet.layout;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.dialect.Dialects;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Checks rule files against {@code layout-rule.schema.json}. Compiling the schema takes time, so
 * one is made only where there is a file to check.
 */
final class RuleSchema {
  private static final String RESOURCE = "/commonsheet/schemas/layout-rule.schema.json";

  private final JsonNode text = read();
  private final Schema schema =
      SchemaRegistry.withDialect(
              Dialects.getDraft202012(),
              builder ->
                  builder.schemaRegistryConfig(
                      SchemaRegistryConfig.builder().locale(Locale.ENGLISH).build()))
          .getSchema(text);

  /** What of the content is not as the schema says, in the order of the file. */
  List<RuleProblem> problems(RuleLines file) {
    return schema.validate(file.content()).stream().map(error -> problem(error, file)).toList();
  }

  private RuleProblem problem(Error error, RuleLines file) {
    String place = error.getInstanceLocation().toString();
    if (error.getKeyword().equals("additionalProperties")) {
      String name = argument(error, 0);
      return new RuleProblem(
          file.line(RuleLines.member(place, name)),
          "\"" + name + "\" is no member" + in(place) + hint(name, members(error)));
    }
    return new RuleProblem(file.line(place), named(place) + " " + meaning(error));
  }

  private static String meaning(Error error) {
    JsonNode value = error.getInstanceNode();
    return switch (error.getKeyword()) {
      case "required" -> "lacks \"" + argument(error, 0) + "\"";
      case "type" -> type(argument(error, 1), argument(error, 0));
      case "enum" -> {
        List<String> allowed = new ArrayList<>();
        error.getSchemaNode().forEach(name -> allowed.add(name.asText()));
        yield "cannot be " + value + hint(value.asText(), allowed);
      }
      case "pattern" ->
          "cannot be " + value + "; use lower-case letters, digits and single hyphens only";
      case "minLength" -> "must not be empty";
      case "maxLength" -> "must have at most " + argument(error, 0) + " characters";
      case "minItems" -> "must not be an empty list; leave it out or fill it";
      case "minProperties" -> "must have at least one of its members";
      case "uniqueItems" -> "has the same entry twice";
      case "minimum" -> "must be at least " + argument(error, 0) + ", not " + value;
      default -> error.getMessage();
    };
  }

  private static String type(String wanted, String found) {
    String sentence = "must be " + kind(wanted) + ", not " + kind(found);
    if (wanted.equals("string") && !found.equals("null")) {
      return sentence + "; put a text that looks otherwise in \"quotes\"";
    }
    return wanted.equals("array") && found.equals("string")
        ? sentence + "; write it in [square brackets]"
        : sentence;
  }

  private static String kind(String type) {
    return switch (type) {
      case "string" -> "a text";
      case "integer" -> "a whole number";
      case "number" -> "a number";
      case "boolean" -> "true or false";
      case "array" -> "a list";
      case "object" -> "a group of members";
      case "null" -> "empty";
      default -> type;
    };
  }

  private static String hint(String typed, List<String> names) {
    String nearest = Nearest.hint(typed, names);
    return nearest.isEmpty() ? "; choose from " + String.join(", ", names) : nearest;
  }

  /** The members that the schema knows where it found one too many. */
  private List<String> members(Error error) {
    String keyword = error.getSchemaLocation().getFragment().toString();
    JsonNode around = text.at(keyword.substring(0, keyword.lastIndexOf('/')));
    List<String> names = new ArrayList<>();
    around.path("properties").fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static String in(String pointer) {
    return pointer.isEmpty() ? " of a layout rule" : " of " + named(pointer);
  }

  /** The last name in a pointer: {@code "say"} for {@code /labels/0/say} and its entries. */
  private static String named(String pointer) {
    String[] steps = pointer.split("/");
    for (int i = steps.length - 1; i > 0; i--) {
      if (!steps[i].matches("\\d+")) {
        String name = "\"" + steps[i] + "\"";
        return i < steps.length - 1 ? "an entry of " + name : name;
      }
    }
    return "the layout rule";
  }

  private static String argument(Error error, int index) {
    Object[] arguments = error.getArguments();
    return arguments == null || arguments.length <= index
        ? error.getMessage()
        : String.valueOf(arguments[index]);
  }

  private static JsonNode read() {
    try (InputStream in = RuleSchema.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException("the program file lacks its schema " + RESOURCE);
      }
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
