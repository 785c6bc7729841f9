package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Predicate;

/**
 * Spares the schema the points of curves and the ticks of their axes: most of a record is pairs of
 * numbers, which can be told to be just that ten times faster than by a schema validator. A list
 * with anything else in it is left whole, so that the schema says what is wrong and where.
 */
final class SparedPoints {
  /** So many of a list are left to the schema, which asks for one at least. */
  private static final int LEFT = 2;

  private SparedPoints() {}

  /** The record with a few points and ticks for each curve, where all of them are sound. */
  static JsonNode of(JsonNode record) {
    JsonNode curves = record.get("curves");
    if (!record.isObject() || curves == null || !curves.isArray()) {
      return record;
    }
    ArrayNode spared = JsonNodeFactory.instance.arrayNode(curves.size());
    for (JsonNode curve : curves) {
      spared.add(ofCurve(curve));
    }
    return shallow(record).set("curves", spared);
  }

  private static JsonNode ofCurve(JsonNode curve) {
    if (!curve.isObject()) {
      return curve;
    }
    ObjectNode copy = shallow(curve);
    shorten(copy, "points", SparedPoints::isPair);
    for (String axis : new String[] {"x", "y"}) {
      if (copy.get(axis) != null && copy.get(axis).isObject()) {
        ObjectNode shorter = shallow(copy.get(axis));
        shorten(shorter, "ticks", SparedPoints::isTick);
        copy.set(axis, shorter);
      }
    }
    return copy;
  }

  private static void shorten(ObjectNode node, String list, Predicate<JsonNode> sound) {
    JsonNode members = node.get(list);
    if (members == null || !members.isArray() || members.size() <= LEFT) {
      return;
    }
    for (JsonNode member : members) {
      if (!sound.test(member)) {
        return;
      }
    }
    ArrayNode few = JsonNodeFactory.instance.arrayNode(LEFT);
    for (int i = 0; i < LEFT; i++) {
      few.add(members.get(i));
    }
    node.set(list, few);
  }

  private static boolean isPair(JsonNode point) {
    return point.isArray()
        && point.size() == 2
        && point.get(0).isNumber()
        && point.get(1).isNumber();
  }

  private static boolean isTick(JsonNode tick) {
    return tick.isObject()
        && tick.size() == 3
        && tick.path("at").isNumber()
        && tick.path("value").isNumber()
        && !tick.path("text").asText("").isEmpty()
        && tick.path("text").isTextual();
  }

  private static ObjectNode shallow(JsonNode node) {
    ObjectNode copy = JsonNodeFactory.instance.objectNode();
    copy.setAll((ObjectNode) node);
    return copy;
  }
}
