package commonsheet.workbench.http;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a request gives, member by member. Every member that is not of its kind is refused with a
 * sentence; only our own pages make requests, so these sentences are for whoever writes pages.
 */
public final class Given {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  /** No text that a person types is longer; characters. */
  private static final int LONGEST = 10_000;

  private final JsonNode members;
  private final String name;

  private Given(JsonNode members, String name) {
    this.members = members;
    this.name = name;
  }

  /**
   * The body of a request.
   *
   * @throws Refusal where it is no JSON object
   */
  public static Given of(Context request) {
    try {
      return of(JSON.readTree(request.bodyAsBytes()), "the request");
    } catch (JacksonException noJson) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE, "The request is no JSON; load the page anew and do it again.");
    } catch (IOException broken) {
      throw new Refusal(Refusal.Kind.UNUSABLE, "The request broke off; do it again.");
    }
  }

  /** A JSON object. */
  private static Given of(JsonNode node, String name) {
    if (node == null || !node.isObject()) {
      throw new Refusal(
          Refusal.Kind.UNUSABLE,
          Character.toUpperCase(name.charAt(0)) + name.substring(1) + " has to be a JSON object.");
    }
    return new Given(node, name);
  }

  /** Whether a member is there; one that is null counts as there. */
  public boolean has(String member) {
    return members.has(member);
  }

  /** A text, or null where there is none. */
  public String text(String member) {
    JsonNode node = members.get(member);
    if (node == null || node.isNull()) {
      return null;
    }
    if (!node.isTextual() || node.textValue().length() > LONGEST) {
      throw wrong(member, "a text of at most " + LONGEST + " characters");
    }
    return node.textValue();
  }

  /** A text that has to be there. */
  public String required(String member) {
    String text = text(member);
    if (text == null || text.isBlank()) {
      throw wrong(member, "a text");
    }
    return text;
  }

  /** Yes or no; no where it is not said. */
  public boolean flag(String member) {
    JsonNode node = members.get(member);
    if (node != null && !node.isNull() && !node.isBoolean()) {
      throw wrong(member, "true or false");
    }
    return node != null && node.asBoolean();
  }

  /** A finite number, or null where there is none. */
  public Double number(String member) {
    JsonNode node = members.get(member);
    return node == null || node.isNull() ? null : number(node, member);
  }

  /** A whole number that has to be there. */
  public int whole(String member) {
    JsonNode node = members.get(member);
    if (node == null || !node.isIntegralNumber() || !node.canConvertToInt()) {
      throw wrong(member, "a whole number");
    }
    return node.intValue();
  }

  /** Texts; none where there are none. */
  public List<String> texts(String member) {
    List<String> texts = new ArrayList<>();
    for (JsonNode each : list(member)) {
      if (!each.isTextual() || each.textValue().length() > LONGEST) {
        throw wrong(member, "a list of texts");
      }
      texts.add(each.textValue());
    }
    return texts;
  }

  /** Finite numbers; none where there are none. */
  public List<Double> numbers(String member) {
    List<Double> numbers = new ArrayList<>();
    for (JsonNode each : list(member)) {
      numbers.add(number(each, member));
    }
    return numbers;
  }

  /** Objects; none where there are none. */
  public List<Given> objects(String member) {
    List<Given> objects = new ArrayList<>();
    for (JsonNode each : list(member)) {
      objects.add(of(each, "each of \"" + member + "\""));
    }
    return objects;
  }

  /** An object, or null where there is none. */
  public Given object(String member) {
    JsonNode node = members.get(member);
    return node == null || node.isNull() ? null : of(node, "\"" + member + "\"");
  }

  /** The names of its members. */
  public List<String> names() {
    return members.properties().stream().map(Map.Entry::getKey).toList();
  }

  private JsonNode list(String member) {
    JsonNode node = members.path(member);
    if (!node.isMissingNode() && !node.isNull() && !node.isArray()) {
      throw wrong(member, "a list");
    }
    return node;
  }

  private Double number(JsonNode node, String member) {
    if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
      throw wrong(member, "made of numbers");
    }
    return node.doubleValue();
  }

  private Refusal wrong(String member, String kind) {
    return new Refusal(
        Refusal.Kind.UNUSABLE, "In " + name + ", \"" + member + "\" has to be " + kind + ".");
  }
}
