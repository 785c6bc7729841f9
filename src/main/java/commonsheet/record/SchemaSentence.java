package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.ArrayList;
import java.util.List;

/** Says what a failed keyword of a schema means for the file, with the place before it. */
final class SchemaSentence {
  private SchemaSentence() {}

  /**
   * Such as {@code /statements/0/unit: must be "A.h", not "mA.h"}.
   *
   * @param whole what to call the whole of the file, such as {@code the record}
   */
  static String of(Error error, String whole) {
    String pointer = error.getInstanceLocation().toString();
    return (pointer.isEmpty() ? whole : pointer) + ": " + meaning(error);
  }

  private static String meaning(Error error) {
    JsonNode value = error.getInstanceNode();
    return switch (error.getKeyword()) {
      case "required" -> "\"" + argument(error, 0) + "\" is missing";
      case "dependentRequired" ->
          "\"" + argument(error, 0) + "\" is missing beside \"" + argument(error, 1) + "\"";
      case "additionalProperties", "propertyNames" ->
          "\"" + argument(error, 0) + "\" is no known member; check its spelling or remove it";
      case "false" -> "does not belong here";
      case "type" -> "must be of type " + argument(error, 1) + ", not " + argument(error, 0);
      case "const" -> "must be " + error.getSchemaNode() + ", not " + value;
      case "enum" -> value + " is none of " + listed(error.getSchemaNode());
      case "pattern" -> value + " does not have the form " + argument(error, 0);
      case "minLength" -> "must not be empty; leave it out where the sheet does not say it";
      case "maxLength" -> "must have at most " + argument(error, 0) + " characters";
      case "minimum" -> "must be at least " + argument(error, 0) + ", not " + value;
      case "maximum" -> "must be at most " + argument(error, 0) + ", not " + value;
      case "minItems" -> "must have at least " + argument(error, 0) + " entries";
      case "items" -> "has more entries than it may";
      case "uniqueItems" -> "has the same entry twice";
      default -> error.getMessage();
    };
  }

  private static String argument(Error error, int index) {
    Object[] arguments = error.getArguments();
    return arguments == null || arguments.length <= index
        ? error.getMessage()
        : String.valueOf(arguments[index]);
  }

  private static String listed(JsonNode names) {
    List<String> texts = new ArrayList<>();
    names.forEach(name -> texts.add(name.asText()));
    return String.join(", ", texts);
  }
}
