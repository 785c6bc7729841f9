package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.Conditions;
import commonsheet.record.Method;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.sheet.Box;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How what several places say becomes statements. */
class ReconcilerTest {
  private final Reconciler reconciler = new Reconciler(QuantityCatalogue.standard());

  private List<String> decided(Candidate... candidates) {
    return reconciler.decide(List.of(candidates)).stream()
        .map(s -> s.quantity() + " " + Said.inShort(s))
        .toList();
  }

  private static Candidate said(String quantity, Double value, int page) {
    return candidate(quantity, value, null, page, false);
  }

  private static Candidate mentioned(String quantity, Double value, int page) {
    return candidate(quantity, value, null, page, true);
  }

  private static Candidate rated(String quantity, double rate, String condition) {
    return candidate(quantity, null, rate, 2, false).with(Conditions.NONE.with(condition, rate));
  }

  private static Candidate candidate(
      String quantity, Double value, Double rate, int page, boolean mentioned) {
    return new Candidate(
        quantity,
        null,
        new Candidate.Amount(value, null, null),
        rate,
        Conditions.NONE,
        new Candidate.Place(
            page,
            new Box(50, 100, 40, 10),
            quantity + " as printed",
            mentioned ? Method.TEXT_LINE : Method.TABLE_CELL,
            (mentioned ? "mention/" : "table/") + quantity,
            null),
        mentioned,
        null,
        null,
        List.of());
  }

  private static Conditions temperature(double celsius) {
    return Conditions.NONE.with(Conditions.TEMPERATURE, celsius);
  }

  // ---- repeats ----

  @Test
  void theSameValueFromTwoPlacesIsOneStatement() {
    assertEquals(List.of("mass 46"), decided(said("mass", 46.0, 1), said("mass", 46.0, 3)));
  }

  @Test
  void theRepeatThatSaysMoreKeepsItsPlace() {
    Candidate other = said("mass", 46.0, 3);
    Candidate withTolerance = other.withAmperes(new Candidate.Amount(46.0, 45.0, 47.0));
    List<Statement> decided = reconciler.decide(List.of(said("mass", 46.0, 1), withTolerance));
    assertEquals(1, decided.size());
    assertEquals(3, decided.get(0).evidence().page());
    assertEquals("46 (45..47)", Said.inShort(decided.get(0)));
  }

  @Test
  void aStatisticSaidOnceCountsForTheRepeat() {
    assertEquals(
        List.of("mass maximum 46"),
        decided(said("mass", 46.0, 1), said("mass", 46.0, 2).called(Statistic.MAXIMUM)));
  }

  @Test
  void conditionsSaidOnceCountForTheRepeat() {
    assertEquals(
        List.of("internalResistanceAC 25 {temperature=23}"),
        decided(
            said("internalResistanceAC", 25.0, 1),
            said("internalResistanceAC", 25.0, 2).with(temperature(23))));
  }

  @Test
  void otherConditionsMakeAnotherStatement() {
    assertEquals(
        List.of(
            "internalResistanceAC 25 {temperature=23}", "internalResistanceAC 25 {temperature=0}"),
        decided(
            said("internalResistanceAC", 25.0, 1).with(temperature(23)),
            said("internalResistanceAC", 25.0, 2).with(temperature(0))));
  }

  @Test
  void minimumAndTypicalOfOneValueAreTwoStatements() {
    assertEquals(
        List.of("capacity minimum 2.5", "capacity typical 2.5"),
        decided(
            said("capacity", 2.5, 1).called(Statistic.MINIMUM),
            said("capacity", 2.5, 1).called(Statistic.TYPICAL)));
  }

  @Test
  void aDoubtIsLostWhereAnotherPlaceIsSure() {
    assertEquals(
        List.of("mass 46"),
        decided(said("mass", 46.0, 1).doubted("it is dark"), said("mass", 46.0, 2)));
  }

  // ---- contradictions ----

  @Test
  void twoValuesOfOneThingAreBothKeptAndUnsure() {
    List<Statement> decided =
        reconciler.decide(List.of(said("mass", 46.0, 1), said("mass", 48.0, 3)));
    assertEquals(List.of("46 ?", "48 ?"), decided.stream().map(Said::inShort).toList());
    assertEquals(List.of("the sheet also says 48 on page 3"), decided.get(0).doubts());
    assertEquals(List.of("the sheet also says 46 on page 1"), decided.get(1).doubts());
  }

  @Test
  void valuesUnderDifferentConditionsDoNotContradict() {
    assertEquals(
        List.of(
            "internalResistanceAC 25 {temperature=23}", "internalResistanceAC 60 {temperature=0}"),
        decided(
            said("internalResistanceAC", 25.0, 1).with(temperature(23)),
            said("internalResistanceAC", 60.0, 1).with(temperature(0))));
  }

  @Test
  void anImplausibleValueIsKeptAndDoubted() {
    List<Statement> decided = reconciler.decide(List.of(said("chargeVoltage", 42.0, 1)));
    assertEquals(List.of("42 ?"), decided.stream().map(Said::inShort).toList());
    assertTrue(decided.get(0).doubts().get(0).contains("outside what a lithium-ion cell can have"));
  }

  @Test
  void anImplausibleMentionIsDropped() {
    assertEquals(List.of(), decided(mentioned("chargeVoltage", 42.0, 1)));
  }

  // ---- in passing ----

  @Test
  void aMentionCountsOnlyWhereNothingIsSaidDirectly() {
    assertEquals(List.of("chargeVoltage 4.2"), decided(mentioned("chargeVoltage", 4.2, 2)));
    assertEquals(List.of("mass 46"), decided(said("mass", 46.0, 1), mentioned("mass", 48.0, 2)));
  }

  @Test
  void mentionsOfOneValueAreOne() {
    assertEquals(
        List.of("dischargeCutoffVoltage 2.75"),
        decided(
            mentioned("dischargeCutoffVoltage", 2.75, 1),
            mentioned("dischargeCutoffVoltage", 2.75, 2)));
  }

  @Test
  void severalMentionsAreAllKeptAndUnsure() {
    assertEquals(
        List.of("dischargeCutoffVoltage 2.75 ?", "dischargeCutoffVoltage 2.5 ?"),
        decided(
            mentioned("dischargeCutoffVoltage", 2.75, 1),
            mentioned("dischargeCutoffVoltage", 2.5, 2)));
  }

  @Test
  void severalMentionedCurrentsSayNothing() {
    assertEquals(
        List.of(),
        decided(
            mentioned("standardDischargeCurrent", 0.5, 1),
            mentioned("standardDischargeCurrent", 1.0, 2)));
  }

  // ---- multiples of C ----

  @Test
  void aMultipleOfCGoesByTheNominalCapacityBeforeAnyOther() {
    List<Statement> decided =
        reconciler.decide(
            List.of(
                said("capacity", 2.45, 1).called(Statistic.MINIMUM),
                said("capacity", 2.6, 1).called(Statistic.TYPICAL),
                said("capacity", 2.5, 1).called(Statistic.NOMINAL),
                rated("maximumContinuousDischargeCurrent", 3, Conditions.DISCHARGE_RATE)));
    Statement current = decided.get(3);
    assertEquals(7.5, current.value(), 1e-9);
    assertEquals("3 C of the nominal capacity 2.5 A.h", current.evidence().note());
    assertEquals(List.of(), current.doubts());
  }

  @Test
  void amperesHereAndTheirMultipleThereAreOneCurrent() {
    Candidate amperes =
        said("maximumChargeCurrent", 1.3, 1)
            .with(Conditions.NONE.with(Conditions.CHARGE_RATE, 0.5));
    assertEquals(
        List.of("capacity nominal 2.6", "maximumChargeCurrent 1.3 {chargeRate=0.5}"),
        decided(
            said("capacity", 2.6, 1).called(Statistic.NOMINAL),
            amperes,
            rated("maximumChargeCurrent", 0.5, Conditions.CHARGE_RATE)));
  }

  // ---- order and evidence ----

  @Test
  void statementsStandInTheOrderOfTheSheetAndAreNumbered() {
    List<Statement> decided =
        reconciler.decide(List.of(said("mass", 46.0, 3), said("diameter", 18.3, 1)));
    assertEquals(List.of("diameter", "mass"), decided.stream().map(Statement::quantity).toList());
    assertEquals(List.of("s1", "s2"), decided.stream().map(Statement::id).toList());
    assertEquals(List.of(50.0, 100.0, 40.0, 10.0), decided.get(0).evidence().box());
  }
}
