package commonsheet.export.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.compare.Condition;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.Requirement;
import commonsheet.export.Caution;
import commonsheet.export.Printed;
import commonsheet.record.JsonText;
import java.util.List;

/** A report as JSON by schemas/comparison.schema.json. */
final class ReportJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private ReportJson() {}

  /** The text of the file. */
  static String of(Report report) {
    return JsonText.of(tree(report), Numbers.DIGITS);
  }

  static ObjectNode tree(Report report) {
    ObjectNode tree = NODES.objectNode();
    tree.put("schema", "commonsheet/comparison/1");
    tree.put("caution", Caution.TEXT);
    tree.set("condition", condition(report.condition()));
    if (report.shortlist().requirement() != null) {
      tree.set("requirement", requirement(report.shortlist().requirement()));
    }
    tree.put("rankedBy", report.shortlist().rankedBy().label());
    tree.set("remarks", words(report.shortlist().remarks()));
    ArrayNode measures = tree.putArray("measures");
    for (Measure measure : Measure.values()) {
      measure(measures, measure.label(), measure.unit(), measure.title())
          .put("meaning", measure.meaning());
    }
    if (report.hasPacks()) {
      ArrayNode packs = tree.putArray("packMeasures");
      for (PackMeasure measure : PackMeasure.values()) {
        measure(packs, measure.label(), measure.unit(), measure.title());
      }
    }
    ArrayNode cells = tree.putArray("cells");
    report.cells().forEach(cell -> cells.add(CellJson.of(cell)));
    return tree;
  }

  private static ObjectNode measure(ArrayNode list, String name, String unit, String title) {
    return list.addObject().put("name", name).put("unit", unit).put("title", title);
  }

  private static ObjectNode condition(Condition condition) {
    ObjectNode node = NODES.objectNode();
    Load load = condition.load();
    ArrayNode shares = node.putArray("load");
    load.shares()
        .forEach(s -> shares.addObject().put("current", s.current()).put("time", s.time()));
    node.put("averageCurrent", load.averageCurrent());
    node.put("peakCurrent", load.peak());
    node.put("cutoffVoltage", condition.cutoffVoltage());
    node.put("temperature", condition.temperature());
    node.put("reserve", condition.reserve());
    node.putObject("tolerance")
        .put("voltage", condition.tolerance().voltage())
        .put("temperature", condition.tolerance().temperature());
    return node;
  }

  private static ObjectNode requirement(Requirement asked) {
    ObjectNode node = NODES.objectNode();
    node.put("averageCurrent", asked.averageCurrent());
    node.put("peakCurrent", asked.peakCurrent());
    node.put("packs", asked.packs());
    node.put("series", asked.series());
    node.put("parallel", asked.parallel());
    node.put("factor", asked.factor());
    node.put("massAllowance", asked.massAllowance());
    if (asked.cruiseSpeed() != null) {
      node.put("cruiseSpeed", asked.cruiseSpeed());
    }
    node.put("ratingPerCell", asked.ratingPerCell());
    return node;
  }

  static ArrayNode words(List<String> sentences) {
    ArrayNode list = NODES.arrayNode();
    sentences.stream().map(Printed::clean).forEach(list::add);
    return list;
  }
}
