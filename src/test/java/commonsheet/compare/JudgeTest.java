package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratings asked and given; the worked values are common practice, no source. */
class JudgeTest {
  @Test
  void anAverageOfTenAndAPeakOfTwentyFiveAskForACellOfTwentyFive() {
    Requirement machine = machine(10, 25, 1, 1);
    assertEquals(25, machine.ratingPerCell());
    assertEquals(Verdict.CARRIES, Judge.of(null, machine).judge(Judged.rated("a", 25)).verdict());
    Judge.Judgement failed = Judge.of(null, machine).judge(Judged.rated("a", 20));
    assertEquals(Verdict.FAILS, failed.verdict());
    assertEquals(-0.2, failed.margin(), 1e-12);
    assertEquals("rated 20 A, asked 25 A: 20 % too little", failed.reason());
  }

  @Test
  void twiceTheAverageCountsWhereItIsMoreThanThePeak() {
    assertEquals(26, machine(13, 20, 1, 1).ratingPerCell());
    Requirement cautious = new Requirement(13, 20, 1, 1, 1, 3, 0, null);
    assertEquals(39, cautious.ratingPerCell());
  }

  @Test
  void twoPacksOfCellsRatedThirtyFiveCarrySeventyTogether() {
    Judge.Judgement all = Judge.of(null, machine(35, 70, 2, 1)).judge(Judged.rated("a", 35));
    assertEquals(Verdict.CARRIES, all.verdict());
    assertEquals("rated 35 A, asked 35 A: just enough", all.reason());
    assertEquals(
        Verdict.NEAR_MISS,
        Judge.of(null, machine(35, 71, 2, 1)).judge(Judged.rated("a", 35)).verdict());
  }

  @Test
  void twelveToFifteenAmperesFromThemAreLessThanAQuarter() {
    for (double average : new double[] {12, 15}) {
      PackFigures packs = PackSums.of(Judged.rated("a", 35), machine(average, average, 2, 1));
      assertTrue(packs.shareOfRatingAtAverage().value() < 0.25);
      assertEquals(average / 70, packs.shareOfRatingAtAverage().value(), 1e-12);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "25, CARRIES",
    "24.999, NEAR_MISS",
    "22.5, NEAR_MISS",
    "22.4, FAILS",
    "1, FAILS",
    "0.0, FAILS"
  })
  void aTenthTooLittleIsANearMiss(double rated, Verdict verdict) {
    Judge.Judgement judgement =
        Judge.of(null, machine(10, 25, 1, 1)).judge(Judged.rated("a", rated));
    assertEquals(verdict, judgement.verdict());
    assertEquals(rated / 25 - 1, judgement.margin(), 1e-12);
  }

  @Test
  void aSmallShortfallIsNotRoundedAway() {
    String reason = Judge.of(null, machine(10, 25, 1, 1)).judge(Judged.rated("a", 24.999)).reason();
    assertTrue(reason.endsWith("less than 0.1 % too little"), reason);
  }

  @Test
  void withoutARatingNothingIsCarried() {
    Judge judge = Judge.of(null, machine(10, 25, 1, 1));
    CellFigures unrated =
        Judged.cell("a")
            .with(Measure.CURRENT_RATING, Figure.absent("the sheet states no rating"))
            .with(Measure.PULSE_RATING, 100)
            .figures();
    Judge.Judgement judgement = judge.judge(unrated);
    assertEquals(Verdict.NOT_KNOWN, judgement.verdict());
    assertNull(judgement.margin());
    assertEquals("the sheet states no rating", judgement.reason());
    CellFigures atMost =
        Judged.cell("a").with(Measure.CURRENT_RATING, Judged.atMost(100)).figures();
    assertEquals(Verdict.NOT_KNOWN, judge.judge(atMost).verdict());
  }

  @Test
  void ofContradictingRatingsTheLowerCountsAndIsSaid() {
    Figure contradicting =
        new Figure(
            30.0,
            20.0,
            30.0,
            Origin.STATED,
            List.of("s1", "s2"),
            List.of("the sheet's maximum value", "the sheet states 20 A and 30 A."),
            true);
    Judge.Judgement judgement =
        Judge.of(null, machine(10, 25, 1, 1))
            .judge(Judged.cell("a").with(Measure.CURRENT_RATING, contradicting).figures());
    assertEquals(Verdict.FAILS, judgement.verdict());
    assertEquals(-0.2, judgement.margin(), 1e-12);
    assertEquals(
        "rated 20 A, asked 25 A: 20 % too little; the lower end of what is stated counts; the"
            + " rating is unsure: the sheet states 20 A and 30 A",
        judgement.reason());
  }

  @Test
  void aPulseRatingCarriesAPeakForAWhileOnly() {
    Judge judge = Judge.of(null, machine(10, 25, 1, 1));
    CellFigures strong =
        Judged.cell("a").with(Measure.CURRENT_RATING, 20).with(Measure.PULSE_RATING, 35).figures();
    assertEquals(Verdict.FAILS, judge.judge(strong).verdict());
    assertTrue(judge.judge(strong).reason().contains("its pulse rating of 35 A covers the peak"));
    CellFigures weak =
        Judged.cell("a").with(Measure.CURRENT_RATING, 10).with(Measure.PULSE_RATING, 15).figures();
    assertTrue(judge.judge(weak).reason().contains("exceeds even its pulse rating of 15 A"));
  }

  @Test
  void withoutAMachineTheLoadOnTheCellIsWhatIsAsked() {
    Judge judge = Judge.of(Condition.usual(Load.constant(10).withPeak(15)), null);
    assertEquals(Verdict.CARRIES, judge.judge(Judged.rated("a", 15)).verdict());
    assertEquals(Verdict.FAILS, judge.judge(Judged.rated("a", 10)).verdict());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 25, 1, 1, 2",
    "-1, 25, 1, 1, 2",
    "10, 9, 1, 1, 2",
    "10, 25, 0, 1, 2",
    "10, 25, 1, -1, 2",
    "10, 25, 1, 1, 0.5",
    "NaN, 25, 1, 1, 2",
    "10, 1e9, 1, 1, 2"
  })
  void whatNoMachineAsksIsRefused(
      double average, double peak, int packs, int parallel, double factor) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Requirement(average, peak, packs, 1, parallel, factor, 0, null));
  }

  private static Requirement machine(double average, double peak, int packs, int parallel) {
    return new Requirement(average, peak, packs, 4, parallel, Requirement.USUAL_FACTOR, 0, null);
  }
}
