package commonsheet.columns;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The names of columns, from columns.yaml. */
public final class ColumnVocabulary {
  /**
   * What a name stands for.
   *
   * @param unit UCUM code of the unit the quantity is kept in
   * @param rank place among the names of the quantity; lower is preferred
   * @param fixesUnit whether the name itself says that the column is in {@code unit}
   */
  public record Meaning(String quantity, String unit, int rank, boolean fixesUnit) {}

  private static final class Standard {
    private static final ColumnVocabulary VOCABULARY = new ColumnVocabulary(read());
  }

  private final Map<String, Meaning> meanings = new HashMap<>();
  private final Map<List<String>, String> kinds = new HashMap<>();

  private ColumnVocabulary(JsonNode file) {
    for (JsonNode node : file.path("quantities")) {
      String quantity = node.path("quantity").asText();
      String unit = node.path("unit").asText();
      if (node.has("bdf")) {
        meanings.put(folded(node.path("bdf").asText()), new Meaning(quantity, unit, 0, true));
      }
      int rank = 1;
      for (JsonNode name : node.path("names")) {
        meanings.put(folded(name.asText()), new Meaning(quantity, unit, rank++, false));
      }
      meanings.putIfAbsent(folded(quantity), new Meaning(quantity, unit, 1, false));
    }
    for (JsonNode node : file.path("kinds")) {
      kinds.put(
          List.of(node.path("x").asText(), node.path("y").asText()), node.path("kind").asText());
    }
  }

  public static ColumnVocabulary standard() {
    return Standard.VOCABULARY;
  }

  /** What a name stands for, in any case and with any kind of space; null for none. */
  public Meaning meaning(String name) {
    return meanings.get(folded(name));
  }

  /** What a chart of two quantities shows; null where that is left open. */
  public String kind(String x, String y) {
    return kinds.get(List.of(x, y));
  }

  private static String folded(String name) {
    return Normalizer.normalize(name, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\s_.]+", " ")
        .strip();
  }

  private static JsonNode read() {
    try (InputStream in = ColumnVocabulary.class.getResourceAsStream("columns.yaml")) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file columns/columns.yaml");
      }
      return new ObjectMapper(new YAMLFactory()).readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's file columns/columns.yaml is broken", e);
    }
  }
}
