package commonsheet.score;

import static commonsheet.score.Invented.capacity;
import static commonsheet.score.Invented.capacityRow;
import static commonsheet.score.Invented.record;
import static commonsheet.score.Invented.row;
import static commonsheet.score.Invented.standing;
import static commonsheet.score.Invented.statement;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.record.Standing;
import commonsheet.record.Statistic;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One report with every kind of outcome, against the texts under src/test/resources/score. */
class ScoreReportTest {
  private static final ScoreReport REPORT =
      new ScoreReport(
          List.of(
              Scorer.score(
                  new Truth(
                      "heron-18650",
                      null,
                      List.of(
                          capacityRow(Statistic.MINIMUM, 2.5, "dischargeRate", 0.2),
                          capacityRow(Statistic.TYPICAL, 2.6, "dischargeRate", 0.2),
                          row("mass", null, 48.0, 47.0, 49.0, "g"),
                          row(
                              "storageTemperature",
                              null,
                              null,
                              -20.0,
                              45.0,
                              "Cel",
                              "duration",
                              2592000)),
                      List.of(
                          new TruthField("cell.maker", "TARN CELLS", 1, "TARN CELLS"),
                          new TruthField("cell.model", "Heron 25", 1, "Model: Heron 25"),
                          new TruthField("cell.form", "cylindrical", 1, "cylindrical cell"))),
                  record(
                      capacity("s1", Statistic.MINIMUM, 2.5, "dischargeRate", 0.2),
                      standing(Standing.UNSURE, capacity("s2", Statistic.NOMINAL, 2.6)),
                      statement("s3", "mass", null, 48.0, 47.0, 49.0, "g"),
                      statement("s4", "mass", null, 48.0, 47.0, 49.0, "g"),
                      statement("s5", "height", Statistic.MAXIMUM, 65.3, null, null, "mm"))),
              Scorer.score(
                  new Truth("egret", null, List.of(capacityRow(null, 5.0)), List.of()),
                  record(capacity("s1", null, 5.0)))));

  @Test
  void table() throws IOException {
    Golden.assertMatches("score/table.txt", REPORT.table());
  }

  @Test
  void listing() throws IOException {
    Golden.assertMatches("score/listing.txt", REPORT.listing());
  }

  @Test
  void json() throws IOException {
    Golden.assertMatches("score/report.json", REPORT.json());
    JsonNode total = new ObjectMapper().readTree(REPORT.json()).get("total");
    assertEquals(3, total.get("right").asInt());
    assertEquals(0.6, total.get("recall").asDouble());
  }

  @Test
  void nothingScoredPrintsNoFigures() throws IOException {
    ScoreReport nothing = new ScoreReport(List.of());
    assertEquals("", nothing.listing());
    assertEquals(
        true, new ObjectMapper().readTree(nothing.json()).get("total").get("recall").isNull());
  }

  @Test
  void printedWordsCannotSteerTheTerminal() {
    Truth truth =
        new Truth(
            "egret",
            null,
            List.of(),
            List.of(new TruthField("cell.maker", "\u001b[2J", 1, "a\nb\u0007")));
    String listing = new ScoreReport(List.of(Scorer.score(truth, null))).listing();
    assertFalse(listing.contains("\u001b"));
    assertFalse(listing.contains("\u0007"));
  }
}
