package commonsheet.record;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.quantity.PlainNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Prints a JSON tree so that version control shows a changed value as a changed line: one member
 * per line, two spaces per level, lists of numbers and short lists of words on one line.
 */
public final class JsonText {
  /** A sheet prints at most five figures; the sixth keeps conversions exact enough. */
  private static final int SIGNIFICANT_DIGITS = 6;

  /** A list of words no longer than this stays on one line; characters. */
  private static final int SHORT_LIST = 60;

  private final StringBuilder out = new StringBuilder();
  private final int digits;

  private JsonText(int digits) {
    this.digits = digits;
  }

  /**
   * The text of a tree as records have it, with numbers of six significant digits.
   *
   * @throws IllegalArgumentException for a number that is not finite, which JSON cannot hold
   */
  static String of(JsonNode tree) {
    return of(tree, SIGNIFICANT_DIGITS);
  }

  /**
   * The text of a tree, with a line feed at its end.
   *
   * @param digits how many significant digits numbers have at most; those before the decimal point
   *     are never rounded away
   * @throws IllegalArgumentException for a number that is not finite, which JSON cannot hold
   */
  public static String of(JsonNode tree, int digits) {
    JsonText text = new JsonText(digits);
    text.value(tree, "", "");
    return text.out.append('\n').toString();
  }

  private void value(JsonNode node, String indent, String pointer) {
    if (node.isObject()) {
      object(node, indent, pointer);
    } else if (node.isArray()) {
      array(node, indent, pointer);
    } else {
      out.append(plain(node, pointer));
    }
  }

  private void object(JsonNode node, String indent, String pointer) {
    if (node.isEmpty()) {
      out.append("{}");
      return;
    }
    String deeper = indent + "  ";
    String separator = "{\n";
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      out.append(separator).append(deeper).append(quoted(member.getKey())).append(": ");
      value(member.getValue(), deeper, pointer + "/" + member.getKey());
      separator = ",\n";
    }
    out.append('\n').append(indent).append('}');
  }

  private void array(JsonNode node, String indent, String pointer) {
    if (isPlainList(node)) {
      String line = onOneLine(node, pointer);
      if (line.length() <= SHORT_LIST || isNumbers(node)) {
        out.append(line);
        return;
      }
    }
    String deeper = indent + "  ";
    String separator = "[\n";
    for (int i = 0; i < node.size(); i++) {
      out.append(separator).append(deeper);
      value(node.get(i), deeper, pointer + "/" + i);
      separator = ",\n";
    }
    out.append('\n').append(indent).append(']');
  }

  private static boolean isPlainList(JsonNode node) {
    for (JsonNode element : node) {
      if (element.isContainerNode()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isNumbers(JsonNode node) {
    for (JsonNode element : node) {
      if (!element.isNumber() && !element.isNull()) {
        return false;
      }
    }
    return true;
  }

  private String onOneLine(JsonNode list, String pointer) {
    List<String> elements = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      elements.add(plain(list.get(i), pointer + "/" + i));
    }
    return "[" + String.join(", ", elements) + "]";
  }

  private String plain(JsonNode node, String pointer) {
    if (node.isTextual()) {
      return quoted(node.textValue());
    }
    if (node.isFloatingPointNumber()) {
      return number(node.doubleValue(), pointer);
    }
    return node.asText();
  }

  private static String quoted(String text) {
    return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }

  /** No exponent. */
  private String number(double value, String pointer) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          pointer + ": " + value + " is no number that a record can hold");
    }
    return PlainNumber.of(value, digits);
  }
}
