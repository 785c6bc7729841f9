package commonsheet.chart.points;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.OpenData;
import commonsheet.chart.plot.Thinning;
import commonsheet.columns.ColumnException;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasuredLogTest {
  private static final String BDF = "Test Time / s,Current / A,Voltage / V\n";

  /** One hour at 2 A from 4 V to 3 V, with a rest before and after. */
  private static final String HOUR = "0,0,4.1\n10,-2,4.0\n1810,-2,3.5\n3610,-2,3.0\n3620,0,3.2\n";

  @TempDir private Path folder;

  /**
   * The cycler's own columns of the same log end with 30.34 Ah, −29.9 Ah and −28.4 Ah; the names of
   * the columns are those that SOURCE.md gives.
   */
  @ParameterizedTest
  @CsvSource({"1, 30.6, 30.29, 30.34", "2, 61.2, 29.89, 29.97", "3, 91.8, 28.40, 28.72"})
  void publishedLogsOfACyclerGiveTheirCapacity(String rate, double current, double low, double high)
      throws Exception {
    String names =
        "Exclude,Time(s),Cycle,Loop,Loop,Loop,Step,StepTime(s),Current(A),Voltage(V),Power(W),"
            + "Capacity(Ah),Energy(Wh),Mode,Data,\n";
    Path log = write("leaf.csv", names + Files.readString(OpenData.leaf(rate)));
    Curve curve = MeasuredLog.read(log).get(0);
    List<Double> last = curve.points().get(curve.points().size() - 1);
    assertTrue(last.get(0) > low - 0.03 && last.get(0) < high + 0.03, last.toString());
    assertEquals(current, curve.conditions().get(Conditions.DISCHARGE_CURRENT), 0.05);
    assertEquals(Method.MEASURED, curve.method());
    assertTrue(curve.points().size() <= Thinning.MOST_POINTS, "" + curve.points().size());
  }

  @Test
  void theChargeIsTheCurrentOverTime() throws Exception {
    Curve curve = only(BDF + HOUR);
    assertEquals(List.of(0.0, 4.0), curve.points().get(0));
    List<Double> last = curve.points().get(curve.points().size() - 1);
    assertEquals(2.0, last.get(0), 1e-9);
    assertEquals(3.0, last.get(1), 1e-9);
    assertEquals(2.0, curve.conditions().get(Conditions.DISCHARGE_CURRENT));
    assertEquals(3.0, curve.conditions().get(Conditions.CUTOFF_VOLTAGE));
    assertEquals(Standing.READ, curve.standing());
    assertEquals("log.csv", curve.evidence().file());
    assertEquals(64, curve.evidence().sha256().length());
  }

  /**
   * Ten seconds at 2 A before the first sample under load are 5.6 mAh; digits are whole amperes.
   */
  @Test
  void theUncertaintyIsWhatTheLogLeavesOpen() throws Exception {
    Curve curve = only(BDF + HOUR);
    assertEquals(20.0 / 3600 + 0.5, curve.uncertainty().x(), 1e-6);
    assertEquals(0.05, curve.uncertainty().y(), 1e-9);
    curve = only(BDF + "0,-2.00,4.000\n1800,-2.00,3.500\n3600,-2.00,3.000\n");
    assertEquals(0.005, curve.uncertainty().x(), 1e-9);
    assertEquals(0.001, curve.uncertainty().y(), 1e-9);
  }

  /** The names of the Battery Data Format for people, for machines and as IRIs; plain ones. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Test Time / s,Current / A,Voltage / V",
        "test_time_second,current_ampere,voltage_volt",
        "https://w3id.org/battery-data-alliance/ontology/battery-data-format#test_time_second,"
            + "https://w3id.org/battery-data-alliance/ontology/battery-data-format#current_ampere,"
            + "https://w3id.org/battery-data-alliance/ontology/battery-data-format#voltage_volt",
        "Time (s),Current (A),Voltage (V)",
        "TIME[s],I[A],U[V]",
        "Zeit in s,Strom in A,Spannung in V",
        "测试时间(s),电流(A),电压(V)",
      })
  void columnsAreKnownByTheirNames(String names) throws Exception {
    assertEquals(2.0, charge(only("\uFEFF" + names + "\n" + HOUR)), 1e-9);
  }

  @Test
  void otherUnitsDividersAndDecimalCommasAreUnderstood() throws Exception {
    String german =
        "Prüfstand 3\nKanal;5\n\nZeit [h];Strom [mA];Spannung [mV]\n"
            + "0,0;-2000,0;4000\n0,5;-2000,0;3500\n1,0;-2000,0;3000\n";
    Curve curve = only(german);
    assertEquals(2.0, charge(curve), 1e-9);
    assertEquals(4.0, curve.points().get(0).get(1), 1e-9);
    String tabs = "time (min)\tcurrent (A)\tvoltage (V)\n0\t2\t4\n30\t2\t3.5\n60\t2\t3\n";
    assertEquals(2.0, charge(only(tabs)), 1e-9);
  }

  @Test
  void clocksAndDatesAreTimes() throws Exception {
    String clock = "Time(h:min:s.ms),Current(A),Voltage(V)\n0:00:00.0,2,4\n1:00:00.0,2,3\n";
    assertEquals(2.0, charge(only(clock)), 1e-9);
    String date =
        "time,current / A,voltage / V\n2026-05-03 23:30:00,2,4\n2026-05-04 00:30:00.5,2,3\n";
    assertEquals(2.0, charge(only(date)), 0.001);
  }

  /** In the Battery Data Format a discharge is negative, other loggers have it positive. */
  @Test
  void theVoltageTellsWhichSignIsDischarge() throws Exception {
    String cycle = "0,SIGN1,3.0\n3600,SIGN1,4.1\n3700,0,4.1\n3800,SIGN2,4.0\n7400,SIGN2,3.0\n";
    for (String discharge : List.of("-2", "2")) {
      String charge = discharge.equals("2") ? "-1" : "1";
      Curve curve = only(BDF + cycle.replace("SIGN1", charge).replace("SIGN2", discharge));
      assertEquals(2.0, charge(curve), 1e-9);
      assertEquals(4.0, curve.points().get(0).get(1), 1e-9);
    }
  }

  @Test
  void pausesAreLeftOut() throws Exception {
    String rows = "0,-2,4.0\n1800,-2,3.5\n1801,0,3.7\n5401,0,3.75\n5402,-2,3.45\n7202,-2,3.0\n";
    Curve curve = only(BDF + rows);
    assertEquals(2.0, charge(curve), 0.002);
    assertTrue(curve.points().stream().noneMatch(p -> p.get(1) > 3.6 && p.get(1) < 3.9));
  }

  @Test
  void aVaryingCurrentIsNamedNone() throws Exception {
    Curve curve = only(BDF + "0,-1,4.0\n1800,-2,3.5\n3600,-3,3.0\n");
    assertEquals(Standing.UNSURE, curve.standing());
    assertEquals(null, curve.conditions().get(Conditions.DISCHARGE_CURRENT));
    assertEquals(1, curve.doubts().size());
  }

  @Test
  void theSurroundingsTemperatureIsACondition() throws Exception {
    String names =
        "Test Time / s,Current / A,Voltage / V,Ambient Temperature / degC,Temperature / degC";
    Curve curve = only(names + "\n0,-2,4.0,24.8,25\n3600,-2,3.0,25.2,41\n");
    assertEquals(25.0, curve.conditions().get(Conditions.TEMPERATURE));
  }

  @Test
  void thinnedPointsStayWithinATenthOfTheUncertainty() throws Exception {
    List<List<Double>> given = OpenData.enertech("1");
    String rows =
        given.stream()
            .map(p -> Math.round(p.get(0) / 2.28 * 3600) + ",2.28," + p.get(1))
            .collect(Collectors.joining("\n"));
    Curve curve = only(BDF + rows);
    assertTrue(curve.points().size() <= Thinning.MOST_POINTS, "" + curve.points().size());
    for (List<Double> point : given) {
      double off = offset(curve, point);
      assertTrue(off <= 0.1 * 1.0001, off + " at " + point);
    }
  }

  /** Distance of a point from the curve, in uncertainties. */
  private static double offset(Curve curve, List<Double> point) {
    double least = Double.MAX_VALUE;
    double px = point.get(0) / curve.uncertainty().x();
    double py = point.get(1) / curve.uncertainty().y();
    for (int i = 1; i < curve.points().size(); i++) {
      double ax = curve.points().get(i - 1).get(0) / curve.uncertainty().x();
      double ay = curve.points().get(i - 1).get(1) / curve.uncertainty().y();
      double dx = curve.points().get(i).get(0) / curve.uncertainty().x() - ax;
      double dy = curve.points().get(i).get(1) / curve.uncertainty().y() - ay;
      double share = ((px - ax) * dx + (py - ay) * dy) / (dx * dx + dy * dy);
      double at = Math.max(0, Math.min(1, share));
      least = Math.min(least, Math.hypot(px - ax - at * dx, py - ay - at * dy));
    }
    return least;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          '' | the file is empty
          'hello' | there is no column for the time; a line has to name the columns
          'Test Time / s,Voltage / V\\n0,4\\n' | there is no column for the current among "Test Time / s", "Voltage / V"
          'Time / s,Current,Voltage / V\\n0,1,4\\n' | column "Current" does not say its unit; name it with one of A or mA
          'Time / s,Current / A,Voltage / V\\n' | the log has 0 samples, too few for a discharge
          'Time / s,Current / A,Voltage / V\\n0,1,4\\n5,NaN,4\\n' | , line 3: "NaN" in column "Current / A" is no number
          'Time / s,Current / A,Voltage / V\\n0,1,4\\n5,,4\\n' | , line 3: "" in column "Current / A" is no number
          'Time / s,Current / A,Voltage / V\\n9,1,4\\n5,1,4\\n' | , line 3: the time goes back from 9.0 to 5.0 s
          'Time / s,Current / A,Voltage / V\\n0,1,3\\n5,1,4\\n' | the log holds no discharge
          'Time,Current / A,Voltage / V\\n0,1,4\\n5,1,3\\n' | column "Time" does not say its unit
          'Time,Current / A,Voltage / V\\n2026-99-03 10:00:00,1,4\\n' | "2026-99-03 10:00:00" is no time
          """)
  void whatIsWrongIsSaidInASentence(String text, String sentence) throws IOException {
    Path log = write("log.csv", text.replace("\\n", "\n"));
    ColumnException wrong = assertThrows(ColumnException.class, () -> MeasuredLog.read(log));
    assertTrue(wrong.getMessage().startsWith(log + (sentence.startsWith(",") ? "," : "")));
    assertTrue(wrong.getMessage().contains(sentence), wrong.getMessage());
  }

  @Test
  void aFileBeyondMeasureIsRefusedUnread() throws IOException {
    Path huge = folder.resolve("huge.csv");
    try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
      file.setLength(1L << 30);
    }
    ColumnException wrong = assertThrows(ColumnException.class, () -> MeasuredLog.read(huge));
    assertTrue(wrong.getMessage().contains("1024 MB, more than the 256 MB"), wrong.getMessage());
  }

  @Test
  void aFileThatIsNoTextIsSaidToBeNone() throws IOException {
    Path picture = Files.write(folder.resolve("log.csv"), new byte[1 << 20]);
    ColumnException wrong = assertThrows(ColumnException.class, () -> MeasuredLog.read(picture));
    assertTrue(wrong.getMessage().endsWith("this is no table of text; save it as CSV"));
    Path missing = folder.resolve("missing.csv");
    wrong = assertThrows(ColumnException.class, () -> MeasuredLog.read(missing));
    assertEquals(missing + ": there is no such file; check the name", wrong.getMessage());
  }

  @Test
  void utf16WithItsMarkIsRead() throws Exception {
    Path log =
        Files.write(folder.resolve("log.csv"), (BDF + HOUR).getBytes(StandardCharsets.UTF_16));
    assertEquals(2.0, charge(MeasuredLog.read(log).get(0)), 1e-9);
  }

  private Curve only(String text) throws Exception {
    List<Curve> curves = MeasuredLog.read(write("log.csv", text));
    assertEquals(1, curves.size());
    return curves.get(0);
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static double charge(Curve curve) {
    return curve.points().get(curve.points().size() - 1).get(0);
  }
}
