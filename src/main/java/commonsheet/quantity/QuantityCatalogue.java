package commonsheet.quantity;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The quantities of a cell record with their units, plausible numbers and terms in EMMO and QUDT.
 */
public final class QuantityCatalogue {
  private static final class Standard {
    private static final QuantityCatalogue CATALOGUE =
        new QuantityCatalogue(Resource.read("quantities.yaml"));
  }

  private final Map<String, QuantityKind> kinds = new LinkedHashMap<>();

  private QuantityCatalogue(JsonNode file) {
    for (JsonNode node : file.path("quantities")) {
      QuantityKind kind = kind(node, file.path("prefixes"));
      kinds.put(kind.name(), kind);
    }
  }

  /** The catalogue of quantities.yaml, loaded once. */
  public static QuantityCatalogue standard() {
    return Standard.CATALOGUE;
  }

  /**
   * The quantity of a name.
   *
   * @throws IllegalArgumentException if there is none
   */
  public QuantityKind get(String name) {
    QuantityKind kind = kinds.get(name);
    if (kind == null) {
      throw new IllegalArgumentException(
          "\""
              + name
              + "\" is no quantity; the quantities are "
              + String.join(", ", kinds.keySet()));
    }
    return kind;
  }

  public boolean has(String name) {
    return kinds.containsKey(name);
  }

  /** All quantities in the order of the record's documentation. */
  public List<QuantityKind> all() {
    return List.copyOf(kinds.values());
  }

  private static QuantityKind kind(JsonNode node, JsonNode prefixes) {
    String unit = node.path("unit").asText();
    JsonNode plausible = node.path("plausible");
    return new QuantityKind(
        node.path("name").asText(),
        node.path("label").asText(),
        unit,
        UnitTable.standard().unit(unit).dimension(),
        node.path("range").asBoolean(false),
        plausible.path(0).asDouble(),
        plausible.path(1).asDouble(),
        node.path("source").asText(),
        node.has("emmo") ? iri(node.path("emmo").asText(), prefixes) : null,
        iri(node.path("qudt").asText(), prefixes),
        node.path("description").asText());
  }

  /** A term with its prefix written out. */
  private static String iri(String term, JsonNode prefixes) {
    int colon = term.indexOf(':');
    return prefixes.path(term.substring(0, colon)).asText() + term.substring(colon + 1);
  }
}
