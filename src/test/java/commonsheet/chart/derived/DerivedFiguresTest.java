package commonsheet.chart.derived;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.OpenData;
import commonsheet.discharge.Estimate;
import commonsheet.discharge.PeukertFit;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DerivedFiguresTest {
  private static final List<List<Double>> LINE = List.of(List.of(0.0, 4.0), List.of(2.0, 2.0));

  /**
   * Capacities and energies computed from the same files by other means: a trapezium sum in a
   * spreadsheet, to the digits given.
   */
  @ParameterizedTest
  @CsvSource({
    "0.2, 2.6752, 9.896",
    "0.5, 2.5944, 9.544",
    "1, 2.5348, 9.107",
    "2, 2.5031, 8.923",
    "3, 2.4915, 8.723"
  })
  void capacityAndEnergyOfPublishedDischarges(String rate, double capacity, double energy)
      throws IOException {
    Curve curve = curve("c1", rate, OpenData.kokam(rate), 2.7);
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(curve)));
    assertEquals(capacity, only(record, "capacity").value(), 0.00006);
    assertEquals(energy, only(record, "energy").value(), 0.0006);
    assertEquals(curve.conditions(), only(record, "energy").conditions());
    assertEquals(List.of("c1"), only(record, "capacity").evidence().from());
  }

  /**
   * As above, to the ends of the files, which run on below 3.0 V for some seconds; the mean voltage
   * is energy over capacity.
   */
  @ParameterizedTest
  @CsvSource({
    "0.5, 2.3145, 8.670, 3.746",
    "1, 2.2889, 8.406, 3.673",
    "2, 2.2445, 7.959, 3.546",
  })
  void meanVoltagesOfPublishedDischarges(
      String rate, double capacity, double energy, double meanVoltage) throws IOException {
    Curve curve = enertech("c1", rate);
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(curve)));
    double given = only(record, "capacity").value();
    assertEquals(capacity, given, 0.004);
    assertEquals(energy, only(record, "energy").value(), 0.012);
    assertEquals(meanVoltage, only(record, "energy").value() / given, 0.001);
  }

  /** At 1.14 Ah, which is within 0.3 % of the middle, the file says 3.6534 V at 1 C. */
  @Test
  void midCapacityVoltageOfAPublishedDischarge() throws IOException {
    Curve curve = curve("c1", "1", OpenData.enertech("1"), 3.0);
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(curve)));
    assertEquals(3.6534, only(record, "midCapacityVoltage").value(), 0.003);
  }

  /** Q₂/Q₁ = (I₂/I₁)^(1−k) between the ends, from the capacities above. */
  @Test
  void peukertExponentsOfPublishedDischarges() throws IOException {
    List<Curve> curves = new ArrayList<>();
    for (String rate : List.of("0.5", "1", "2")) {
      curves.add(enertech("c" + (curves.size() + 1), rate));
    }
    Statement k = only(Cells.derived(Cells.with(List.of(), curves)), "peukertExponent");
    assertEquals(1.022, k.value(), 0.0015);
    assertTrue(k.low() < k.value() && k.high() < k.value() + 0.005, k.toString());
    assertEquals(List.of("c1", "c2", "c3"), k.evidence().from());
    assertEquals(Cells.to(2.995, Conditions.NONE), k.conditions());

    curves.clear();
    for (String rate : List.of("0.2", "0.5", "1", "2", "3")) {
      curves.add(curve("c" + (curves.size() + 1), rate, OpenData.kokam(rate), 2.7));
    }
    k = only(Cells.derived(Cells.with(List.of(), curves)), "peukertExponent");
    assertEquals(1.026, k.value(), 0.003);
    assertTrue(k.evidence().note().contains("5 curves from 0.2 C to 3 C"), k.toString());
  }

  @Test
  void peukertsLawIsFoundAgainWithoutError() {
    double k = 1.06;
    List<PeukertFit.Sample> samples =
        List.of(0.2, 1.0, 5.0).stream()
            .map(i -> new PeukertFit.Sample(i, Estimate.within(2.6 * Math.pow(i, 1 - k), 0)))
            .toList();
    PeukertFit fit = PeukertFit.of(samples);
    assertEquals(k, fit.exponent(), 1e-12);
    assertEquals(0, fit.standardError(), 1e-12);
  }

  @Test
  void twoRatesGiveNoExponentAndTwoTemperaturesNeither() throws IOException {
    Curve one = curve("c1", "0.2", OpenData.kokam("0.2"), 2.7);
    Curve two = curve("c2", "1", OpenData.kokam("1"), 2.7);
    Curve cold =
        Cells.curve(
            "c3",
            Cells.to(2.7, Cells.rate(3)).with(Conditions.TEMPERATURE, 0),
            OpenData.kokam("3"),
            Cells.EXACT);
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(one, two, cold)));
    assertEquals(List.of(), Cells.of(record, "peukertExponent"));
    Statement relative = only(record, "capacityRetention");
    assertEquals(100 * 2.5348 / 2.6752, relative.value(), 0.01);
    assertEquals(List.of("c2", "c1"), relative.evidence().from());
    assertEquals(two.conditions(), relative.conditions());
  }

  @Test
  void temperaturesAreComparedWithTheOneInTheRoom() {
    List<Curve> curves = new ArrayList<>();
    for (int temperature : List.of(-20, 0, 25, 45)) {
      double end = 1.5 + temperature / 100.0;
      curves.add(
          Cells.curve(
              "c" + (curves.size() + 1),
              Cells.to(2.0, Cells.rate(1)).with(Conditions.TEMPERATURE, temperature),
              List.of(List.of(0.0, 4.0), List.of(end, 2.0)),
              Cells.EXACT));
    }
    List<Statement> shares =
        Cells.of(Cells.derived(Cells.with(List.of(), curves)), "capacityRetention");
    assertEquals(List.of("c1", "c3"), shares.get(0).evidence().from());
    assertEquals(100 * 1.3 / 1.75, shares.get(0).value(), 1e-9);
    assertEquals(3, shares.size());
  }

  /** Nothing is prolonged: what the chart does not show stays missing. */
  @Test
  void aCurveThatEndsAboveTheCutOffGivesNothing() {
    Curve curve = Cells.curve("c1", Cells.to(1.9, Cells.rate(1)), LINE, Cells.EXACT);
    assertEquals(0, Cells.derived(Cells.with(List.of(), List.of(curve))).statements().size());
  }

  /** Against a higher load the capacities would look better than they are. */
  @Test
  void whereTheLowestLoadDoesNotReachTheCutOffThereIsNoRelativeCapacity() throws IOException {
    Curve slow =
        Cells.curve(
            "c1",
            Cells.to(2.7, Cells.rate(0.1)),
            List.of(List.of(0.0, 4.0), List.of(2.7, 2.9)),
            Cells.EXACT);
    Curve one = curve("c2", "1", OpenData.kokam("1"), 2.7);
    Curve two = curve("c3", "2", OpenData.kokam("2"), 2.7);
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(slow, one, two)));
    assertEquals(2, Cells.of(record, "capacity").size());
    assertEquals(List.of(), Cells.of(record, "capacityRetention"));
  }

  @Test
  void aCurveThatEndsWithinItsUncertaintyOfTheCutOffReachesIt() {
    Curve curve =
        Cells.curve("c1", Cells.to(1.99, Cells.rate(1)), LINE, new Curve.Uncertainty(0.01, 0.02));
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(curve)));
    assertEquals(2.0, only(record, "capacity").value(), 1e-9);
  }

  @Test
  void uncertaintyIsCarriedThrough() {
    Curve curve =
        Cells.curve("c1", Cells.to(2.5, Cells.rate(1)), LINE, new Curve.Uncertainty(0.03, 0.04));
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(curve)));
    // One volt per ampere hour: 0.04 V are 0.04 Ah; with 0.03 Ah at right angles, 0.05 Ah.
    Statement capacity = only(record, "capacity");
    assertEquals(1.5, capacity.value(), 1e-9);
    assertEquals(1.45, capacity.low(), 1e-9);
    assertEquals(1.55, capacity.high(), 1e-9);
    Statement energy = only(record, "energy");
    assertEquals(4.875, energy.value(), 1e-9);
    assertEquals(Math.hypot(0.04 * 1.5, 2.5 * 0.05), energy.high() - energy.value(), 1e-9);
    Statement middle = only(record, "midCapacityVoltage");
    assertEquals(3.25, middle.value(), 1e-9);
    assertEquals(Math.hypot(0.04, Math.hypot(0.03, 0.025)), middle.high() - 3.25, 1e-9);
  }

  @Test
  void theSheetsOwnCutOffServesWhereTheChartNamesNone() {
    Curve curve = Cells.curve("c1", Cells.rate(1), LINE, Cells.EXACT);
    Statement cutOff = Cells.printed("s1", "dischargeCutoffVoltage", null, 3, Conditions.NONE);
    CellRecord record = Cells.derived(Cells.with(List.of(cutOff), List.of(curve)));
    Statement capacity = only(record, "capacity");
    assertEquals(1.0, capacity.value(), 1e-9);
    assertEquals(List.of("c1", "s1"), capacity.evidence().from());
    assertEquals("s2", capacity.id());
    Statement other = Cells.printed("s2", "dischargeCutoffVoltage", null, 2.5, Conditions.NONE);
    record = Cells.derived(Cells.with(List.of(cutOff, other), List.of(curve)));
    assertEquals(2, record.statements().size());
  }

  @Test
  void timeAtAKnownCurrentIsCharge() {
    Conditions twoAmperes = Cells.to(2.0, Conditions.NONE.with(Conditions.DISCHARGE_CURRENT, 2));
    List<List<Double>> points = List.of(List.of(0.0, 4.0), List.of(3600.0, 2.0));
    Curve curve = Cells.over(Cells.curve("c1", twoAmperes, points, Cells.EXACT), "time", "s");
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(curve)));
    assertEquals(2.0, only(record, "capacity").value(), 1e-9);
    assertEquals(6.0, only(record, "energy").value(), 1e-9);
  }

  @Test
  void anUnsureCurveGivesUnsureValuesAndTakesPartInNoComparison() throws IOException {
    Curve one = curve("c1", "0.2", OpenData.kokam("0.2"), 2.7);
    Curve two = curve("c2", "1", OpenData.kokam("1"), 2.7);
    Curve unsure = Cells.standing(two, Standing.UNSURE, "Its label is far away.");
    CellRecord record = Cells.derived(Cells.with(List.of(), List.of(one, unsure)));
    Statement capacity = Cells.of(record, "capacity").get(1);
    assertEquals(Standing.UNSURE, capacity.standing());
    assertEquals(List.of("Curve c2, from which it comes, is unsure."), capacity.doubts());
    assertEquals(List.of(), Cells.of(record, "capacityRetention"));
  }

  @Test
  void unknownLoadsAndRejectedCurvesGiveNothing() {
    Curve unknown = Cells.curve("c1", Cells.to(2, Conditions.NONE), LINE, Cells.EXACT);
    Curve rejected =
        Cells.standing(
            Cells.curve("c2", Cells.to(2, Cells.rate(1)), LINE, Cells.EXACT), Standing.REJECTED);
    CellRecord record = Cells.with(List.of(), List.of(unknown, rejected));
    assertEquals(record, Cells.derived(record));
  }

  @Test
  void aSecondTimeChangesNothingAndWhatAPersonSettledStays() {
    Curve curve = Cells.curve("c1", Cells.to(2, Cells.rate(1)), LINE, Cells.EXACT);
    CellRecord once = Cells.derived(Cells.with(List.of(), List.of(curve)));
    assertEquals(once, Cells.derived(once));
    List<Statement> statements = new ArrayList<>(once.statements());
    Statement made = statements.get(0);
    Statement rejected =
        new Statement(
            made.id(),
            made.quantity(),
            null,
            made.value(),
            made.low(),
            made.high(),
            made.unit(),
            made.conditions(),
            made.evidence(),
            Standing.REJECTED,
            List.of());
    statements.set(0, rejected);
    CellRecord again = Cells.derived(Cells.with(statements, List.of(curve)));
    assertEquals(List.of(rejected), Cells.of(again, "capacity"));
    assertEquals(once.statements().size(), again.statements().size());
  }

  /** To a voltage that the files reach in their last seconds. */
  private static Curve enertech(String id, String rate) throws IOException {
    return curve(id, rate, OpenData.enertech(rate), 2.995);
  }

  private static Curve curve(String id, String rate, List<List<Double>> points, double cutOff) {
    return Cells.curve(
        id, Cells.to(cutOff, Cells.rate(Double.parseDouble(rate))), points, Cells.EXACT);
  }

  private static Statement only(CellRecord record, String quantity) {
    List<Statement> found = Cells.of(record, quantity);
    assertEquals(1, found.size(), found.toString());
    return found.get(0);
  }
}
