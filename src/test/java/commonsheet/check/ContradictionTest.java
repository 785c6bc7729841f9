package commonsheet.check;

import static commonsheet.record.Records.between;
import static commonsheet.record.Records.standing;
import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.Records;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What contradicts on a sheet and, as important, what does not. */
class ContradictionTest {
  private static final Conditions NONE = Conditions.NONE;

  @Test
  void findsTwoCutoffVoltages() {
    assertEquals(
        List.of(
            new Finding(
                "contradiction/discharge-cutoff-voltage",
                Severity.WARNING,
                List.of("s1", "s2"),
                "The sheet gives 2.5 V (page 3) and 2.75 V (page 5) as discharge cutoff voltage;"
                    + " discharge to no less than the higher one until the maker has settled it.",
                "common practice, no source")),
        findings(cutoff("s1", 2.5, NONE, 3), cutoff("s2", 2.75, NONE, 5)));
  }

  @Test
  void namesEachValueOnceWithAllItsPages() {
    Finding finding =
        only(
            chargeVoltage("s1", null, 4.2, 3),
            chargeVoltage("s2", null, 4.25, 5),
            chargeVoltage("s3", null, 4.2, 7),
            chargeVoltage("s4", null, 4.35, 7));
    assertEquals(List.of("s1", "s2", "s3", "s4"), finding.about());
    assertEquals(
        "The sheet gives 4.2 V (pages 3, 7), 4.25 V (page 5) and 4.35 V (page 7) as charge voltage;"
            + " charge to no more than the lower one until the maker has settled it.",
        finding.message());
  }

  @Test
  void findsNothingWhereStatisticsDiffer() {
    none(chargeVoltage("s1", null, 4.2, 3), chargeVoltage("s2", Statistic.MAXIMUM, 4.25, 3));
  }

  @Test
  void findsNothingWhereTolerancesOverlap() {
    none(
        between(chargeVoltage("s1", null, 4.2, 3), 4.2, 4.15, 4.25),
        chargeVoltage("s2", null, 4.25, 3));
    none(mass("s1", 48, 3), between(mass("s2", 48.5, 7), 48.5, 47.5, 49.5));
  }

  @Test
  void findsTwoMasses() {
    Finding finding = only(mass("s1", 45, 3), mass("s2", 48, 7));
    assertEquals("contradiction/mass", finding.rule());
    assertEquals(
        "The sheet gives 45 g (page 3) and 48 g (page 7) as mass; compare both places and reject"
            + " the one that does not hold for this cell.",
        finding.message());
  }

  @Test
  void findsADrawingThatDiffersFromTheTable() {
    Statement table = size("s1", "height", 65.1, NONE, 3);
    assertEquals(
        "contradiction/dimension", only(table, size("s2", "height", 65.6, NONE, 9)).rule());
    none(table, size("s2", "height", 65.2, NONE, 9));
    none(table, size("s2", "length", 70, NONE, 9));
  }

  @Test
  void findsNothingWhereASizeIsThatOfAnAgedCell() {
    Conditions aged = NONE.with(Conditions.CYCLES, 300);
    none(size("s1", "thickness", 2.5, NONE, 10), size("s2", "thickness", 2.7, aged, 10));
  }

  @Test
  void findsTwoNominalCapacitiesAtOneRate() {
    Conditions slow = NONE.with(Conditions.DISCHARGE_RATE, 0.2);
    Conditions slowTo25 = slow.with(Conditions.CUTOFF_VOLTAGE, 2.5);
    Finding finding =
        only(
            capacity("s1", Statistic.NOMINAL, 2.6, slow, 1),
            capacity("s2", Statistic.NOMINAL, 2.5, slowTo25, 3));
    assertEquals("contradiction/capacity", finding.rule());
    assertEquals(
        "The sheet gives 2.6 Ah (page 1) and 2.5 Ah (page 3) as nominal capacity; compare both"
            + " places and reject the one that does not hold for this cell.",
        finding.message());
  }

  @Test
  void findsNothingWhereCapacitiesAreTakenAtDifferentRates() {
    Conditions slow = NONE.with(Conditions.DISCHARGE_RATE, 0.2);
    none(
        capacity("s1", Statistic.MINIMUM, 3.3, slow, 1),
        capacity("s2", Statistic.MINIMUM, 3.25, NONE.with(Conditions.DISCHARGE_RATE, 0.5), 1),
        capacity("s3", Statistic.MINIMUM, 3.2, NONE, 1));
    none(
        capacity("s1", Statistic.MINIMUM, 3.2, NONE.with(Conditions.TEMPERATURE, 20), 1),
        capacity("s2", Statistic.MINIMUM, 3.25, NONE.with(Conditions.TEMPERATURE, 25), 1));
  }

  @Test
  void findsNothingWhereALimitHoldsForACaseOfItsOwn() {
    Conditions cold =
        NONE.with(Conditions.TEMPERATURE_LOW, 0).with(Conditions.TEMPERATURE_HIGH, 10);
    Conditions warm =
        NONE.with(Conditions.TEMPERATURE_LOW, 10).with(Conditions.TEMPERATURE_HIGH, 45);
    none(charge("s1", 0.8, cold), charge("s2", 2.6, warm), charge("s3", 1.3, NONE));
    none(cutoff("s1", 2.5, NONE, 3), cutoff("s2", 2.0, NONE.with(Conditions.TEMPERATURE, -20), 3));
    none(
        pulse("s1", 15, NONE.with(Conditions.DURATION, 5)),
        pulse("s2", 10, NONE.with(Conditions.DURATION, 30)));
  }

  /** Room temperature is where every test is made; it sets no case of its own. */
  @Test
  void findsADifferenceThatOnlyRoomTemperatureSetsApart() {
    only(cutoff("s1", 2.5, NONE, 3), cutoff("s2", 3.0, NONE.with(Conditions.TEMPERATURE, 25), 5));
  }

  @Test
  void findsTwoLimitsForOneCase() {
    Conditions cold =
        NONE.with(Conditions.TEMPERATURE_LOW, 0).with(Conditions.TEMPERATURE_HIGH, 10);
    Finding finding = only(charge("s1", 0.8, cold), charge("s2", 0.5, cold));
    assertEquals("contradiction/current", finding.rule());
    assertEquals(
        "The sheet gives 0.8 A (page 4) and 0.5 A (page 4) as maximum charge current; compare both"
            + " places and reject the one that does not hold for this cell.",
        finding.message());
  }

  /** As the sheets of pouch cells with a protection circuit give it: ≤ 60 mΩ and ≤ 220 mΩ. */
  @Test
  void notesTheResistanceOfACellBesideThatOfItsPack() {
    Conditions kilohertz = NONE.with(Conditions.FREQUENCY, 1000);
    Finding finding = only(resistance("s1", 60, kilohertz), resistance("s2", 220, kilohertz));
    assertEquals(Severity.NOTE, finding.severity());
    assertEquals(
        "The sheet gives 60 mΩ (page 4) and 220 mΩ (page 4) as maximum internal resistance AC;"
            + " one may be that of a pack with its protection circuit.",
        finding.message());
  }

  @Test
  void findsNothingInRetentionsUnderManyConditions() {
    none(
        retention("s1", 50, NONE.with(Conditions.TEMPERATURE, -10)),
        retention("s2", 100, NONE.with(Conditions.TEMPERATURE, 25)),
        retention("s3", 85, NONE.with(Conditions.DURATION, 2_592_000)),
        retention("s4", 90, NONE));
  }

  @Test
  void findsAMinimumAboveTheNominalCapacity() {
    Finding finding =
        only(
            capacity("s1", Statistic.NOMINAL, 2.5, NONE.with(Conditions.DISCHARGE_RATE, 0.2), 3),
            capacity("s2", Statistic.MINIMUM, 2.55, NONE, 4));
    assertEquals("contradiction/minimum-above-nominal-capacity", finding.rule());
    assertEquals(List.of("s2", "s1"), finding.about());
    assertEquals(
        "The minimum capacity of 2.55 Ah (page 4) is above the nominal capacity of 2.5 Ah (page 3);"
            + " check both on the sheet, they may be exchanged or misprinted.",
        finding.message());
    none(
        capacity("s1", Statistic.NOMINAL, 2.5, NONE.with(Conditions.DISCHARGE_RATE, 1), 3),
        capacity("s2", Statistic.MINIMUM, 2.55, NONE.with(Conditions.DISCHARGE_RATE, 0.2), 4));
    none(
        capacity("s1", Statistic.TYPICAL, 2.6, NONE, 3),
        capacity("s2", Statistic.MINIMUM, 2.5, NONE, 4));
  }

  @Test
  void findsAValueOutsideItsOwnTolerance() {
    Finding finding = only(between(mass("s1", 84, 3), 84.0, 47, 49));
    assertEquals("contradiction/value-outside-its-range", finding.rule());
    assertEquals(
        "The mass of 84 g (page 3) lies outside its own range of 47 to 49 g; check the value and"
            + " its tolerance on the sheet.",
        finding.message());
  }

  @Test
  void leavesOutWhatAPersonRejectedAndWhatWasComputed() {
    none(cutoff("s1", 2.5, NONE, 3), standing(cutoff("s2", 2.75, NONE, 5), Standing.REJECTED));
    Statement mass = mass("s2", 50, 3);
    Evidence derived =
        new Evidence(null, List.of(), null, Method.DERIVED, null, null, null, null, List.of("s1"));
    none(
        mass("s1", 45, 3),
        new Statement(
            "s2", "mass", null, 50.0, null, null, "g", NONE, derived, mass.standing(), List.of()));
  }

  @Test
  void leavesTheRecordAsItIs() {
    CellRecord record = Records.with(mass("s1", 45, 3), mass("s2", 48, 7));
    Checks.standard().examine(record);
    assertEquals(List.of(), record.findings());
  }

  private static List<Finding> findings(Statement... statements) {
    return Checks.standard().examine(Records.with(statements));
  }

  private static Finding only(Statement... statements) {
    List<Finding> findings = findings(statements);
    assertEquals(1, findings.size(), findings::toString);
    return findings.get(0);
  }

  private static void none(Statement... statements) {
    assertEquals(List.of(), findings(statements));
  }

  private static Statement cutoff(String id, double value, Conditions conditions, int page) {
    return Records.statement(id, "dischargeCutoffVoltage", null, value, "V", conditions, page);
  }

  private static Statement chargeVoltage(String id, Statistic statistic, double value, int page) {
    return Records.statement(id, "chargeVoltage", statistic, value, "V", NONE, page);
  }

  private static Statement mass(String id, double value, int page) {
    return Records.statement(id, "mass", null, value, "g", NONE, page);
  }

  private static Statement size(
      String id, String quantity, double value, Conditions conditions, int page) {
    return Records.statement(id, quantity, Statistic.MAXIMUM, value, "mm", conditions, page);
  }

  private static Statement capacity(
      String id, Statistic statistic, double value, Conditions conditions, int page) {
    return Records.statement(id, "capacity", statistic, value, "A.h", conditions, page);
  }

  private static Statement charge(String id, double value, Conditions conditions) {
    return Records.statement(
        id, "maximumChargeCurrent", Statistic.MAXIMUM, value, "A", conditions, 4);
  }

  private static Statement pulse(String id, double value, Conditions conditions) {
    return Records.statement(
        id, "maximumPulseDischargeCurrent", Statistic.MAXIMUM, value, "A", conditions, 4);
  }

  private static Statement resistance(String id, double value, Conditions conditions) {
    return Records.statement(
        id, "internalResistanceAC", Statistic.MAXIMUM, value, "mOhm", conditions, 4);
  }

  private static Statement retention(String id, double value, Conditions conditions) {
    return Records.statement(id, "capacityRetention", Statistic.MINIMUM, value, "%", conditions, 4);
  }
}
