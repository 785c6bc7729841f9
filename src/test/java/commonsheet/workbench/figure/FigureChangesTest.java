package commonsheet.workbench.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Method;
import commonsheet.record.RecordStore;
import commonsheet.record.Standing;
import commonsheet.record.StoredRecord;
import commonsheet.workbench.Served;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What persons do at a chart, as its page asks for it, against scales computed by hand. The
 * sample's curve c1 gets ticks: its plot is 90 to 350 by 120 to 300 pt, 100 pt to an A.h and 90 to
 * a volt.
 */
class FigureChangesTest {
  private static final String X =
      """
      {"key": "x1", "along": "x", "quantity": "capacity", "unit": "A.h", "ticks": [
        {"at": 90, "value": 0, "text": "0"}, {"at": 340, "value": 2.5, "text": "2500"}]}\
      """;
  private static final String Y =
      """
      {"key": "y1", "along": "y", "quantity": "voltage", "unit": "V", "ticks": [
        {"at": 300, "value": 2.5, "text": "2.5"}, {"at": 120, "value": 4.5, "text": "4.5"}]}\
      """;
  private static final String SAME =
      """
      {"id": "c1", "kind": "discharge", "label": "1C", "conditions": {}, "x": "x1", "y": "y1\"\
      """;

  @TempDir private Path folder;
  private Served served;

  @BeforeEach
  void open() throws Exception {
    served = Served.over(folder);
    StoredRecord before = RecordStore.open(served.file());
    List<Curve> curves = new ArrayList<>(before.record().curves());
    curves.set(0, onChart(curves.get(0)));
    RecordStore.save(before, before.record().withCurves(curves));
  }

  private static Curve onChart(Curve c) {
    return new Curve(
        c.id(),
        c.kind(),
        c.label(),
        c.conditions(),
        new Curve.Axis(
            "capacity",
            "A.h",
            List.of(new Curve.Tick(90, 0, "0"), new Curve.Tick(340, 2.5, "2500"))),
        new Curve.Axis(
            "voltage",
            "V",
            List.of(new Curve.Tick(300, 2.5, "2.5"), new Curve.Tick(120, 4.5, "4.5"))),
        c.points(),
        c.uncertainty(),
        c.method(),
        c.evidence(),
        c.standing(),
        c.doubts());
  }

  @AfterEach
  void close() {
    served.close();
  }

  private CellRecord record() throws Exception {
    return RecordStore.open(served.file()).record();
  }

  private Served.Answer change(String axes, String curves) throws Exception {
    String deed =
        "{\"page\": 5, \"box\": [90, 120, 260, 180], \"axes\": ["
            + axes
            + "], \"curves\": ["
            + curves
            + "]}";
    return changeBy(deed);
  }

  private Served.Answer changeBy(String deed) throws IOException, InterruptedException {
    return served.post(
        "/api/figure/change",
        Map.of(
            "file",
            Served.FILE,
            "version",
            served.view().get("version").asText(),
            "by",
            "second reviewer",
            "deed",
            Served.JSON.readTree(deed)));
  }

  @Test
  void curvesStandAtTheirPlacesOnThePage() throws Exception {
    JsonNode view = served.get("/api/figure", "file", Served.FILE).json();
    assertEquals(1, view.get("figures").size());
    JsonNode chart = view.at("/figures/0");
    assertEquals(5, chart.get("page").asInt());
    JsonNode last = chart.at("/curves/0/places/2");
    assertEquals(340, last.get(0).asDouble(), 1e-9);
    assertEquals(300, last.get(1).asDouble(), 1e-9);
    // 0.004 V are 0.36 pt, 0.01 A.h are 1 pt.
    assertEquals(0.36, chart.at("/curves/0/errorY").asDouble(), 1e-9);
    assertEquals(1, chart.at("/curves/0/errorX").asDouble(), 1e-9);
  }

  @Test
  void aMovedTickComputesTheCurveAnewFromItsPlaces() throws Exception {
    Served.Answer answer = change(X + "," + Y.replace("120", "129"), SAME + "}");
    assertEquals(200, answer.status(), answer.sentence());
    Curve curve = record().curve("c1");
    // 4.12 V stood at 300 - 90 * 1.62 = 154.2 pt; 171 pt to 2 V make that 2.5 + 145.8 / 85.5.
    assertEquals(2.5 + 145.8 / 85.5, curve.points().get(0).get(1), 1e-4);
    assertEquals(2.5, curve.points().get(2).get(1), 1e-9);
    assertEquals(2.5, curve.points().get(2).get(0), 1e-9);
    // A mark placed by hand is good to half a point: 0.5 / 85.5 V, to two digits.
    assertEquals(0.0059, curve.uncertainty().y(), 1e-12);
    assertEquals(0.01, curve.uncertainty().x(), 1e-12);
    assertEquals(Standing.CORRECTED, curve.standing());
    assertEquals(Method.VECTOR_CURVE, curve.method());
    assertEquals(4.12, curve.original().points().get(0).get(1));
    assertTrue(curve.evidence().note().contains("1 of them placed by hand"));
    assertTrue(curve.evidence().note().contains("2.5 at 300 pt, 4.5 at 120 pt"));
    assertEquals("the work at the chart on page 5", answer.json().get("undo").asText());
    // What follows from the curve follows from the new one, and undoing brings the old one back.
    assertEquals(200, served.step("undo", "second reviewer").status());
    assertEquals(4.12, record().curve("c1").points().get(0).get(1));
  }

  @Test
  void anotherValueOfATickKeepsItsPlaceAsWellAsItWasRead() throws Exception {
    change(X + "," + Y.replace("4.5,", "5.5,"), SAME + "}");
    // 180 pt to 3 V: 0.36 pt are 0.006 V.
    assertEquals(0.006, record().curve("c1").uncertainty().y(), 1e-12);
  }

  @Test
  void twoMarksMakeALogarithmicAxis() throws Exception {
    String decades =
        X.replace("\"value\": 0,", "\"value\": 0.01,")
            .replace("\"ticks\"", "\"scale\": \"logarithmic\", \"ticks\"");
    change(decades + "," + Y, SAME + "}");
    Curve curve = record().curve("c1");
    // The point at 0.1 A.h stood 10 of 250 pt in: 0.01 * 250^(10/250).
    assertEquals(0.01 * Math.pow(250, 0.04), curve.points().get(1).get(0), 1e-5);
    assertEquals(Curve.Axis.LOGARITHMIC, curve.x().scale());
  }

  @Test
  void pointsPlacedByHandSaySo() throws Exception {
    change(
        X + "," + Y,
        SAME + ", \"places\": [90, 154.2, 100, 164.1, 215, 210, 340, 300], \"placed\": 1}");
    Curve curve = record().curve("c1");
    assertEquals(List.of(1.25, 3.5), curve.points().get(2));
    assertEquals(Method.HAND_PLACED, curve.method());
    assertEquals(3, curve.original().points().size());
    assertTrue(curve.evidence().note().contains("1 of 4 points placed by hand"));
    // Half a point of the page is 0.5 / 90 V.
    assertEquals(0.0056, curve.uncertainty().y(), 1e-12);
  }

  @Test
  void aNewCurveIsUnsureUntilItsCurrentIsSaid() throws Exception {
    String places = "\"places\": [90, 156, 215, 210, 330, 300], \"placed\": 3";
    String curve =
        "{\"kind\": \"discharge\", \"label\": \"0.5C\", \"x\": \"x1\", \"y\": \"y1\", " + places;
    assertEquals(200, change(X + "," + Y, curve + "}").status());
    Curve unknown = record().curve("c3");
    assertEquals(Standing.UNSURE, unknown.standing());
    assertEquals(List.of(1.25, 3.5), unknown.points().get(1));
    String said = ", \"conditions\": {\"dischargeRate\": \"0.5C\", \"temperature\": \"73.4 °F\"}}";
    assertEquals(200, change(X + "," + Y, curve + said).status());
    Curve known = record().curve("c4");
    assertEquals(Standing.CORRECTED, known.standing());
    assertEquals(0.5, known.conditions().get(Conditions.DISCHARGE_RATE));
    assertEquals(23.0, known.conditions().get(Conditions.TEMPERATURE));
    assertEquals(Integer.valueOf(5), known.evidence().page());
    assertEquals("added", record().review().steps().get(1).step().label());
  }

  @Test
  void anAxisLeavesWhatIsDoubtfulInItsCurvesDoubtful() throws Exception {
    StoredRecord before = RecordStore.open(served.file());
    List<Curve> curves = new ArrayList<>(before.record().curves());
    curves.set(0, curves.get(0).doubted("No label could be tied to this curve."));
    RecordStore.save(before, before.record().withCurves(curves));
    change(X + "," + Y.replace("120", "129"), SAME + "}");
    Curve curve = record().curve("c1");
    assertEquals(Standing.UNSURE, curve.standing());
    assertEquals(1, curve.doubts().size());
  }

  @Test
  void threeMarksMakeATurnedChart() throws Exception {
    // Turned by a quarter of a right angle's tangent: the x axis falls 1 in 10.
    String x =
        """
        {"key": "x1", "along": "x", "quantity": "capacity", "unit": "A.h", "ticks": [
          {"at": 100, "across": 300, "value": 0, "text": "0"},
          {"at": 300, "across": 320, "value": 2, "text": "2"},
          {"at": 80, "across": 500, "value": 0, "text": "0"}]}\
        """;
    String y =
        """
        {"key": "y1", "along": "y", "quantity": "voltage", "unit": "V", "ticks": [
          {"at": 300, "across": 100, "value": 4.5, "text": "4.5"},
          {"at": 320, "across": 300, "value": 4.5, "text": "4.5"},
          {"at": 500, "across": 80, "value": 2.5, "text": "2.5"}]}\
        """;
    // Half of the x axis and half of the y axis from its corner: 100 + 100 - 10, 300 + 10 + 100.
    String curve =
        "{\"kind\": \"discharge\", \"x\": \"x1\", \"y\": \"y1\", \"conditions\":"
            + " {\"dischargeRate\": \"1\"}, \"places\": [100, 300, 190, 410], \"placed\": 2}";
    Served.Answer answer = change(x + "," + y, curve);
    assertEquals(200, answer.status(), answer.sentence());
    List<Double> point = record().curve("c3").points().get(1);
    assertEquals(1, point.get(0), 1e-9);
    assertEquals(3.5, point.get(1), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          X,Y | {"id": "c9", "kind": "discharge", "x": "x1", "y": "y1"} | The record has no c9
          X,Y | {"id": "c2", "kind": "discharge", "x": "x1", "y": "y1"} | Curve c2 stands on no chart
          X | {"id": "c1", "kind": "discharge", "x": "x1", "y": "y1"} | names an axis y1 that the chart does not have
          X,Y | {"id": "c1", "kind": "discharge", "x": "y1", "y": "x1"} | takes an axis along x
          X,Y | {"id": "c1", "kind": "riddle", "x": "x1", "y": "y1"} | is no kind of chart
          X,Y | {"id": "c1", "kind": "discharge", "x": "x1", "y": "y1", "places": [1, 2]} | needs two points at least
          X,Y | {"id": "c1", "kind": "discharge", "x": "x1", "y": "y1", "places": [1, 2, 3]} | pairs of numbers
          X,Y | {"kind": "discharge", "x": "x1", "y": "y1"} | has no points
          X,Y | {"id": "c1", "kind": "discharge", "x": "x1", "y": "y1", "conditions": {"dischargeRate": "fast"}} | is no number with a unit
          X,Y | {"id": "c1", "kind": "discharge", "x": "x1", "y": "y1", "conditions": {"luck": "1"}} | is no condition
          X,Y | {"id": "c1", "kind": "discharge", "x": "x1", "y": "y1", "traced": {"ink": "paths"}} | how far it may be off
          X,ONE | {"id": "c1", "kind": "discharge", "x": "x1", "y": "y1"} | has one reference mark only
          X,Y | | The chart has no curve yet
          """)
  void whatCannotBeDoneIsSaidAndNothingIsWritten(String axes, String curve, String sentence)
      throws Exception {
    String one = Y.replace(", {\"at\": 120, \"value\": 4.5, \"text\": \"4.5\"}", "");
    String all = axes.replace("ONE", one).replace("X", X).replace("Y", Y);
    String before = RecordStore.open(served.file()).version();
    Served.Answer answer = change(all, curve == null ? "" : curve);
    assertEquals(422, answer.status());
    assertTrue(answer.sentence().contains(sentence), answer.sentence());
    assertEquals(before, RecordStore.open(served.file()).version());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          {"page": 50, "box": [1, 1, 9, 9], "axes": [], "curves": [{"kind": "charge", "x": "x", "y": "y"}]} | no page 50
          {"page": 5, "box": [1, 1, 0, 9], "axes": [], "curves": [{"kind": "charge", "x": "x", "y": "y"}]} | width and height
          {"page": 5, "box": [1, 1, 9, 9], "axes": [{"key": "a", "along": "z"}], "curves": []} | along x or y
          {"page": "x", "box": [1, 1, 9, 9], "axes": [], "curves": [{"kind": "charge", "x": "x", "y": "y"}]} | a whole number
          """)
  void whatIsNoChartIsRefused(String deed, String sentence) throws Exception {
    Served.Answer answer = changeBy(deed);
    assertEquals(422, answer.status());
    assertTrue(answer.sentence().contains(sentence), answer.sentence());
  }

  @Test
  void anEarlierVersionIsRefusedAndTracingNeedsTheSheet() throws Exception {
    String deed = "{\"page\": 5, \"box\": [90, 120, 260, 180], \"axes\": [" + X + "," + Y + "], ";
    Map<String, Object> body =
        Map.of(
            "file",
            Served.FILE,
            "version",
            "0000",
            "by",
            "second reviewer",
            "deed",
            Served.JSON.readTree(deed + "\"curves\": [" + SAME + "}]}"));
    assertEquals(409, served.post("/api/figure/change", body).status());
    String trace =
        "{\"file\": \"%s\", \"page\": 5, \"box\": [90, 120, 260, 180], \"at\": {\"x\": 1, \"y\":"
            + " 2}}";
    Served.Answer sheet = served.post("/api/figure/trace", trace.formatted(Served.FILE));
    assertEquals(404, sheet.status());
    assertTrue(sheet.sentence().contains("tc-26e.pdf"), sheet.sentence());
    assertEquals(404, served.post("/api/figure/trace", trace.formatted("none.json")).status());
    assertEquals(404, served.get("/api/figure", "file", "../" + Served.FILE).status());
  }
}
