package commonsheet.export.sizing;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.export.Printed;
import commonsheet.record.Conditions;
import java.util.Collection;
import java.util.List;

/** Rows as JSON objects: null for what is missing. */
final class JsonFields {
  /** Gives back every number a record holds, without the noise of binary ones. */
  static final int DIGITS = 8;

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private JsonFields() {}

  static <T> ObjectNode object(List<Field<T>> fields, T row) {
    ObjectNode object = NODES.objectNode();
    fields.forEach(field -> object.set(field.name(), node(field.value().apply(row))));
    return object;
  }

  static JsonNode node(Object value) {
    if (value == null) {
      return NODES.nullNode();
    }
    if (value instanceof Double number) {
      return NODES.numberNode(number);
    }
    if (value instanceof Integer number) {
      return NODES.numberNode(number);
    }
    if (value instanceof Conditions conditions) {
      ObjectNode object = NODES.objectNode();
      conditions.values().forEach((name, number) -> object.put(name, number));
      return object;
    }
    if (value instanceof Collection<?> values) {
      return array(values);
    }
    return NODES.textNode(Printed.clean(value.toString()));
  }

  static ArrayNode array(Collection<?> values) {
    ArrayNode array = NODES.arrayNode();
    values.forEach(value -> array.add(node(value)));
    return array;
  }
}
