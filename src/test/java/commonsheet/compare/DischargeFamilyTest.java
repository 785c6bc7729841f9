package commonsheet.compare;

import static commonsheet.compare.Measure.CURVE_RESISTANCE;
import static commonsheet.compare.Measure.DELIVERED_CAPACITY;
import static commonsheet.compare.Measure.DELIVERED_ENERGY;
import static commonsheet.compare.Measure.DELIVERED_SPECIFIC_ENERGY;
import static commonsheet.compare.Measure.HEAT;
import static commonsheet.compare.Measure.LOWEST_VOLTAGE;
import static commonsheet.compare.Measure.MEAN_VOLTAGE;
import static commonsheet.compare.Measure.VOLTAGE_DROP;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.OpenData;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import commonsheet.record.Statistic;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DischargeFamilyTest {
  /** A cell of one resistance: 4.2 V full, 3.2 V empty, 2 A·h, 50 mΩ. */
  private static CellOfCurves ohmic(double... currents) {
    CellOfCurves cell = new CellOfCurves("ohmic");
    for (double current : currents) {
      cell.curve(current, 25, ohmicPoints(current));
    }
    return cell;
  }

  private static List<List<Double>> ohmicPoints(double current) {
    return List.of(List.of(0.0, 4.2 - 0.05 * current), List.of(2.4, 3.0 - 0.05 * current));
  }

  /** V = 4.2 − Q/2 − 0.05 I: at 3 A down to 3.05 V exactly 2 A·h of mean 3.55 V are given. */
  /** The steep end of a traced line is all edge: it stops within its width above the cut-off. */
  @Test
  void aCurveThatEndsItsWidthAboveTheCutOffOfItsChartReachesIt() {
    CellOfCurves cell = new CellOfCurves("tw-26");
    Map<String, Double> named =
        Map.of(
            Conditions.DISCHARGE_CURRENT,
            2.0,
            Conditions.TEMPERATURE,
            25.0,
            Conditions.CUTOFF_VOLTAGE,
            2.5);
    Map<String, Double> unnamed =
        Map.of(Conditions.DISCHARGE_CURRENT, 4.0, Conditions.TEMPERATURE, 25.0);
    Curve.Uncertainty uncertainty = new Curve.Uncertainty(0.006, 0.007);
    List<List<Double>> points = List.of(List.of(0.0, 4.1), List.of(2.9, 3.0), List.of(3.0, 2.51));
    cell.curve(named, points, uncertainty, Standing.READ);
    cell.curve(unnamed, points, uncertainty, Standing.READ);
    assertEquals(3.0, cell.under(2, 2.5).figure(Measure.DELIVERED_CAPACITY).value(), 1e-9);
    Figure other = cell.under(4, 2.5).figure(Measure.DELIVERED_CAPACITY);
    assertFalse(other.isKnown());
  }

  @Test
  void aCellOfOneResistanceIsAsOhmsLawHasIt() {
    CellFigures figures = ohmic(1, 2, 5).under(3, 3.05);
    assertEquals(2.0, figures.figure(DELIVERED_CAPACITY).value(), 1e-6);
    assertEquals(7.1, figures.figure(DELIVERED_ENERGY).value(), 0.005);
    assertEquals(3.55, figures.figure(MEAN_VOLTAGE).value(), 0.003);
    assertEquals(3.15, figures.figure(LOWEST_VOLTAGE).value(), 1e-6);
    assertEquals(0.1, figures.figure(VOLTAGE_DROP).value(), 1e-6);
    assertEquals(0.3, figures.figure(HEAT).value(), 1e-6);
    assertEquals(Origin.INTERPOLATED, figures.figure(DELIVERED_CAPACITY).origin());
    assertEquals(List.of("c2", "c3"), figures.figure(DELIVERED_CAPACITY).from());
  }

  /**
   * The two-current definition of IEC 61960-3, (V₁ − V₂) / (I₂ − I₁), and the values computed by
   * hand from the measured curves of pybamm_enertech at 0.5C and 2C when 1.14 A·h are given: 3.7292
   * and 3.5235 V, 1.14 and 4.56 A.
   */
  @Test
  void resistanceIsTheSeparationOverTheDifferenceOfCurrents() throws IOException {
    assertEquals(50, ohmic(1, 5).under(3, 3.0).figure(CURVE_RESISTANCE).value(), 1e-6);
    CellOfCurves measured = new CellOfCurves("enertech");
    measured.curve(1.14, 25, OpenData.enertech("0.5"));
    measured.curve(4.56, 25, OpenData.enertech("2"));
    Figure resistance = measured.under(2.28, 3.0).figure(CURVE_RESISTANCE);
    assertEquals((3.7292 - 3.5235) / (4.56 - 1.14) * 1000, resistance.value(), 1.0);
    assertTrue(resistance.low() < 56 && resistance.high() > 70, resistance.toString());
  }

  /** Capacities and energies of measured curves as worked out apart from this program. */
  @Test
  void measuredCurvesGiveWhatTheyGave() throws IOException {
    CellOfCurves kokam = new CellOfCurves("kokam");
    kokam.curve(0.54, 25, OpenData.kokam("0.2"));
    kokam.curve(8.1, 25, OpenData.kokam("3"));
    CellFigures slow = kokam.under(0.54, 2.7);
    assertEquals(2.6752, slow.figure(DELIVERED_CAPACITY).value(), 0.0005);
    assertEquals(9.896, slow.figure(DELIVERED_ENERGY).value(), 0.005);
    CellFigures fast = kokam.under(8.1, 2.7);
    assertEquals(2.4915, fast.figure(DELIVERED_CAPACITY).value(), 0.0005);
    assertEquals(8.723, fast.figure(DELIVERED_ENERGY).value(), 0.01);
    CellOfCurves enertech = new CellOfCurves("enertech");
    enertech.curve(2.28, 25, OpenData.enertech("1"));
    // The file's last row stands at 3.0 V within a millivolt.
    assertEquals(8.406, enertech.under(2.28, 3.0).figure(DELIVERED_ENERGY).value(), 0.01);
    assertEquals(3.673, enertech.under(2.28, 3.0).figure(MEAN_VOLTAGE).value(), 0.001);
  }

  @Test
  void outsideTheCurvesOnlyABoundIsKnown() {
    Figure above = ohmic(1, 5).under(10, 3.0).figure(DELIVERED_CAPACITY);
    assertEquals(Origin.BOUNDED, above.origin());
    assertTrue(above.notes().get(0).startsWith("not known above 5 A"), above.notes().toString());
    assertEquals(
        List.of("not known above 5 A"), ohmic(1, 5).under(10, 3.0).figure(MEAN_VOLTAGE).notes());
  }

  @Test
  void aCurveThatEndsAboveTheCutOffGivesAtLeastItsEnd() {
    CellOfCurves cell = new CellOfCurves("short");
    cell.curve(2, 25, List.of(List.of(0.0, 4.1), List.of(1.5, 3.4)));
    Figure capacity = cell.under(2, 3.0).figure(DELIVERED_CAPACITY);
    assertEquals(Origin.BOUNDED, capacity.origin());
    assertEquals(1.5, capacity.low(), 1e-9);
    assertFalse(cell.under(3, 3.0).figure(DELIVERED_CAPACITY).isKnown());
  }

  @Test
  void aCutOffAboveWhereCurvesBeginIsSaid() {
    Figure capacity = ohmic(1).under(1, 4.3).figure(DELIVERED_CAPACITY);
    assertEquals(Origin.ABSENT, capacity.origin());
    assertTrue(capacity.notes().get(0).contains("above the voltage it begins at"));
  }

  @Test
  void ratesAreCountedInTheNominalCapacity() {
    CellOfCurves cell = new CellOfCurves("rates");
    cell.states("capacity", Statistic.NOMINAL, 2.5, "A.h");
    for (double rate : new double[] {1, 2}) {
      cell.curve(
          Map.of(Conditions.DISCHARGE_RATE, rate, Conditions.TEMPERATURE, 25.0),
          ohmicPoints(2.5 * rate),
          CellOfCurves.EXACT,
          Standing.READ);
    }
    Figure capacity = cell.under(2.5, 3.0).figure(DELIVERED_CAPACITY);
    assertEquals(Origin.CURVE, capacity.origin());
    assertEquals(List.of("c1", "s1"), capacity.from());
    assertFalse(capacity.unsure());
  }

  @Test
  void doubtGoesWithTheFigure() {
    CellOfCurves cell = ohmic(1);
    cell.curve(
        Map.of(Conditions.DISCHARGE_CURRENT, 4.0, Conditions.TEMPERATURE, 25.0),
        ohmicPoints(4),
        CellOfCurves.EXACT,
        Standing.UNSURE);
    assertTrue(cell.under(2, 3.0).figure(DELIVERED_CAPACITY).unsure());
    assertFalse(cell.under(1, 3.0).figure(DELIVERED_CAPACITY).unsure());
  }

  @Test
  void aChartWithoutTemperatureIsOfARoomAndUnsure() {
    CellOfCurves cell = new CellOfCurves("room");
    cell.curve(
        Map.of(Conditions.DISCHARGE_CURRENT, 2.0),
        ohmicPoints(2),
        new Curve.Uncertainty(0.01, 0.005),
        Standing.READ);
    assertTrue(cell.under(2, 3.0).figure(DELIVERED_CAPACITY).unsure());
    assertEquals(
        Origin.ABSENT, cell.under(Load.constant(2), 3.0, 0).figure(DELIVERED_CAPACITY).origin());
  }

  @Test
  void betweenTemperaturesOfOneCurrent() {
    CellOfCurves cell = new CellOfCurves("cold");
    cell.curve(2, 25, ohmicPoints(2));
    cell.curve(2, -5, ohmicPoints(6));
    Figure middle = cell.under(Load.constant(2), 3.0, 10).figure(DELIVERED_CAPACITY);
    double warm = 2 * (4.2 - 0.1 - 3.0);
    double cold = 2 * (4.2 - 0.3 - 3.0);
    assertEquals((warm + cold) / 2, middle.value(), 1e-6);
    assertEquals(Origin.INTERPOLATED, middle.origin());
    Figure outside = cell.under(Load.constant(2), 3.0, 60).figure(DELIVERED_CAPACITY);
    assertTrue(outside.notes().get(0).contains("the sheet shows -5 °C, 25 °C"));
  }

  /**
   * Half of the charge at each of two currents. By hand, with V = 4.2 − 0.05 I − 0.5 q: under 4 A
   * the voltage falls to 3 V at 2 A·h; until then the mean current by charge is 2.5 A, so that the
   * energy is (4.2 − 0.125) · 2 − 0.5 · 2² / 2 = 7.15 W·h. At most, 1/Q = ½/Q₁ + ½/Q₂ (common
   * practice, no source).
   */
  @Test
  void aMixEndsWhenItsHighestCurrentFindsTheCutOff() {
    CellOfCurves cell = ohmic(1, 2, 4);
    double one = cell.under(1, 3.0).figure(DELIVERED_CAPACITY).value();
    double four = cell.under(4, 3.0).figure(DELIVERED_CAPACITY).value();
    Load load = new Load(List.of(new Load.Share(1, 0.8), new Load.Share(4, 0.2)));
    CellFigures mix = cell.under(load, 3.0, 23);
    Figure capacity = mix.figure(DELIVERED_CAPACITY);
    assertEquals(2, capacity.value(), 1e-6);
    assertEquals(four, capacity.value(), 1e-9);
    assertEquals(7.15, mix.figure(Measure.DELIVERED_ENERGY).value(), 1e-3);
    assertTrue(capacity.low() <= four);
    assertTrue(capacity.high() >= 1 / (0.5 / one + 0.5 / four));
  }

  /**
   * The worked example of Peukert's law at electrotechnik.net (January 2010): 100 A·h at 1 A with k
   * = 1.2 last 14.5 h at 5 A. Given the ends at 1 A and 20 A, 5 A lies between.
   */
  @Test
  void printedCapacitiesFollowPeukertsLaw() {
    CellOfCurves cell = new CellOfCurves("printed");
    for (double current : new double[] {1, 20}) {
      cell.states(
          "capacity",
          Statistic.TYPICAL,
          100 * Math.pow(current, 1 - 1.2),
          "A.h",
          Map.of(
              Conditions.DISCHARGE_CURRENT,
              current,
              Conditions.CUTOFF_VOLTAGE,
              3.0,
              Conditions.TEMPERATURE,
              25.0));
    }
    Figure capacity = cell.under(5, 3.0).figure(DELIVERED_CAPACITY);
    assertEquals(14.5, capacity.value() / 5, 0.05);
    assertEquals(Origin.MODELLED, capacity.origin());
    assertTrue(capacity.notes().get(0).contains("k = 1.2"), capacity.notes().toString());
    Figure above = cell.under(40, 3.0).figure(DELIVERED_CAPACITY);
    assertEquals(Origin.BOUNDED, above.origin());
  }

  @Test
  void aLargestMassGivesAtLeastSoMuchPerMass() {
    CellOfCurves cell = ohmic(1, 5);
    cell.states("mass", Statistic.MAXIMUM, 50, "g");
    CellFigures figures = cell.under(3, 3.0);
    Figure perMass = figures.figure(DELIVERED_SPECIFIC_ENERGY);
    assertEquals(figures.figure(DELIVERED_ENERGY).value() / 0.05, perMass.value(), 1e-9);
    assertEquals(null, perMass.high());
  }

  @Test
  void everyRowOfTheGridEndsWithItsDischarge() {
    Condition condition = Condition.usual(Load.constant(1));
    VoltageTable table =
        DischargeFamily.of(ohmic(1, 2, 5).record(), condition).voltageTable().orElseThrow();
    assertEquals(List.of(1.0, 2.0, 5.0), table.currents());
    for (List<Double> row : table.voltages()) {
      double last = row.stream().filter(v -> v != null).reduce((a, b) -> b).orElseThrow();
      assertEquals(3.0, last, 1e-9);
      assertEquals(table.charges().size(), row.size());
    }
  }
}
