package commonsheet.chart.overlay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.sheet.Box;
import commonsheet.sheet.CurveMark;
import commonsheet.sheet.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class CurvesOnPageTest {
  private static final List<Curve.Tick> CAPACITIES =
      List.of(tick(100, 0), tick(200, 1), tick(300, 2));
  private static final List<Curve.Tick> VOLTAGES = List.of(tick(400, 2.5), tick(250, 4.0));

  @Test
  void pointsGoBackToWhereTheTicksSayTheyStand() {
    CurveMark mark = CurvesOnPage.mark(curve(CAPACITIES, VOLTAGES, List.of(1.5, 3.0)));
    assertEquals(new Point(250, 350), rounded(mark.points().get(0)));
    assertEquals("1C, 1 C", mark.name());
    assertTrue(!mark.unsure());
  }

  @Test
  void aLogarithmicScaleIsToldByItsTicks() {
    List<Curve.Tick> decades = List.of(tick(100, 1), tick(200, 10), tick(300, 100));
    CurveMark mark = CurvesOnPage.mark(curve(decades, VOLTAGES, List.of(31.6228, 3.25)));
    assertEquals(new Point(250, 325), rounded(mark.points().get(0)));
  }

  @Test
  void aCurveWithoutTicksHasNoPlace() {
    CurveMark mark = CurvesOnPage.mark(curve(List.of(), VOLTAGES, List.of(1.0, 3.0)));
    assertEquals(List.of(), mark.points());
  }

  @Test
  void ticksStandAtTheEdgesOfThePlot() {
    Curve curve = curve(CAPACITIES, VOLTAGES, List.of(1.0, 3.0));
    List<Point> ticks = CurvesOnPage.ticks(List.of(curve, curve), new Box(100, 250, 200, 150));
    // The first tick of either axis is the corner.
    assertEquals(4, ticks.size());
    assertTrue(ticks.contains(new Point(200, 400)));
    assertTrue(ticks.contains(new Point(100, 250)));
  }

  @Test
  void pointsPlacedByHandBelongToTheChartAroundThem() {
    Curve traced = curve(CAPACITIES, VOLTAGES, List.of(1.0, 3.0));
    List<Figure> figures = Figure.of(List.of(), List.of(traced, traced));
    assertEquals(1, figures.size());
    assertEquals(2, figures.get(0).curves().size());
  }

  private static Point rounded(Point point) {
    return new Point(Math.round(point.x() * 1e3) / 1e3, Math.round(point.y() * 1e3) / 1e3);
  }

  private static Curve.Tick tick(double at, double value) {
    return new Curve.Tick(at, value, "" + value);
  }

  private static Curve curve(List<Curve.Tick> x, List<Curve.Tick> y, List<Double> point) {
    return new Curve(
        "c1",
        "discharge",
        "1C",
        Conditions.NONE.with(Conditions.DISCHARGE_RATE, 1).with(Conditions.CHARGE_RATE, 0.5),
        new Curve.Axis("capacity", "A.h", x),
        new Curve.Axis("voltage", "V", y),
        List.of(point),
        new Curve.Uncertainty(0, 0),
        Method.VECTOR_CURVE,
        new Evidence(
            1,
            List.of(100.0, 250.0, 200.0, 150.0),
            null,
            Method.VECTOR_CURVE,
            null,
            null,
            null,
            null,
            null),
        Standing.READ,
        List.of());
  }
}
