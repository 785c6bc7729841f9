package commonsheet.chart.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Curve;
import commonsheet.sheet.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Scales computed by hand: 3 A.h over 300 pt from 100, 2 V over 200 pt up from 300. */
class PlotReferenceTest {
  private static final Curve.Axis CAPACITY = axis("capacity", null, tick(100, 0), tick(400, 3));
  private static final Curve.Axis VOLTAGE = axis("voltage", null, tick(300, 2.5), tick(100, 4.5));

  @Test
  void placesBecomeValuesAndValuesPlaces() throws Exception {
    PlotReference reference = PlotReference.of(CAPACITY, VOLTAGE);
    List<Double> values = reference.values(new Point(250, 200));
    assertEquals(1.5, values.get(0), 1e-12);
    assertEquals(3.5, values.get(1), 1e-12);
    Point place = reference.place(1.5, 3.5);
    assertEquals(250, place.x(), 1e-9);
    assertEquals(200, place.y(), 1e-9);
    assertEquals(0.01, reference.x().perPoint(place), 1e-12);
  }

  @Test
  void twoMarksMakeALogarithmicAxisWhereAPersonSaysSo() throws Exception {
    Curve.Axis decades = axis("time", Curve.Axis.LOGARITHMIC, tick(100, 1), tick(400, 1000));
    PlotReference reference = PlotReference.of(decades, VOLTAGE);
    assertEquals(10, reference.values(new Point(200, 200)).get(0), 1e-9);
    assertEquals(300, reference.place(100, 3.5).x(), 1e-9);
  }

  @Test
  void theResidualOfAMarkIsToldInTheUnitOfTheAxis() throws Exception {
    // Marks at 100, 200, 300, 400 for 0, 1, 2, 3, the third 3 pt off: by least squares of places
    // over values the scale has 100.6 pt per A.h and stands at 100.3 + 0.15 for 0.
    AxisReference axis =
        AxisReference.of(
            axis("capacity", null, tick(100, 0), tick(200, 1), tick(303, 2), tick(400, 3)),
            Direction.ACROSS);
    double offset = 250.75 - 1.5 * 100.3;
    // Means: place 250.75, value 1.5. Slope (-1.5·-150.75 -0.5·-50.75 +0.5·52.25 +1.5·149.25)/5.
    double slope = (226.125 + 25.375 + 26.125 + 223.875) / 5;
    assertEquals(100.3, slope, 1e-9);
    assertEquals((303 - offset) / slope - 2, axis.residual(tick(303, 2)), 1e-9);
    assertTrue(axis.error() > 1);
  }

  /** A chart turned by 30 degrees, by the matrix of a rotation. */
  @Test
  void threeMarksKnownInBothDirectionsMakeATurnedChart() throws Exception {
    Point origin = turned(0, 2.5);
    Point right = turned(3, 2.5);
    Point top = turned(0, 4.5);
    Curve.Axis x = axis("capacity", null, across(origin, 0), across(right, 3), across(top, 0));
    Curve.Axis y = axis("voltage", null, down(origin, 2.5), down(right, 2.5), down(top, 4.5));
    PlotReference reference = PlotReference.of(x, y);
    List<Double> values = reference.values(turned(1.2, 3.6));
    assertEquals(1.2, values.get(0), 1e-9);
    assertEquals(3.6, values.get(1), 1e-9);
    assertEquals(0, reference.place(1.2, 3.6).distance(turned(1.2, 3.6)), 1e-6);
  }

  @Test
  void marksThatMakeNoScaleAreRefusedInASentence() {
    assertRefused("has one reference mark only", tick(100, 0));
    assertRefused("one place or one value only", tick(100, 0), tick(100, 3));
    assertRefused("one place or one value only", tick(100, 3), tick(400, 3));
    assertRefused(
        "lie on one line",
        across(new Point(0, 0), 0),
        across(new Point(5, 5), 1),
        across(new Point(9, 9), 2));
    assertRefused("of an upright and of a turned chart", tick(100, 0), across(new Point(5, 5), 1));
    assertThrows(
        ReferenceException.class,
        () ->
            AxisReference.of(
                axis("time", Curve.Axis.LOGARITHMIC, tick(0, 0), tick(9, 1)), Direction.ACROSS));
  }

  private static void assertRefused(String sentence, Curve.Tick... ticks) {
    String said =
        assertThrows(
                ReferenceException.class,
                () -> AxisReference.of(axis("capacity", null, ticks), Direction.ACROSS))
            .getMessage();
    assertTrue(said.contains(sentence), said);
  }

  private static Point turned(double capacity, double voltage) {
    double cos = Math.cos(Math.PI / 6);
    double sin = Math.sin(Math.PI / 6);
    double right = 100 * capacity;
    double up = 100 * (voltage - 2.5);
    return new Point(200 + cos * right - sin * up, 400 - sin * right - cos * up);
  }

  private static Curve.Tick across(Point place, double value) {
    return new Curve.Tick(place.x(), value, "" + value, place.y());
  }

  private static Curve.Tick down(Point place, double value) {
    return new Curve.Tick(place.y(), value, "" + value, place.x());
  }

  private static Curve.Tick tick(double at, double value) {
    return new Curve.Tick(at, value, "" + value);
  }

  private static Curve.Axis axis(String quantity, String scale, Curve.Tick... ticks) {
    return new Curve.Axis(quantity, "1", List.of(ticks), scale);
  }
}
