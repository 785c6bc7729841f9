package commonsheet.score;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The member {@code charts} of the scores for scripts. */
final class ChartJson {
  private ChartJson() {}

  static void write(ObjectNode node, List<ChartScore> scores) {
    tally(node.putObject("total"), ChartTally.of(scores));
    ArrayNode sheets = node.putArray("sheets");
    for (ChartScore score : scores) {
      ObjectNode sheet = sheets.addObject();
      sheet.put("sheet", score.sheet());
      tally(sheet.putObject("total"), score.tally());
      ArrayNode charts = sheet.putArray("charts");
      score.charts().forEach(chart -> chart(charts.addObject(), chart));
      curves(sheet.putArray("spurious"), score.spurious());
    }
  }

  private static void tally(ObjectNode node, ChartTally tally) {
    node.put("charts", tally.charts());
    node.put("found", tally.found());
    node.put("axes", tally.axes());
    node.put("whole", tally.whole());
    node.put("curves", tally.curves());
    node.put("right", tally.right());
    node.put("unsure", tally.unsure());
    node.put("complete", tally.complete());
    node.put("wrong", tally.wrong());
    node.put("missed", tally.missed());
    node.put("spurious", tally.spurious());
    node.put("silent", tally.silent());
  }

  private static void chart(ObjectNode node, ChartOutcome chart) {
    node.put("chart", chart.expected().name());
    node.put("kind", chart.expected().kind());
    node.put("page", chart.expected().page());
    node.put("found", chart.found());
    node.put("axes", chart.axesRight());
    node.put("whole", chart.whole());
    curves(node.putArray("curves"), chart.curves());
  }

  private static void curves(ArrayNode nodes, List<CurveOutcome> curves) {
    for (CurveOutcome curve : curves) {
      ObjectNode node = nodes.addObject();
      node.put("outcome", curve.kind().label());
      if (curve.expected() != null && curve.expected().label() != null) {
        node.put("expected", curve.expected().label());
      }
      if (curve.read() != null) {
        ObjectNode read = node.putObject("read");
        read.put("id", curve.read().id());
        if (curve.read().label() != null) {
          read.put("label", curve.read().label());
        }
        read.put("standing", curve.read().standing().label());
      }
      ScoreJson.differences(node, curve.differences());
    }
  }
}
