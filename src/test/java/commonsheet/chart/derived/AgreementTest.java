package commonsheet.chart.derived;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgreementTest {
  private static final Conditions CASE =
      Cells.to(2.0, Cells.rate(1)).with(Conditions.TEMPERATURE, 25);
  private static final List<List<Double>> LINE = List.of(List.of(0.0, 4.0), List.of(2.0, 2.0));
  private static final Curve CURVE =
      Cells.curve("c1", CASE, LINE, new Curve.Uncertainty(0.01, 0.01));

  /** Common practice, no source: cells of one type differ by a few per cent. */
  @ParameterizedTest
  @CsvSource({
    "TYPICAL, 2.0, NOTE",
    "TYPICAL, 2.05, NOTE",
    "NOMINAL, 2.2, WARNING",
    "NOMINAL, 1.9, WARNING",
    "NOMINAL, 1.0, ERROR",
    "MINIMUM, 1.85, NOTE",
    "MINIMUM, 2.2, WARNING",
    "MINIMUM, 1.0, ERROR"
  })
  void theDifferenceToAPrintedCapacityIsToldByItsSize(
      Statistic statistic, double printed, Severity severity) {
    Finding finding = only(against(Cells.printed("s1", "capacity", statistic, printed, CASE)));
    assertEquals(severity, finding.severity());
    assertEquals("agreement/printed", finding.rule());
    assertEquals(List.of("s2", "s1"), finding.about());
  }

  @Test
  void theSentenceSaysWhatIsWhere() {
    assertEquals(
        "Curve c1 gives 2 Ah (1 C, 25 °C, to 2 V); the sheet prints 2.05 Ah typical on page 1: 2.4 %"
            + " less, within what both leave open.",
        only(against(Cells.printed("s1", "capacity", Statistic.TYPICAL, 2.05, CASE))).message());
  }

  @Test
  void anotherRateCutOffOrTemperatureIsNotCompared() {
    for (Conditions other :
        List.of(
            CASE.with(Conditions.DISCHARGE_RATE, 0.2),
            CASE.with(Conditions.CUTOFF_VOLTAGE, 2.5),
            CASE.with(Conditions.TEMPERATURE, -20),
            CASE.with(Conditions.CYCLES, 300),
            Conditions.NONE)) {
      Statement printed = Cells.printed("s1", "capacity", Statistic.TYPICAL, 1.5, other);
      assertEquals(List.of(), against(printed), other.toString());
    }
  }

  @Test
  void anUnsureCurveIsNotCompared() {
    Statement printed = Cells.printed("s1", "capacity", Statistic.TYPICAL, 1.5, CASE);
    Curve unsure = Cells.standing(CURVE, Standing.UNSURE, "Its label is far away.");
    assertEquals(
        List.of(), Cells.derived(Cells.with(List.of(printed), List.of(unsure))).findings());
  }

  @Test
  void whatTheSheetLeavesUnsaidOfTheRoomDoesNotHinder() {
    Statement printed = Cells.printed("s1", "capacity", Statistic.TYPICAL, 2.0, Cells.rate(1));
    assertEquals(1, against(printed).size());
  }

  @Test
  void aPercentAxisIsHeldAgainstPrintedCapacities() {
    List<List<Double>> shares = List.of(List.of(0.0, 4.0), List.of(90.0, 2.0));
    Curve curve =
        Cells.over(
            Cells.curve("c1", CASE, shares, new Curve.Uncertainty(0.5, 0.01)), "capacity", "%");
    Statement whole = Cells.printed("s1", "capacity", Statistic.NOMINAL, 2.5, Cells.rate(0.2));
    Statement part = Cells.printed("s2", "capacity", null, 1.8, CASE);
    Finding finding =
        only(Cells.derived(Cells.with(List.of(whole, part), List.of(curve))).findings());
    assertEquals("agreement/percent-axis", finding.rule());
    assertEquals(Severity.ERROR, finding.severity());
    assertTrue(finding.message().contains("make 72 %: 25 % more"), finding.message());
  }

  @Test
  void aPrintedShareIsHeldAgainstThatOfTwoCurves() {
    Curve cold =
        Cells.curve(
            "c2",
            CASE.with(Conditions.TEMPERATURE, -20),
            List.of(List.of(0.0, 3.8), List.of(1.0, 2.0)),
            new Curve.Uncertainty(0.01, 0.01));
    Statement printed =
        Cells.printed(
            "s1",
            "capacityRetention",
            Statistic.MINIMUM,
            60,
            CASE.with(Conditions.TEMPERATURE, -20));
    Finding finding =
        only(Cells.derived(Cells.with(List.of(printed), List.of(CURVE, cold))).findings());
    assertEquals(Severity.WARNING, finding.severity());
    assertTrue(finding.message().startsWith("Curve c2 against c1 gives 50 %"), finding.message());
  }

  @Test
  void twoChartsThatShowTheSameDischargeDifferentlyAreTold() {
    Curve other =
        new Curve(
            "c2",
            "discharge",
            null,
            CASE,
            CURVE.x(),
            CURVE.y(),
            List.of(List.of(0.0, 4.0), List.of(1.7, 2.0)),
            CURVE.uncertainty(),
            Method.VECTOR_CURVE,
            new Evidence(3, Cells.PLOT, null, Method.VECTOR_CURVE, null, null, null, null, null),
            CURVE.standing(),
            List.of());
    Finding finding = only(Cells.derived(Cells.with(List.of(), List.of(CURVE, other))).findings());
    assertEquals("agreement/curves", finding.rule());
    assertEquals(Severity.ERROR, finding.severity());
  }

  @Test
  void aCapacityThatRisesWithTheCurrentIsTold() {
    List<Curve> curves =
        List.of(1.0, 2.0, 4.0).stream()
            .map(
                rate ->
                    Cells.curve(
                        "c" + rate.intValue(),
                        Cells.to(2.0, Cells.rate(rate)),
                        List.of(List.of(0.0, 4.0), List.of(2 + rate / 10, 2.0)),
                        Cells.EXACT))
            .toList();
    Finding finding = only(Cells.derived(Cells.with(List.of(), curves)).findings());
    assertEquals("curve/peukert-exponent", finding.rule());
    assertEquals(Severity.WARNING, finding.severity());
  }

  private static List<Finding> against(Statement printed) {
    CellRecord record = Cells.with(List.of(printed), List.of(CURVE));
    return Cells.derived(record).findings();
  }

  private static Finding only(List<Finding> findings) {
    assertEquals(1, findings.size(), findings.toString());
    return findings.get(0);
  }
}
