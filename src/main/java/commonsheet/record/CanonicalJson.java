package commonsheet.record;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.quantity.PlainNumber;
import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;

/**
 * The canonical text of a JSON tree by RFC 8785: members sorted, no spaces, numbers as ECMAScript
 * prints them. Numbers are rounded as record files round them, so that a record and its file have
 * one text.
 */
final class CanonicalJson {
  private static final int SIGNIFICANT_DIGITS = 6;

  /** From these on ECMAScript prints numbers with an exponent. */
  private static final BigDecimal SMALL = new BigDecimal("1e-6");

  private static final BigDecimal LARGE = new BigDecimal("1e21");

  private final StringBuilder out = new StringBuilder();

  private CanonicalJson() {}

  static String of(JsonNode tree) {
    CanonicalJson text = new CanonicalJson();
    text.value(tree);
    return text.out.toString();
  }

  private void value(JsonNode node) {
    if (node.isObject()) {
      object(node);
    } else if (node.isArray()) {
      array(node);
    } else if (node.isTextual()) {
      string(node.textValue());
    } else if (node.isFloatingPointNumber()) {
      out.append(number(node.doubleValue()));
    } else {
      out.append(node.asText());
    }
  }

  private void object(JsonNode node) {
    Map<String, JsonNode> sorted = new TreeMap<>();
    node.properties().forEach(member -> sorted.put(member.getKey(), member.getValue()));
    String separator = "{";
    for (Map.Entry<String, JsonNode> member : sorted.entrySet()) {
      out.append(separator);
      string(member.getKey());
      out.append(':');
      value(member.getValue());
      separator = ",";
    }
    out.append(sorted.isEmpty() ? "{}" : "}");
  }

  private void array(JsonNode node) {
    out.append('[');
    for (int i = 0; i < node.size(); i++) {
      if (i > 0) {
        out.append(',');
      }
      value(node.get(i));
    }
    out.append(']');
  }

  private void string(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\b' -> out.append("\\b");
        case '\t' -> out.append("\\t");
        case '\n' -> out.append("\\n");
        case '\f' -> out.append("\\f");
        case '\r' -> out.append("\\r");
        default -> {
          if (c < ' ') {
            out.append("\\u00").append(c < 0x10 ? "0" : "").append(Integer.toHexString(c));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }

  private static String number(double value) {
    String plain = PlainNumber.of(value, SIGNIFICANT_DIGITS);
    BigDecimal exact = new BigDecimal(plain).stripTrailingZeros();
    BigDecimal size = exact.abs();
    if (exact.signum() == 0 || (size.compareTo(SMALL) >= 0 && size.compareTo(LARGE) < 0)) {
      return plain;
    }
    String digits = exact.unscaledValue().abs().toString();
    int exponent = digits.length() - 1 - exact.scale();
    return (exact.signum() < 0 ? "-" : "")
        + digits.charAt(0)
        + (digits.length() > 1 ? "." + digits.substring(1) : "")
        + (exponent < 0 ? "e-" : "e+")
        + Math.abs(exponent);
  }
}
