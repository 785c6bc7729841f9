package commonsheet.export.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.compare.DischargeLine;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.export.Printed;
import commonsheet.record.Cell;
import commonsheet.record.Review;
import java.util.List;

/** A cell of a report as JSON. Members that the sheet says nothing about are absent. */
final class CellJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private CellJson() {}

  static ObjectNode of(ReportedCell cell) {
    ObjectNode node = NODES.objectNode();
    node.put("rank", cell.rank());
    node.put("id", cell.record().id());
    node.set("cell", names(cell.cell()));
    node.put("verdict", cell.contender().verdict().label());
    put(node, "margin", cell.contender().margin());
    node.put("reason", Printed.clean(cell.contender().reason()));
    ObjectNode figures = node.putObject("figures");
    for (Measure measure : Measure.values()) {
      figures.set(measure.label(), figure(cell.figure(measure)));
    }
    if (cell.contender().pack() != null) {
      ObjectNode pack = node.putObject("pack");
      for (PackMeasure measure : PackMeasure.values()) {
        pack.set(measure.label(), figure(measure.of(cell.contender().pack())));
      }
    }
    ArrayNode curves = node.putArray("curves");
    cell.discharges().forEach(line -> curves.add(curve(line)));
    ArrayNode delivered = node.putArray("delivered");
    cell.delivered().forEach(given -> delivered.add(delivered(given)));
    node.set("source", source(SheetUsed.of(cell)));
    node.set("review", review(SheetUsed.review(cell)));
    return node;
  }

  private static ObjectNode names(Cell cell) {
    ObjectNode node = NODES.objectNode();
    put(node, "maker", cell.maker());
    put(node, "model", cell.model());
    put(node, "designation", cell.designation());
    put(node, "chemistry", cell.chemistry());
    put(node, "form", cell.form());
    put(node, "sizeCode", cell.sizeCode());
    return node;
  }

  private static ObjectNode figure(Figure figure) {
    ObjectNode node = NODES.objectNode();
    put(node, "value", figure.value());
    put(node, "low", figure.low());
    put(node, "high", figure.high());
    node.put("origin", figure.origin().label());
    node.set("from", ReportJson.words(figure.from()));
    node.set("notes", ReportJson.words(figure.notes()));
    node.put("unsure", figure.unsure());
    return node;
  }

  private static ObjectNode curve(DischargeLine line) {
    ObjectNode node = NODES.objectNode();
    node.put("curve", line.curve());
    node.put("current", line.current());
    put(node, "temperature", line.temperature());
    node.put("unsure", line.unsure());
    node.set("charge", numbers(line.charge()));
    node.set("voltage", numbers(line.voltage()));
    return node;
  }

  private static ObjectNode delivered(Delivered given) {
    ObjectNode node = NODES.objectNode();
    node.put("current", given.current());
    node.put("digitised", given.digitised());
    node.set("capacity", figure(given.capacity()));
    node.set("energy", figure(given.energy()));
    return node;
  }

  private static ObjectNode source(SheetUsed source) {
    ObjectNode node = NODES.objectNode();
    put(node, "title", source.title());
    put(node, "document", source.document());
    put(node, "revision", source.revision());
    put(node, "date", source.date());
    put(node, "file", source.file());
    put(node, "sha256", source.sha256());
    ArrayNode pages = node.putArray("pages");
    source.pages().forEach(pages::add);
    return node;
  }

  private static ObjectNode review(Review review) {
    ObjectNode node = NODES.objectNode();
    put(node, "state", review.state());
    put(node, "approvedBy", review.approvedBy());
    put(node, "approvedAt", review.approvedAt());
    return node;
  }

  private static ArrayNode numbers(List<Double> values) {
    ArrayNode list = NODES.arrayNode();
    values.forEach(list::add);
    return list;
  }

  private static void put(ObjectNode node, String name, Double value) {
    if (value != null) {
      node.put(name, value);
    }
  }

  private static void put(ObjectNode node, String name, String text) {
    String clean = Printed.clean(text);
    if (!clean.isEmpty()) {
      node.put(name, clean);
    }
  }
}
