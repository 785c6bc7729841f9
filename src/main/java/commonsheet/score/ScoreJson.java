package commonsheet.score;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.OptionalDouble;

/** The scores for scripts. Members are added, never renamed, within one version of the form. */
final class ScoreJson {
  static final String FORM = "commonsheet/score/1";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private ScoreJson() {}

  static String text(ScoreReport report) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("form", FORM);
    tally(root.putObject("total"), report.total());
    ObjectNode quantities = root.putObject("quantities");
    report.byQuantity().forEach((name, tally) -> tally(quantities.putObject(name), tally));
    ArrayNode sheets = root.putArray("sheets");
    report.scores().forEach(score -> sheet(sheets.addObject(), score));
    if (!report.charts().isEmpty()) {
      ChartJson.write(root.putObject("charts"), report.charts());
    }
    try {
      return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root) + '\n';
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  private static void sheet(ObjectNode node, SheetScore score) {
    node.put("sheet", score.sheet());
    tally(node.putObject("total"), score.tally());
    ArrayNode outcomes = node.putArray("outcomes");
    score.outcomes().forEach(outcome -> outcome(outcomes.addObject(), outcome));
    ArrayNode fields = node.putArray("cell");
    score.fields().forEach(field -> field(fields.addObject(), field));
  }

  private static void tally(ObjectNode node, Tally tally) {
    node.put("truth", tally.truthRows());
    node.put("right", tally.right());
    node.put("wrong", tally.wrong());
    node.put("missed", tally.missed());
    node.put("spurious", tally.spurious());
    node.put("repeated", tally.repeated());
    ratio(node, "recall", tally.recall());
    ratio(node, "precision", tally.precision());
    ObjectNode standings = node.putObject("standings");
    for (Standing standing : Standing.values()) {
      Tally.Share share = tally.of(standing);
      if (standing != Standing.REJECTED) {
        ObjectNode of = standings.putObject(standing.label());
        of.put("right", share.right());
        of.put("statements", share.statements());
        ratio(of, "precision", share.ratio());
      }
    }
  }

  private static void ratio(ObjectNode node, String name, OptionalDouble ratio) {
    if (ratio.isPresent()) {
      node.put(name, ratio.getAsDouble());
    } else {
      node.putNull(name);
    }
  }

  private static void outcome(ObjectNode node, Outcome outcome) {
    node.put("outcome", outcome.kind().label());
    node.put("quantity", outcome.quantity());
    TruthRow row = outcome.expected();
    if (row != null) {
      ObjectNode expected = node.putObject("expected");
      numbers(
          expected,
          row.statistic(),
          row.value(),
          row.low(),
          row.high(),
          row.unit(),
          row.conditions());
      put(expected, "page", row.page());
      put(expected, "text", row.text());
    }
    if (outcome.read() != null) {
      read(node.putObject("read"), outcome.read());
    }
    differences(node, outcome.differences());
  }

  private static void read(ObjectNode node, Statement read) {
    node.put("id", read.id());
    numbers(
        node,
        read.statistic(),
        read.value(),
        read.low(),
        read.high(),
        read.unit(),
        read.conditions());
    node.put("standing", read.standing().label());
    Evidence evidence = read.evidence();
    if (evidence != null) {
      put(node, "page", evidence.page());
      put(node, "text", evidence.text());
      put(node, "rule", evidence.rule());
    }
    if (!read.doubts().isEmpty()) {
      ArrayNode doubts = node.putArray("doubts");
      read.doubts().forEach(doubts::add);
    }
  }

  private static void numbers(
      ObjectNode node,
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      String unit,
      Conditions conditions) {
    put(node, "statistic", statistic == null ? null : statistic.label());
    put(node, "value", value);
    put(node, "low", low);
    put(node, "high", high);
    put(node, "unit", unit);
    ObjectNode of = node.putObject("conditions");
    conditions.values().forEach(of::put);
  }

  static void differences(ObjectNode node, List<Difference> differences) {
    if (differences.isEmpty()) {
      return;
    }
    ArrayNode all = node.putArray("differences");
    for (Difference difference : differences) {
      ObjectNode one = all.addObject();
      one.put("in", difference.in());
      put(one, "expected", difference.expected());
      put(one, "read", difference.read());
    }
  }

  private static void field(ObjectNode node, FieldOutcome field) {
    node.put("field", field.expected().name());
    node.put("outcome", field.kind().label());
    node.put("expected", field.expected().expected());
    put(node, "read", field.read());
    put(node, "page", field.expected().page());
  }

  /** Leaves out what is absent. */
  private static void put(ObjectNode node, String name, Object value) {
    if (value != null) {
      node.putPOJO(name, value);
    }
  }
}
