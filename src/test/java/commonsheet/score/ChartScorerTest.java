package commonsheet.score;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Curves of an invented cell against the truth of its charts. */
class ChartScorerTest {
  private static final String HEADER =
      "page,chart,kind,x,xUnit,y,yUnit,curve,conditions,xSample,ySample,tolerance\n";
  private static final List<Double> LEFT = List.of(60.0, 100.0, 200.0, 150.0);
  private static final List<Double> RIGHT = List.of(320.0, 100.0, 200.0, 150.0);

  @TempDir private Path folder;

  private List<ChartTruth> truth(String... rows) throws IOException, TruthException {
    Files.writeString(folder.resolve("heron.charts.csv"), HEADER + String.join("\n", rows) + "\n");
    return ChartTruth.forSheet(folder, "sheets/heron.pdf");
  }

  private List<ChartTruth> twoRates() throws IOException, TruthException {
    return truth(
        "1,by rate,discharge,capacity,A.h,voltage,V,0.2C,dischargeRate=0.2;temperature=25,1,3.8,0.02",
        "1,by rate,discharge,capacity,A.h,voltage,V,0.2C,dischargeRate=0.2;temperature=25,3,2.5,0.02",
        "1,by rate,discharge,capacity,A.h,voltage,V,1C,dischargeRate=1;temperature=25,1,3.6,0.02");
  }

  /** A discharge from 4.2 V that falls by what the load takes, and at the end to 2.5 V. */
  private static Curve discharge(
      String id, List<Double> box, double drop, Map<String, Double> conditions) {
    List<List<Double>> points =
        List.of(
            List.of(0.0, 4.2 - drop),
            List.of(1.0, 3.8 - drop),
            List.of(2.9, 3.2 - drop),
            List.of(3.0, 2.5));
    return new Curve(
        id,
        "discharge",
        id,
        new Conditions(conditions),
        axis("capacity", "A.h", 0, 3.5),
        axis("voltage", "V", 2, 4.5),
        points,
        new Curve.Uncertainty(0.01, 0.01),
        Method.VECTOR_CURVE,
        new Evidence(1, box, null, Method.VECTOR_CURVE, null, null, null, null, null),
        Standing.READ,
        List.of());
  }

  private static Curve.Axis axis(String quantity, String unit, double low, double high) {
    return new Curve.Axis(
        quantity, unit, List.of(new Curve.Tick(100, low, "a"), new Curve.Tick(300, high, "b")));
  }

  private static Curve unsure(Curve c) {
    return new Curve(
        c.id(),
        c.kind(),
        c.label(),
        c.conditions(),
        c.x(),
        c.y(),
        c.points(),
        c.uncertainty(),
        c.method(),
        c.evidence(),
        Standing.UNSURE,
        List.of("Which label belongs to it is not clear."));
  }

  private static final Curve SLOW =
      discharge("c1", LEFT, 0, Map.of("dischargeRate", 0.2, "temperature", 25.0));
  private static final Curve FAST = discharge("c2", LEFT, 0.2, Map.of("dischargeRate", 1.0));

  @Test
  void everyCurveRight() throws IOException, TruthException {
    ChartTally tally = ChartScorer.score("heron", twoRates(), List.of(FAST, SLOW)).tally();
    assertEquals(new ChartTally(1, 1, 1, 1, 2, 2, 0, 1, 0, 0, 0, 0), tally);
  }

  @Test
  void aConditionThatTellsNoCurveApartMayBeAbsentButNotDifferent()
      throws IOException, TruthException {
    Curve cold = discharge("c2", LEFT, 0.2, Map.of("dischargeRate", 1.0, "temperature", 0.0));
    ChartScore score = ChartScorer.score("heron", twoRates(), List.of(SLOW, cold));
    CurveOutcome wrong = score.charts().get(0).curves().get(1);
    assertEquals(List.of(new Difference("conditions.temperature", "25", "0")), wrong.differences());
  }

  @Test
  void oneOfTwoConditionsThatTellACurveIsEnough() throws IOException, TruthException {
    List<ChartTruth> truth =
        truth(
            "1,a,discharge,capacity,A.h,voltage,V,x,dischargeRate=0.2;dischargeCurrent=0.6,1,3.8,0.02",
            "1,a,discharge,capacity,A.h,voltage,V,y,dischargeRate=1;dischargeCurrent=3,1,3.6,0.02");
    Curve byCurrent = discharge("c1", LEFT, 0, Map.of("dischargeCurrent", 0.6));
    Curve both = discharge("c2", LEFT, 0.2, Map.of("dischargeCurrent", 3.0, "dischargeRate", 2.0));
    ChartTally tally = ChartScorer.score("heron", truth, List.of(byCurrent, both)).tally();
    assertAll(
        () -> assertEquals(1, tally.right()),
        () -> assertEquals(0, tally.complete()),
        () -> assertEquals(1, tally.wrong()));
  }

  @Test
  void exchangedLabelsAreWrongAndSilentUnlessUnsure() throws IOException, TruthException {
    Curve slow = discharge("c1", LEFT, 0, Map.of("dischargeRate", 1.0));
    Curve fast = discharge("c2", LEFT, 0.2, Map.of("dischargeRate", 0.2));
    ChartTally silent = ChartScorer.score("heron", twoRates(), List.of(slow, fast)).tally();
    ChartTally said =
        ChartScorer.score("heron", twoRates(), List.of(unsure(slow), unsure(fast))).tally();
    assertAll(
        () -> assertEquals(2, silent.wrong()),
        () -> assertEquals(2, silent.silent()),
        () -> assertEquals(0, silent.whole()),
        () -> assertEquals(2, said.wrong()),
        () -> assertEquals(0, said.silent()));
  }

  @Test
  void aCurveTooManyAndOneTooFewAreCounted() throws IOException, TruthException {
    Curve frame = discharge("c3", LEFT, 1.2, Map.of());
    ChartTally more = ChartScorer.score("heron", twoRates(), List.of(SLOW, FAST, frame)).tally();
    ChartTally fewer = ChartScorer.score("heron", twoRates(), List.of(FAST)).tally();
    assertAll(
        () -> assertEquals(1, more.spurious()),
        () -> assertEquals(0, more.whole()),
        () -> assertEquals(1, fewer.missed()),
        () -> assertEquals(1, fewer.right()));
  }

  @Test
  void chartsOfOnePageArePairedByTheirCurves() throws IOException, TruthException {
    List<ChartTruth> both = new ArrayList<>(twoRates());
    both.addAll(
        truth(
            "1,cold,discharge,capacity,A.h,voltage,V,-10,temperature=-10,1,3.4,0.02",
            "1,cold,discharge,capacity,A.h,voltage,V,0,temperature=0,1,3.5,0.02"));
    Curve cold = discharge("c3", RIGHT, 0.4, Map.of("temperature", -10.0));
    Curve cool = discharge("c4", RIGHT, 0.3, Map.of("temperature", 0.0));
    ChartTally tally = ChartScorer.score("heron", both, List.of(cold, cool, SLOW)).tally();
    assertEquals(new ChartTally(2, 2, 2, 1, 4, 3, 0, 3, 0, 1, 0, 0), tally);
  }

  @Test
  void aWrongUnitIsAWrongAxis() throws IOException, TruthException {
    List<ChartTruth> truth =
        truth("1,life,cycleLife,cycles,1,capacity,%,,dischargeRate=1,200,95,0.02");
    ChartScore score = ChartScorer.score("heron", truth, List.of(SLOW));
    assertAll(
        () -> assertEquals("cycle-life", truth.get(0).kind()),
        () -> assertNull(truth.get(0).curves().get(0).label()),
        () -> assertTrue(score.charts().get(0).found()),
        () -> assertFalse(score.charts().get(0).axesRight()));
  }

  @Test
  void whatWasMeasuredOrRejectedIsNotRead() throws IOException, TruthException {
    Curve own =
        new Curve(
            "c9",
            "discharge",
            null,
            Conditions.NONE,
            SLOW.x(),
            SLOW.y(),
            SLOW.points(),
            SLOW.uncertainty(),
            Method.MEASURED,
            null,
            Standing.READ,
            List.of());
    ChartTally tally = ChartScorer.score("heron", twoRates(), List.of(own)).tally();
    assertAll(() -> assertEquals(0, tally.spurious()), () -> assertEquals(2, tally.missed()));
  }

  @Test
  void reportsCarryChartsOnlyWhereThereAreTruths() throws IOException, TruthException {
    Curve odd = discharge("c3", LEFT, 1.2, Map.of());
    ChartScore charts = ChartScorer.score("heron", twoRates(), List.of(SLOW, odd));
    ScoreReport with = new ScoreReport(List.of(), List.of(charts));
    ScoreReport without = new ScoreReport(List.of());
    JsonNode json = new ObjectMapper().readTree(with.json());
    assertAll(
        () -> assertEquals(1, json.at("/charts/total/right").asInt()),
        () -> assertEquals("wrong", json.at("/charts/sheets/0/charts/0/curves/1/outcome").asText()),
        () -> assertTrue(with.table().contains("all charts")),
        () ->
            assertEquals(
                """
                heron
                  discharge "by rate", page 1
                    wrong curve "1C": conditions.dischargeRate absent instead of 1, \
                points one 34.9 % of the scales away instead of a curve through 1, 3.6
                      c3 "c3", discharge, voltage over capacity, read
                """,
                with.listing()),
        () -> assertFalse(without.table().contains("charts")),
        () -> assertFalse(without.json().contains("charts")));
  }

  @Test
  void aTruthThatMakesNoSenseIsRefusedWithItsLine() throws IOException, TruthException {
    assertNull(ChartTruth.forSheet(folder, "unknown.pdf"));
    TruthException far =
        assertThrows(
            TruthException.class, () -> truth("1,a,discharge,capacity,A.h,voltage,V,,,1,3.8,2"));
    TruthException empty =
        assertThrows(
            TruthException.class, () -> truth("1,a,discharge,capacity,,voltage,V,,,1,3.8,0.02"));
    assertAll(
        () ->
            assertTrue(
                far.getMessage()
                    .endsWith(
                        "line 2: tolerance must be a share of the scale above 0, at most 0.5"),
                far.getMessage()),
        () ->
            assertTrue(
                empty.getMessage().endsWith("line 2: the column xUnit is empty"),
                empty.getMessage()));
  }
}
