package commonsheet.chart.points;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.columns.ColumnException;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlacedPointsTest {
  @TempDir private Path folder;

  @Test
  void pointsInTheValuesOfTheAxesAreConverted() throws Exception {
    List<Curve> curves =
        read(
            """
            curve,capacity / mAh,voltage / V,dischargeRate,temperature
            0.2C,0,4.15,0.2,25
            0.2C,2600,2.50,,
            1C,0,4.05,1,25
            1C,2480,2.50,,
            """);
    assertEquals(List.of("0.2C", "1C"), curves.stream().map(Curve::label).toList());
    Curve slow = curves.get(0);
    assertEquals(List.of(List.of(0.0, 4.15), List.of(2.6, 2.5)), slow.points());
    assertEquals("discharge", slow.kind());
    assertEquals("A.h", slow.x().unit());
    assertEquals(0.2, slow.conditions().get(Conditions.DISCHARGE_RATE));
    assertEquals(25.0, slow.conditions().get(Conditions.TEMPERATURE));
    assertEquals(Method.HAND_PLACED, slow.method());
    assertEquals(Standing.READ, slow.standing());
    assertEquals("points.csv", slow.evidence().file());
    // Half a per cent of what they span, by eye.
    assertEquals(0.013, slow.uncertainty().x(), 1e-9);
    assertEquals(0.00825, slow.uncertainty().y(), 1e-9);
  }

  @Test
  void placesOnThePageAreReadByTwoMarksPerAxis() throws Exception {
    Curve curve =
        read("""
                page,curve,x / pt,y / pt,capacity / mAh,voltage / V,dischargeCurrent
                5,,100,,0,,
                5,,400,,3000,,
                5,,,300,,2.5,
                5,,,100,,4.5,
                5,1C,100,140,,,2.6
                5,1C,250,200,,,
                """)
            .get(0);
    assertEquals(0.0, curve.points().get(0).get(0), 1e-9);
    assertEquals(4.1, curve.points().get(0).get(1), 1e-9);
    assertEquals(1.5, curve.points().get(1).get(0), 1e-9);
    assertEquals(3.5, curve.points().get(1).get(1), 1e-9);
    assertEquals(Integer.valueOf(5), curve.evidence().page());
    assertEquals(List.of(100.0, 100.0, 300.0, 200.0), curve.evidence().box());
    assertEquals(new Curve.Tick(400, 3, "3000"), curve.x().ticks().get(1));
    // Half a point of the page is 5 mAh and 5 mV here.
    assertEquals(0.005, curve.uncertainty().x(), 1e-9);
    assertEquals(0.005, curve.uncertainty().y(), 1e-9);
  }

  /** A scan turned by 30 degrees: places by the matrix of a rotation, from a school book. */
  @Test
  void aTurnedScanIsReadByThreeMarks() throws Exception {
    StringBuilder rows = new StringBuilder("x,y,capacity / Ah,voltage / V,dischargeRate\n");
    for (double[] mark : new double[][] {{0, 2.5}, {3, 2.5}, {0, 4.5}}) {
      rows.append(turned(mark[0], mark[1])).append(mark[0] + "," + mark[1] + ",\n");
    }
    rows.append(turned(1.2, 3.6)).append(",,1\n");
    Curve curve = read(rows.toString()).get(0);
    assertEquals(1.2, curve.points().get(0).get(0), 1e-9);
    assertEquals(3.6, curve.points().get(0).get(1), 1e-9);
    // One pixel in any direction.
    assertEquals(0.01, curve.uncertainty().x(), 1e-9);
    assertEquals(List.of(), curve.x().ticks());
  }

  private static String turned(double capacity, double voltage) {
    double across = 100 * capacity;
    double up = 200 * voltage;
    double cos = Math.cos(Math.PI / 6);
    double sin = Math.sin(Math.PI / 6);
    return (700 + cos * across - sin * up) + "," + (900 - sin * across - cos * up) + ",";
  }

  @Test
  void aLogarithmicAxisIsMarkedByItsName() throws Exception {
    Curve curve =
        read("""
                kind,x,y,log time / s,voltage / V
                ,0,,1,
                ,300,,1000,
                ,,200,,3
                ,,0,,4
                pulse,100,100,,
                """)
            .get(0);
    assertEquals(10, curve.points().get(0).get(0), 1e-9);
    assertEquals(3.5, curve.points().get(0).get(1), 1e-9);
    assertEquals("pulse", curve.kind());
  }

  @Test
  void aCurveWithoutItsCurrentStaysUnsure() throws Exception {
    Curve curve = read("capacity / Ah,voltage / V\n0,4.1\n2.5,2.5\n").get(0);
    assertEquals(Standing.UNSURE, curve.standing());
    assertEquals(1, curve.doubts().size());
    assertEquals(null, curve.label());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          'a,b\\n1,2\\n' | no line names the columns
          'capacity / Ah,voltage / V,current / A\\n1,2,3\\n' | the columns name 3: capacity / Ah, voltage / V, current / A
          'capacity,voltage / V\\n1,2\\n' | column "capacity" does not say its unit
          'capacity / Ah,voltage / V,colour\\n1,2,red\\n' | column "colour" is none that points have
          'capacity / Ah,voltage / V\\n' | the file holds no points
          'capacity / Ah,voltage / V\\n1,inf\\n' | , line 2: "inf" in column "voltage / V" is no number
          'capacity / Ah,voltage / V\\n1,\\n' | , line 2: a point needs two numbers
          'x,y,capacity / Ah,voltage / V\\n1,2,,\\n' | the x axis (capacity / Ah) has no reference mark
          'x,y,capacity / Ah,voltage / V\\n0,,0,\\n1,2,,\\n' | the x axis (capacity / Ah) has one reference mark only
          'x,y,capacity / Ah,voltage / V\\n0,,0,\\n0,,1,\\n1,2,,\\n' | has reference marks of one place or one value only
          'x,y,capacity / Ah,voltage / V\\n0,,1,\\n9,,1,\\n1,2,,\\n' | has reference marks of one place or one value only
          'x,y,capacity / Ah,voltage / V\\n0,0,0,0\\n5,5,1,1\\n9,9,2,2\\n1,2,,\\n' | the reference marks lie on one line
          'x,y,capacity / Ah,voltage / V\\n,0,0,\\n1,2,,\\n' | , line 2: a reference mark needs its place along the axis
          'x,capacity / Ah,voltage / V\\n1,2,3\\n' | places need both a column x and a column y
          'kind,capacity / Ah,voltage / V\\nMy Chart,1,2\\n' | "My Chart" is no kind of chart
          'time / s,voltage / V\\n1,2\\n' | say which in a column kind
          'curve,capacity / Ah,voltage / V,dischargeRate\\na,1,2,1\\na,1,2,2\\n' | differ in dischargeRate
          'page,capacity / Ah,voltage / V\\n0,1,2\\n' | pages are counted from 1
          'x,y,log capacity / Ah,voltage / V\\n0,,0,\\n9,,1,\\n1,2,,\\n' | is logarithmic and has a reference mark that is not
          """)
  void whatIsWrongIsSaidInASentence(String text, String sentence) throws IOException {
    Path file = Files.writeString(folder.resolve("points.csv"), text.replace("\\n", "\n"));
    ColumnException wrong = assertThrows(ColumnException.class, () -> PlacedPoints.read(file));
    assertTrue(wrong.getMessage().startsWith(file + (sentence.startsWith(",") ? "," : "")));
    assertTrue(wrong.getMessage().contains(sentence), wrong.getMessage());
  }

  private List<Curve> read(String text) throws Exception {
    return PlacedPoints.read(Files.writeString(folder.resolve("points.csv"), text));
  }
}
