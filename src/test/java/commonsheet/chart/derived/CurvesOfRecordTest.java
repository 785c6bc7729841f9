package commonsheet.chart.derived;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.Chart;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.RecordJson;
import commonsheet.record.RecordValidator;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.sheet.Box;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CurvesOfRecordTest {
  private static final List<List<Double>> LINE = List.of(List.of(0.0, 4.0), List.of(2.0, 2.0));
  private static final CellRecord EMPTY = Cells.with(List.of(), List.of());

  @Test
  void curvesOfChartsAreNumberedThroughAndDerivedFrom() {
    Finding about = finding("chart/left-out", List.of("c1"), "A chart on page 2 has …");
    CellRecord record =
        valid(
            CurvesOfRecord.traced(
                EMPTY, List.of(chart(2, "0.2C", about), chart(3, "1C", null)), null));
    assertEquals(List.of("c1", "c2"), ids(record));
    assertEquals(List.of("c1"), record.findings().get(0).about());
    assertEquals(2, Cells.of(record, "capacity").size());
  }

  @Test
  void tracingAgainReplacesWhatWasTraced() {
    Finding told = finding("chart/no-scale", List.of(), "A chart on page 2 was found, but …");
    CellRecord first =
        CurvesOfRecord.traced(EMPTY, List.of(chart(2, "0.2C", told), chart(3, "1C", null)), null);
    CellRecord second = valid(CurvesOfRecord.traced(first, List.of(chart(2, "2C", null)), null));
    assertEquals(List.of("2C"), second.curves().stream().map(Curve::label).toList());
    assertEquals(List.of("c1"), ids(second));
    assertEquals(List.of(), second.findings());
    assertEquals(1, Cells.of(second, "capacity").size());
  }

  @Test
  void aPageTracedByItselfLeavesTheOthers() {
    Finding two = finding("chart/no-scale", List.of(), "A chart on page 2 (1 pt …) was found.");
    Finding three = finding("chart/no-scale", List.of(), "A chart on page 3 (1 pt …) was found.");
    CellRecord first =
        CurvesOfRecord.traced(EMPTY, List.of(chart(2, "a", two), chart(3, "b", three)), null);
    CellRecord second = valid(CurvesOfRecord.traced(first, List.of(chart(3, "c", null)), 3));
    assertEquals(List.of("a", "c"), second.curves().stream().map(Curve::label).toList());
    assertEquals(List.of(two), second.findings());
  }

  @Test
  void whatAPersonSettledOrAddedIsKeptAndNotTracedTwice() {
    CellRecord first =
        CurvesOfRecord.traced(EMPTY, List.of(chart(2, "a", null), chart(3, "b", null)), null);
    Curve settled = Cells.standing(first.curves().get(1), Standing.REJECTED);
    CellRecord reviewed =
        CurvesOfRecord.added(
            Cells.with(List.of(), List.of(first.curves().get(0), settled)),
            List.of(measured("bench.csv")));
    Finding about = finding("chart/left-out", List.of("c1"), "…");
    CellRecord again =
        valid(
            CurvesOfRecord.traced(
                reviewed, List.of(chart(2, "a", null), chart(3, "b", about)), null));
    assertEquals(List.of("b", "bench", "a"), again.curves().stream().map(Curve::label).toList());
    assertTrue(again.curves().contains(settled));
    assertEquals(List.of(), again.findings(), "a finding about a curve that is not traced again");
  }

  @Test
  void aCurveThatASettledValueComesFromStays() {
    CellRecord first = CurvesOfRecord.traced(EMPTY, List.of(chart(2, "a", null)), null);
    CellRecord confirmed =
        Cells.with(
            first.statements().stream().map(CurvesOfRecordTest::confirmed).toList(),
            first.curves());
    CellRecord again = valid(CurvesOfRecord.traced(confirmed, List.of(chart(2, "a", null)), null));
    assertEquals(confirmed.statements(), again.statements());
    assertEquals(confirmed.curves(), again.curves());
  }

  @Test
  void aFileAddedAgainReplacesItsCurves() {
    CellRecord once = CurvesOfRecord.added(EMPTY, List.of(measured("a.csv"), measured("b.csv")));
    CellRecord twice = valid(CurvesOfRecord.added(once, List.of(measured("a.csv"))));
    assertEquals(
        List.of("b.csv", "a.csv"), twice.curves().stream().map(c -> c.evidence().file()).toList());
    assertEquals(List.of("c2", "c3"), ids(twice));
  }

  @Test
  void measuredCurvesGiveNoStatements() {
    assertEquals(List.of(), CurvesOfRecord.added(EMPTY, List.of(measured("a.csv"))).statements());
  }

  @Test
  void aRecordReadAnewKeepsPointsAndLogs() {
    CellRecord earlier = CurvesOfRecord.added(EMPTY, List.of(measured("a.csv")));
    CellRecord fresh = CurvesOfRecord.traced(EMPTY, List.of(chart(2, "a", null)), null);
    CellRecord whole = valid(CurvesOfRecord.keeping(fresh, earlier));
    assertEquals(List.of("c1", "c2"), ids(whole));
    assertEquals(whole, CurvesOfRecord.keeping(whole, earlier));
  }

  @Test
  void aChartOfASheetOfSeveralCellsGoesToTheOneItNames() {
    CellRecord one = named("TW-26A");
    CellRecord two = named("TW-26B");
    Chart ofTwo = titled(chart(2, "a", null), "Discharge of TW 26B");
    Chart ofNone = chart(3, "b", null);
    List<CellRecord> traced = Tracing.applied(List.of(one, two), List.of(ofTwo, ofNone), null);
    assertEquals(List.of("b"), traced.get(0).curves().stream().map(Curve::label).toList());
    assertEquals(Standing.UNSURE, traced.get(0).curves().get(0).standing());
    assertEquals(
        List.of(Standing.READ, Standing.UNSURE),
        traced.get(1).curves().stream().map(Curve::standing).toList());
    traced.forEach(CurvesOfRecordTest::valid);
  }

  private static CellRecord valid(CellRecord record) {
    assertEquals(List.of(), RecordValidator.problems(RecordJson.write(record)));
    return record;
  }

  private static List<String> ids(CellRecord record) {
    return record.curves().stream().map(Curve::id).toList();
  }

  private static Chart chart(int page, String label, Finding finding) {
    Curve plain = Cells.curve("c1", Cells.to(2.0, Cells.rate(1)), LINE, Cells.EXACT);
    Curve curve =
        new Curve(
            "c1",
            plain.kind(),
            label,
            plain.conditions().with(Conditions.DISCHARGE_RATE, page),
            plain.x(),
            plain.y(),
            plain.points(),
            plain.uncertainty(),
            plain.method(),
            new Evidence(page, Cells.PLOT, null, Method.VECTOR_CURVE, null, null, null, null, null),
            plain.standing(),
            plain.doubts());
    return new Chart(
        page,
        new Box(90, 120, 260, 180),
        null,
        "discharge",
        Conditions.NONE,
        List.of(curve),
        finding == null ? List.of() : List.of(finding));
  }

  private static Chart titled(Chart chart, String title) {
    return new Chart(
        chart.page(),
        chart.box(),
        title,
        chart.kind(),
        chart.conditions(),
        chart.curves(),
        chart.findings());
  }

  private static Curve measured(String file) {
    Curve plain = Cells.curve(null, Cells.rate(1), LINE, Cells.EXACT);
    return new Curve(
        null,
        plain.kind(),
        file.replace(".csv", ""),
        plain.conditions(),
        plain.x(),
        plain.y(),
        plain.points(),
        plain.uncertainty(),
        Method.MEASURED,
        Evidence.ofFile(file, "0".repeat(64), Method.MEASURED, null),
        Standing.READ,
        List.of());
  }

  private static Statement confirmed(Statement made) {
    return new Statement(
        made.id(),
        made.quantity(),
        null,
        made.value(),
        made.low(),
        made.high(),
        made.unit(),
        made.conditions(),
        made.evidence(),
        Standing.CONFIRMED,
        List.of());
  }

  private static CellRecord named(String model) {
    return new CellRecord(
        EMPTY.schema(),
        model.toLowerCase(Locale.ROOT),
        new Cell("Tarnwick", model, null, null, null, null, null),
        EMPTY.source(),
        List.of(),
        List.of(),
        List.of(),
        EMPTY.review());
  }

  private static Finding finding(String rule, List<String> about, String message) {
    return new Finding(rule, Severity.NOTE, about, message, null);
  }
}
