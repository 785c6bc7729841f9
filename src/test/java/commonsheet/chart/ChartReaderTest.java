package commonsheet.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartReaderTest {
  private static final int RED = 0xC02020;
  private static final int GREEN = 0x208020;
  private static final int BLUE = 0x2020C0;

  /** A plot of a discharge with axes from 0 to 3000 mAh and 2.5 to 4.5 V. */
  static DrawnPlot discharge() {
    return new DrawnPlot()
        .x(0, 3000)
        .y(2.5, 4.5)
        .ticksX(0, 500, 1000, 1500, 2000, 2500, 3000)
        .ticksY(2.5, 3.0, 3.5, 4.0, 4.5)
        .titleX("Discharge Capacity (mAh)")
        .titleY("Voltage / V");
  }

  private static double falling(double x, double top) {
    return top - 0.0003 * x - Math.max(0, x - 2500) * 0.0008;
  }

  private static DrawnPlot threeCurves() {
    return discharge()
        .curve(RED, 0, 2900, x -> falling(x, 4.2))
        .curve(GREEN, 0, 2850, x -> falling(x, 4.05))
        .curve(BLUE, 0, 2800, x -> falling(x, 3.9));
  }

  private static Chart read(DrawnPlot drawn) {
    return new ChartReader().read(drawn.plot());
  }

  @Test
  void readsADischargeWithALegend() {
    Chart chart =
        read(
            threeCurves()
                .heading("Discharge characteristics (by rate, at 25°C)")
                .entry(DrawnPlot.style(BLUE), "2C (5800mA)", 330, 110)
                .entry(DrawnPlot.style(RED), "0.2C (580mA)", 330, 118)
                .entry(DrawnPlot.style(GREEN), "1C (2900mA)", 330, 126));
    assertEquals("discharge", chart.kind());
    assertEquals("Discharge characteristics (by rate, at 25°C)", chart.title());
    assertEquals(List.of(), chart.findings());
    List<Curve> curves = chart.curves();
    assertEquals(
        List.of("0.2C (580mA)", "1C (2900mA)", "2C (5800mA)"),
        curves.stream().map(Curve::label).toList());
    Curve slow = curves.get(0);
    assertEquals(Standing.READ, slow.standing(), slow.doubts().toString());
    assertEquals(0.2, slow.conditions().get(Conditions.DISCHARGE_RATE));
    assertEquals(0.58, slow.conditions().get(Conditions.DISCHARGE_CURRENT));
    assertEquals(25, slow.conditions().get(Conditions.TEMPERATURE));
    assertEquals("capacity", slow.x().quantity());
    assertEquals("A.h", slow.x().unit());
    assertEquals("voltage", slow.y().quantity());
    List<Double> first = slow.points().get(0);
    List<Double> last = slow.points().get(slow.points().size() - 1);
    assertEquals(0, first.get(0), slow.uncertainty().x());
    assertEquals(4.2, first.get(1), slow.uncertainty().y());
    assertEquals(2.9, last.get(0), slow.uncertainty().x());
    assertEquals(falling(2900, 4.2), last.get(1), slow.uncertainty().y());
    assertTrue(slow.uncertainty().y() < 0.003, () -> "uncertainty " + slow.uncertainty());
    assertTrue(slow.points().size() < 20, () -> slow.points().size() + " points");
  }

  /** Under a plot without a heading, the first entry of a legend was taken for one. */
  @Test
  void anEntryOfALegendUnderThePlotIsNoHeading() {
    Chart chart =
        read(
            threeCurves()
                .entry(DrawnPlot.style(RED), "0.2C", 130, 335)
                .entry(DrawnPlot.style(GREEN), "1C", 200, 335)
                .entry(DrawnPlot.style(BLUE), "2C", 270, 335));
    assertEquals(
        List.of("0.2C", "1C", "2C"), chart.curves().stream().map(Curve::label).sorted().toList());
  }

  @Test
  void tiesLabelsToCurvesByTheirPointers() {
    Chart chart =
        read(
            threeCurves()
                .pointed("2C", 330, 120, 1500, falling(1500, 3.9))
                .pointed("0.2C", 250, 112, 1200, falling(1200, 4.2))
                .pointed("1C", 290, 116, 1800, falling(1800, 4.05)));
    assertEquals(List.of("0.2C", "1C", "2C"), chart.curves().stream().map(Curve::label).toList());
    chart.curves().forEach(c -> assertEquals(Standing.READ, c.standing(), c.doubts().toString()));
  }

  @Test
  void readsTemperaturesThatStandByTheEndsOfTheirCurves() {
    Chart chart =
        read(
            discharge()
                .curve(RED, 0, 2400, x -> falling(x, 4.2))
                .curve(RED, 0, 1500, x -> falling(x, 3.6))
                .label("25℃", 2420, falling(2400, 4.2))
                .label("-20℃", 1520, falling(1500, 3.6)));
    List<Curve> curves = chart.curves();
    assertEquals(25, curves.get(0).conditions().get(Conditions.TEMPERATURE));
    assertEquals(-20, curves.get(1).conditions().get(Conditions.TEMPERATURE));
  }

  @Test
  void aCurveWithoutALabelStaysAndIsUnsure() {
    Chart chart = read(threeCurves().entry(DrawnPlot.style(RED), "0.2C", 330, 118));
    assertEquals(3, chart.curves().size());
    assertEquals(Standing.READ, chart.curves().get(0).standing());
    assertEquals(Standing.UNSURE, chart.curves().get(1).standing());
    assertEquals(null, chart.curves().get(1).label());
  }

  @Test
  void doubtsLabelsThatContradictTheOrderOfTheCurves() {
    Chart chart =
        read(
            threeCurves()
                .entry(DrawnPlot.style(RED), "2C", 330, 110)
                .entry(DrawnPlot.style(GREEN), "1C", 330, 118)
                .entry(DrawnPlot.style(BLUE), "0.2C", 330, 126));
    chart.curves().forEach(curve -> assertEquals(Standing.UNSURE, curve.standing()));
  }

  @Test
  void readsAChargeWithTwoAxes() {
    Chart chart =
        read(
            new DrawnPlot()
                .x(0, 3)
                .y(2.5, 5)
                .ticksX(0, 1, 2, 3)
                .ticksY(2.5, 3.0, 3.5, 4.0, 4.5, 5.0)
                .rightTicks(0, 2500, 0, 500, 1000, 1500, 2000, 2500)
                .titleX("Time (hour)")
                .titleY("Voltage (V)")
                .rightTitle("Current (mA)")
                .heading("Charge characteristics")
                .curve(BLUE, 0, 2.5, x -> Math.min(4.2, 3.6 + 0.5 * x))
                .rightCurve(
                    RED, 0, 2.5, 0, 2500, x -> x < 1.2 ? 1500 : 1500 * Math.exp(-2 * (x - 1.2)))
                .label("Voltage", 2.0, 4.3)
                .label("Current", 1.6, 3.4));
    assertEquals("charge", chart.kind());
    Curve voltage = chart.curves().get(0);
    Curve current = chart.curves().get(1);
    assertEquals("voltage", voltage.y().quantity(), voltage.doubts().toString());
    assertEquals("s", voltage.x().unit());
    assertEquals("current", current.y().quantity(), current.doubts().toString());
    assertEquals("A", current.y().unit());
    assertEquals(1.5, current.points().get(0).get(1), current.uncertainty().y());
  }

  @Test
  void outvotesANumberReadWrongly() {
    DrawnPlot drawn =
        new DrawnPlot()
            .x(0, 3000)
            .y(2.5, 4.5)
            .ticksX(0, 500, 1000)
            .tickX(1500, "7500")
            .ticksX(2000, 2500, 3000)
            .ticksY(2.5, 3.0, 3.5, 4.0, 4.5)
            .titleX("Capacity (mAh)")
            .titleY("Voltage (V)")
            .recognised()
            .curve(RED, 0, 2900, x -> falling(x, 4.2));
    Chart chart = read(drawn);
    assertEquals(
        List.of("chart/outvoted-tick"), chart.findings().stream().map(f -> f.rule()).toList());
    List<List<Double>> points = chart.curves().get(0).points();
    assertEquals(2.9, points.get(points.size() - 1).get(0), 0.01);
  }

  @Test
  void readsAFallingAxis() {
    Chart chart =
        read(
            new DrawnPlot()
                .x(100, 0)
                .y(2.5, 4.5)
                .ticksX(100, 80, 60, 40, 20, 0)
                .ticksY(2.5, 3.0, 3.5, 4.0, 4.5)
                .titleX("State of charge (%)")
                .titleY("Voltage (V)")
                .heading("Discharge")
                .curve(RED, 100, 0, x -> 3 + 0.01 * x));
    List<List<Double>> points = chart.curves().get(0).points();
    assertEquals(100, points.get(0).get(0), 0.1);
    assertEquals(0, points.get(points.size() - 1).get(0), 0.1);
  }

  @Test
  void readsALogarithmicAxis() {
    DrawnPlot drawn = new DrawnPlot().x(0, 3).y(0, 50).ticksY(0, 10, 20, 30, 40, 50);
    drawn.tickX(0, "1").tickX(1, "10").tickX(2, "100").tickX(3, "1000");
    Chart chart =
        read(drawn.titleX("Time (s)").titleY("Resistance (mΩ)").curve(RED, 0, 3, x -> 20 + 5 * x));
    List<List<Double>> points = chart.curves().get(0).points();
    assertEquals(1000, points.get(points.size() - 1).get(0), 10);
  }

  private static DrawnPlot slanted() {
    DrawnPlot plot =
        new DrawnPlot()
            .x(0, 3000)
            .y(2.5, 4.5)
            .ticksY(2.5, 3.0, 3.5, 4.0, 4.5)
            .titleX("Discharge Capacity (mAh)")
            .titleY("Voltage / V")
            .curve(RED, 0, 2900, x -> falling(x, 4.2));
    for (double value = 0; value <= 3000; value += 500) {
      plot.slantedTickX(value);
    }
    return plot;
  }

  @Test
  void numbersThatStandAslantEndAtTheirMarks() {
    Curve curve = read(slanted()).curves().get(0);
    assertEquals(Standing.READ, curve.standing(), curve.doubts().toString());
    assertEquals(2.9, curve.points().get(curve.points().size() - 1).get(0), 0.002);
  }

  @Test
  void betweenManyMarksSlantedNumbersLeaveADoubt() {
    DrawnPlot plot = slanted();
    for (double value = 0; value <= 3000; value += 100) {
      plot.mark(value);
    }
    Curve curve = read(plot).curves().get(0);
    assertEquals(Standing.UNSURE, curve.standing());
    assertEquals(
        2.9, curve.points().get(curve.points().size() - 1).get(0), curve.uncertainty().x());
  }

  /** Curves of cycle life are straight, begin at one place, and have their labels at their ends. */
  @Test
  void aStraightCurveThatEndsBesideItsLabelIsNoLeader() {
    Chart chart =
        read(
            new DrawnPlot()
                .x(0, 600)
                .y(0, 110)
                .ticksX(0, 100, 200, 300, 400, 500, 600)
                .ticksY(0, 20, 40, 60, 80, 100)
                .titleX("Cycles")
                .titleY("Capacity (%)")
                .curve(RED, 0, 500, x -> 100 - 0.02 * x)
                .curve(GREEN, 0, 500, x -> 100 - 0.04 * x)
                .curve(BLUE, 0, 500, x -> 100 - 0.06 * x)
                .label("0.5C", 505, 90)
                .label("1C", 505, 80)
                .label("2C", 505, 70));
    assertEquals(
        List.of("0.5C", "1C", "2C"), chart.curves().stream().map(Curve::label).sorted().toList());
  }

  @Test
  void findsFaultWithAxesThatMakeNoScale() {
    DrawnPlot none = new DrawnPlot().x(0, 1).y(0, 1).titleX("Capacity (mAh)");
    DrawnPlot one = new DrawnPlot().x(0, 1).y(0, 1).tickX(0.5, "500").ticksY(0, 0.5, 1);
    DrawnPlot equal =
        new DrawnPlot()
            .x(0, 1)
            .y(0, 1)
            .tickX(0, "5")
            .tickX(0.5, "5")
            .tickX(1, "5")
            .ticksY(0, 0.5, 1);
    for (DrawnPlot drawn : List.of(none, one, equal)) {
      Chart chart = read(drawn.curve(RED, 0, 1, x -> 1 - x));
      assertEquals(List.of(), chart.curves());
      assertEquals(
          List.of("chart/no-scale"), chart.findings().stream().map(f -> f.rule()).toList());
    }
  }

  @Test
  void doubtsAScaleThatRestsOnTwoNumbers() {
    Chart chart =
        read(
            new DrawnPlot()
                .x(0, 3000)
                .y(2.5, 4.5)
                .ticksX(0, 3000)
                .ticksY(2.5, 3.5, 4.5)
                .titleX("Capacity (mAh)")
                .titleY("Voltage (V)")
                .curve(RED, 0, 2900, x -> falling(x, 4.2)));
    assertEquals(Standing.UNSURE, chart.curves().get(0).standing());
  }

  @Test
  void conditionsInAndOverThePlotHoldForAllCurves() {
    Chart chart =
        read(
            threeCurves()
                .heading("Discharge Characteristics")
                .line("Charge: CC-CV 0.5C (max) 4.20V, 65mA cut-off at 25°C", 110, 106)
                .line("Discharge: CC, 2.50V cut-off at 23°C", 110, 114));
    Conditions common = chart.conditions();
    assertEquals(0.5, common.get(Conditions.CHARGE_RATE));
    assertEquals(4.2, common.get(Conditions.CHARGE_VOLTAGE));
    assertEquals(2.5, common.get(Conditions.CUTOFF_VOLTAGE));
    assertEquals(23, common.get(Conditions.TEMPERATURE));
    assertEquals(null, common.get(Conditions.CHARGE_CURRENT));
  }

  @Test
  void aRateBecomesACurrentByTheCapacityHandedIn() {
    Chart chart =
        new ChartReader(2.5)
            .read(
                discharge()
                    .curve(RED, 0, 2900, x -> falling(x, 4.2))
                    .label("2C", 1000, 4.0)
                    .plot());
    Curve curve = chart.curves().get(0);
    assertEquals(5, curve.conditions().get(Conditions.DISCHARGE_CURRENT));
    assertEquals("current by the capacity of 2.5 A.h", curve.evidence().note());
  }

  @Test
  void numbersTheCurvesThroughASheet() {
    Chart chart = read(threeCurves()).numberedFrom(4);
    assertEquals(List.of("c4", "c5", "c6"), chart.curves().stream().map(Curve::id).toList());
  }
}
