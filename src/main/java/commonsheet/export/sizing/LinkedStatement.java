package commonsheet.export.sizing;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.export.Printed;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.Evidence;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Statements as nodes of linked data, each with its conditions and its place on the sheet. */
final class LinkedStatement {
  /** What a place within a PDF is named by; RFC 8118 replaced it, Web Annotation still names it. */
  private static final String PDF_PLACES = "http://tools.ietf.org/rfc/rfc3778";

  /** Terms that name a limit, so that a limit is their value. */
  private static final Set<String> LIMITS =
      Set.of(
          "MinimumCapacity",
          "UpperVoltageLimit",
          "LowerVoltageLimit",
          "MaximumContinuousChargingCurrent",
          "MaximumContinuousDischargingCurrent",
          "MaximumPulseDischargingCurrent");

  private static final LinkedTerms TERMS = LinkedTerms.standard();

  private final String cell;
  private final String sheet;

  /**
   * @param cell IRI of the cell
   * @param sheet IRI of the sheet, or null
   */
  LinkedStatement(String cell, String sheet) {
    this.cell = cell;
    this.sheet = sheet;
  }

  /** Adds a statement to the properties of its cell; a range may become two, one for each end. */
  void add(Statement statement, ArrayNode properties) {
    List<String> ends = TERMS.ranges().get(statement.quantity());
    if (ends == null || statement.value() != null) {
      String term = TERMS.of(statement);
      ObjectNode node = node(statement, term, "", properties);
      numbers(node, statement, term);
      rest(node, statement);
      return;
    }
    if (statement.low() != null) {
      ObjectNode low = node(statement, ends.get(0), "-low", properties);
      value(low, statement.low(), true);
      rest(low, statement);
    }
    if (statement.high() != null) {
      ObjectNode high = node(statement, ends.get(1), "-high", properties);
      value(high, statement.high(), true);
      rest(high, statement);
    }
  }

  private ObjectNode node(Statement statement, String term, String end, ArrayNode properties) {
    ObjectNode node = properties.addObject();
    node.put("@id", cell + '#' + statement.id() + end);
    ArrayNode types = node.putArray("@type").add("Statement");
    if (term != null) {
      types.add(term);
    }
    node.put("quantity", statement.quantity());
    if (statement.statistic() != null) {
      node.put("statistic", statement.statistic().label());
    }
    return node;
  }

  /** A limit is a bound of the quantity, and no value of it, unless the term names the limit. */
  private static void numbers(ObjectNode node, Statement statement, String term) {
    boolean exact = term != null;
    Double low = statement.low();
    Double high = statement.high();
    Double value = statement.value();
    if (value != null && !(exact && LIMITS.contains(term))) {
      if (statement.statistic() == Statistic.MAXIMUM) {
        high = value;
        value = null;
      } else if (statement.statistic() == Statistic.MINIMUM) {
        low = value;
        value = null;
      }
    }
    if (value != null) {
      value(node, value, exact);
    }
    if (low != null) {
      node.put("lowerBound", low);
    }
    if (high != null) {
      node.put("upperBound", high);
    }
  }

  private static void value(ObjectNode node, double value, boolean emmo) {
    node.put("numericValue", value);
    if (emmo) {
      node.putObject("hasNumericalPart").put("@type", "RealData").put("hasNumberValue", value);
    }
  }

  private void rest(ObjectNode node, Statement statement) {
    String unit = TERMS.unit(statement.unit());
    node.put("hasMeasurementUnit", unit);
    node.put("hasUnit", unit);
    node.put("hasQuantityKind", QuantityCatalogue.standard().get(statement.quantity()).qudt());
    conditions(node, statement);
    node.put("standing", statement.standing().label());
    place(node, statement.evidence());
  }

  private static void conditions(ObjectNode node, Statement statement) {
    if (statement.conditions().isEmpty()) {
      return;
    }
    ArrayNode conditions = node.putArray("condition");
    statement
        .conditions()
        .values()
        .forEach(
            (name, value) -> {
              ObjectNode condition = conditions.addObject();
              ArrayNode types = condition.putArray("@type").add("Condition");
              String term = TERMS.conditions().get(name);
              if (term != null) {
                types.add(term);
              }
              condition.put("quantity", name);
              condition.put("numericValue", value);
              condition.put("hasUnit", TERMS.unit(TERMS.conditionUnits().get(name)));
            });
  }

  private void place(ObjectNode node, Evidence evidence) {
    if (sheet == null || evidence == null || evidence.page() == null) {
      return;
    }
    ObjectNode place = node.putObject("wasDerivedFrom").put("@type", "SpecificResource");
    place.put("hasSource", sheet);
    ObjectNode selector = place.putObject("hasSelector").put("@type", "FragmentSelector");
    selector.put("conformsTo", PDF_PLACES);
    selector.put("value", "page=" + evidence.page() + box(evidence.box()));
    if (evidence.text() != null) {
      selector
          .putObject("refinedBy")
          .put("@type", "TextQuoteSelector")
          .put("exact", Printed.clean(evidence.text()));
    }
  }

  private static String box(List<Double> box) {
    return box.isEmpty()
        ? ""
        : "&viewrect=" + box.stream().map(Printed::number).collect(Collectors.joining(","));
  }
}
