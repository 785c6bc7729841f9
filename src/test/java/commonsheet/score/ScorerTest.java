package commonsheet.score;

import static commonsheet.score.Invented.capacity;
import static commonsheet.score.Invented.capacityRow;
import static commonsheet.score.Invented.record;
import static commonsheet.score.Invented.row;
import static commonsheet.score.Invented.standing;
import static commonsheet.score.Invented.statement;
import static commonsheet.score.Invented.truth;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Cell;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rules of right, wrong, missed and spurious are this project's own; see docs/score.md. */
class ScorerTest {
  @Test
  void aStatementThatSaysWhatTheSheetSaysIsRight() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(Statistic.MINIMUM, 2.5, "dischargeRate", 0.2)),
            record(capacity("s1", Statistic.MINIMUM, 2.5, "dischargeRate", 0.2)));
    assertEquals(List.of(Outcome.Kind.RIGHT), kinds(score));
    assertEquals(1.0, score.tally().recall().getAsDouble());
    assertEquals(1.0, score.tally().precision().getAsDouble());
  }

  @Test
  void conditionsBeyondThoseOfTheTruthDoNoHarm() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(null, 2.5)),
            record(capacity("s1", null, 2.5, "dischargeRate", 0.2, "temperature", 23)));
    assertEquals(List.of(Outcome.Kind.RIGHT), kinds(score));
  }

  @ParameterizedTest
  @CsvSource({"2.5125,RIGHT", "2.4875,RIGHT", "2.5126,WRONG", "2.4874,WRONG", "25,WRONG"})
  void aValueMayBeOffByHalfAPercent(double read, Outcome.Kind kind) {
    SheetScore score =
        Scorer.score(truth(capacityRow(null, 2.5)), record(capacity("s1", null, read)));
    assertEquals(List.of(kind), kinds(score));
  }

  @ParameterizedTest
  @CsvSource({"0,45,RIGHT", "0.01,45.2,RIGHT", "0.02,45,WRONG", "0,46,WRONG", "0,,WRONG"})
  void bothBoundsOfARangeCount(Double low, Double high, Outcome.Kind kind) {
    SheetScore score =
        Scorer.score(
            truth(row("chargeTemperature", null, null, 0.0, 45.0, "Cel")),
            record(statement("s1", "chargeTemperature", null, null, low, high, "Cel")));
    assertEquals(List.of(kind), kinds(score));
  }

  @Test
  void aToleranceCountsAsMuchAsItsValue() {
    Truth truth = truth(row("chargeCutoffCurrent", null, 0.08, 0.075, 0.085, "A"));
    Statement exact = statement("s1", "chargeCutoffCurrent", null, 0.08, 0.075, 0.085, "A");
    Statement loose = statement("s1", "chargeCutoffCurrent", null, 0.08, 0.08, 0.08, "A");
    Statement bare = statement("s1", "chargeCutoffCurrent", null, 0.08, null, null, "A");
    assertEquals(List.of(Outcome.Kind.RIGHT), kinds(Scorer.score(truth, record(exact))));
    assertEquals(
        List.of("low 0.08 instead of 0.075", "high 0.08 instead of 0.085"),
        differences(Scorer.score(truth, record(loose))));
    assertEquals(
        List.of("low absent instead of 0.075", "high absent instead of 0.085"),
        differences(Scorer.score(truth, record(bare))));
  }

  @Test
  void aWrongStatementSaysInWhatItDiffers() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(Statistic.MINIMUM, 2.5, "dischargeRate", 0.2, "cutoffVoltage", 2.5)),
            record(capacity("s1", null, 2.6, "dischargeRate", 0.5)));
    assertEquals(
        List.of(
            "statistic absent instead of minimum",
            "value 2.6 instead of 2.5",
            "conditions.dischargeRate 0.5 instead of 0.2",
            "conditions.cutoffVoltage absent instead of 2.5"),
        differences(score));
  }

  @Test
  void aConditionOfZeroMustBeMet() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(null, 2.0, "temperature", 0)),
            record(capacity("s1", null, 2.0, "temperature", 1)));
    assertEquals(List.of("conditions.temperature 1 instead of 0"), differences(score));
  }

  @Test
  void anotherUnitIsNeverRight() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(null, 2.5)),
            record(statement("s1", "capacity", null, 2.5, null, null, "mA.h")));
    assertEquals(List.of("unit mA.h instead of A.h"), differences(score));
  }

  @Test
  void aRowReadWronglyIsMissedAsWell() {
    SheetScore score =
        Scorer.score(truth(capacityRow(null, 2.5)), record(capacity("s1", null, 3.5)));
    assertEquals(1, score.tally().wrong());
    assertEquals(1, score.tally().missed());
    assertEquals(0.0, score.tally().recall().getAsDouble());
    assertEquals(0.0, score.tally().precision().getAsDouble());
  }

  @Test
  void aRowNothingIsReadForIsMissedAndHarmsNoPrecision() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(null, 2.5), row("mass", null, 48.0, null, null, "g")),
            record(capacity("s1", null, 2.5)));
    assertEquals(List.of(Outcome.Kind.RIGHT, Outcome.Kind.MISSED), kinds(score));
    assertEquals(0.5, score.tally().recall().getAsDouble());
    assertEquals(1.0, score.tally().precision().getAsDouble());
  }

  @Test
  void aStatementOfAQuantityTheSheetDoesNotGiveIsSpurious() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(null, 2.5)),
            record(
                capacity("s1", null, 2.5),
                statement("s2", "internalResistanceDC", null, 30.0, null, null, "mOhm")));
    assertEquals(List.of(Outcome.Kind.RIGHT, Outcome.Kind.SPURIOUS), kinds(score));
    assertEquals(0.5, score.tally().precision().getAsDouble());
    assertEquals(0, score.tally().repeated());
  }

  @Test
  void sayingARightThingTwiceIsSpuriousAndCountedAsRepeated() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(Statistic.MINIMUM, 2.5), capacityRow(Statistic.TYPICAL, 2.6)),
            record(capacity("s1", Statistic.MINIMUM, 2.5), capacity("s2", Statistic.MINIMUM, 2.5)));
    assertEquals(
        List.of(Outcome.Kind.RIGHT, Outcome.Kind.MISSED, Outcome.Kind.REPEATED), kinds(score));
    assertEquals(1, score.tally().spurious());
    assertEquals(1, score.tally().repeated());
  }

  @Test
  void aRepetitionThatLacksTheConditionsOfAnOpenRowIsTakenForThatRow() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(null, 2.5), capacityRow(null, 2.5, "dischargeRate", 1)),
            record(capacity("s1", null, 2.5), capacity("s2", null, 2.5)));
    assertEquals(List.of(Outcome.Kind.RIGHT, Outcome.Kind.WRONG), kinds(score));
    assertEquals(List.of("conditions.dischargeRate absent instead of 1"), differences(score));
  }

  @Test
  void theOrderOfStatementsDoesNotCostARightOne() {
    // The first statement is right for both rows, the second for the first row only.
    Statement both = capacity("s1", null, 3.3, "dischargeRate", 0.2, "cutoffVoltage", 2);
    Statement first = capacity("s2", null, 3.3, "dischargeRate", 0.2);
    Truth truth =
        truth(
            capacityRow(null, 3.3, "dischargeRate", 0.2),
            capacityRow(null, 3.3, "dischargeRate", 0.2, "cutoffVoltage", 2));
    for (List<Statement> order : List.of(List.of(both, first), List.of(first, both))) {
      SheetScore score = Scorer.score(truth, record(order.toArray(new Statement[0])));
      assertEquals(2, score.tally().right());
      assertEquals("s2", score.outcomes().get(0).read().id());
    }
  }

  @Test
  void wrongStatementsArePairedWithTheClosestRowsInAll() {
    SheetScore score =
        Scorer.score(
            truth(
                capacityRow(Statistic.MINIMUM, 2.5, "dischargeRate", 0.2),
                capacityRow(Statistic.TYPICAL, 2.6, "dischargeRate", 0.2)),
            record(
                capacity("s1", Statistic.NOMINAL, 2.6, "dischargeRate", 0.2),
                capacity("s2", Statistic.MINIMUM, 2.5)));
    assertEquals(List.of(Outcome.Kind.WRONG, Outcome.Kind.WRONG), kinds(score));
    assertEquals(
        List.of(
            "conditions.dischargeRate absent instead of 0.2",
            "statistic nominal instead of typical"),
        differences(score));
  }

  @Test
  void precisionIsSplitByStandingAndRejectedStatementsAreLeftOut() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(Statistic.MINIMUM, 2.5), capacityRow(Statistic.TYPICAL, 2.6)),
            record(
                capacity("s1", Statistic.MINIMUM, 2.5),
                standing(Standing.UNSURE, capacity("s2", Statistic.TYPICAL, 2.7)),
                standing(Standing.REJECTED, capacity("s3", Statistic.TYPICAL, 2.6))));
    Tally tally = score.tally();
    assertEquals(1.0, tally.of(Standing.READ).ratio().getAsDouble());
    assertEquals(0.0, tally.of(Standing.UNSURE).ratio().getAsDouble());
    assertTrue(tally.of(Standing.REJECTED).ratio().isEmpty());
    assertTrue(tally.of(Standing.CONFIRMED).ratio().isEmpty());
    assertEquals(0.5, tally.precision().getAsDouble());
  }

  @Test
  void countsAreKeptPerQuantity() {
    SheetScore score =
        Scorer.score(
            truth(capacityRow(null, 2.5), row("mass", null, 48.0, null, null, "g")),
            record(capacity("s1", null, 2.5)));
    assertEquals(1, score.tallyByQuantity().get("capacity").right());
    assertEquals(1, score.tallyByQuantity().get("mass").missed());
  }

  @ParameterizedTest
  @CsvSource({
    "cell.maker, TARN cells, RIGHT",
    "cell.maker, Ｔａｒｎ　Ｃｅｌｌｓ, RIGHT",
    "cell.maker, Tarn Cell, WRONG",
    "cell.sizeCode, 18650, RIGHT",
    "cell.form, cylindrical, MISSED"
  })
  void cellFieldsAreComparedByTheirText(String name, String expected, Outcome.Kind kind) {
    Truth truth =
        new Truth(
            "heron-18650",
            null,
            List.of(),
            List.of(new TruthField(name, expected, 1, "as printed")));
    SheetScore score = Scorer.score(truth, record());
    assertEquals(kind, score.fields().get(0).kind());
    assertTrue(score.tally().recall().isEmpty());
  }

  @Test
  void eachTruthOfASheetGoesToTheRecordOfItsModel() {
    Truth small = new Truth("two", "HERON-26", List.of(capacityRow(null, 2.6)), List.of());
    Truth large = new Truth("two", "HERON-35", List.of(capacityRow(null, 3.5)), List.of());
    List<SheetScore> scores =
        Scorer.scoreSheet(
            List.of(small, large),
            List.of(
                record(model("Heron 35"), capacity("s1", null, 3.5)),
                record(model("Heron 26"), capacity("s1", null, 2.6))));
    assertEquals(2, scores.size());
    scores.forEach(score -> assertEquals(List.of(Outcome.Kind.RIGHT), kinds(score)));
  }

  @Test
  void aRecordNoTruthIsForIsSpurious() {
    List<SheetScore> scores =
        Scorer.scoreSheet(
            List.of(truth(capacityRow(null, 2.5))),
            List.of(record(capacity("s1", null, 2.5)), record(capacity("s1", null, 9.9))));
    assertEquals(List.of(Outcome.Kind.RIGHT), kinds(scores.get(0)));
    assertEquals(List.of(Outcome.Kind.SPURIOUS), kinds(scores.get(1)));
  }

  @Test
  void withoutARecordEverythingIsMissed() {
    List<SheetScore> scores = Scorer.scoreSheet(List.of(truth(capacityRow(null, 2.5))), List.of());
    assertEquals(List.of(Outcome.Kind.MISSED), kinds(scores.get(0)));
  }

  private static Cell model(String model) {
    return new Cell("Tarn Cells", model, null, null, null, null, null);
  }

  private static List<Outcome.Kind> kinds(SheetScore score) {
    return score.outcomes().stream().map(Outcome::kind).toList();
  }

  private static List<String> differences(SheetScore score) {
    return score.outcomes().stream()
        .flatMap(outcome -> outcome.differences().stream())
        .map(Difference::toString)
        .toList();
  }
}
