package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Arrangements that invite a wrong value: it may be missed or unsure, it must not stand as read.
 */
class MisreadingTest {
  private static final String CONTINUOUS = "maximumContinuousDischargeCurrent";
  private static final String PULSE = "maximumPulseDischargeCurrent";

  private static Said table(String... rows) {
    return Said.on(Pages.page().table(rows), Pages.rest());
  }

  /** What stands as read of some quantities. */
  private static List<String> sure(Said said, String... quantities) {
    return Stream.of(quantities)
        .flatMap(q -> said.of(q).stream().map(s -> q + " " + s))
        .filter(s -> !s.endsWith("?"))
        .toList();
  }

  // ---- a pack, not the cell ----

  @Test
  void thePacksMassIsNotTheCells() {
    assertEquals(List.of(), sure(table("Item | Value", "Battery pack weight | 400 g"), "mass"));
    assertEquals(List.of(), sure(table("Item | Value", "Weight of battery pack | 95 g"), "mass"));
  }

  @Test
  void thePacksCapacityIsNotTheCells() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Capacity of the 2P pack | 10.4 Ah"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of(), sure(said, "capacity"));
  }

  // ---- words behind the figure ----

  @Test
  void aWordBehindTheFigureSaysWhichCurrentItIs() {
    Said said = table("Item | Value", "Discharge current | 3C continuous, 5C pulse (10 s)");
    assertTrue(
        List.of(CONTINUOUS + " 7.8 {dischargeRate=3}", PULSE + " 13 {dischargeRate=5, duration=10}")
            .containsAll(sure(said, CONTINUOUS, PULSE)),
        sure(said, CONTINUOUS, PULSE).toString());
  }

  @Test
  void aWordBehindTheFigureEndsWithItsLine() {
    Said said =
        table(
            "Item | Value", "Discharge current | 0.2C standard\n3C max. continuous\n5C pulse 10 s");
    assertTrue(
        List.of(
                CONTINUOUS + " maximum 7.8 {dischargeRate=3}",
                PULSE + " 13 {dischargeRate=5, duration=10}")
            .containsAll(sure(said, CONTINUOUS, PULSE)),
        sure(said, CONTINUOUS, PULSE).toString());
  }

  @Test
  void twoStatisticsInTheLabelAreNotTheSecondFiguresFirst() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Capacity (min/typ) | 2500/2600 mAh"),
            Pages.rest("Nominal capacity"));
    assertTrue(
        List.of("capacity minimum 2.5", "capacity typical 2.6").containsAll(sure(said, "capacity")),
        sure(said, "capacity").toString());
  }

  // ---- conditions of something else ----

  @Test
  void eachLimitInACellHasItsOwnTemperature() {
    Said said = table("Item | Value", "Charge current | Max. 1C@25±5 °C, 0.5C@0~10 °C");
    assertTrue(
        sure(said, "maximumChargeCurrent").stream()
            .noneMatch(s -> s.contains("chargeRate=1,") && s.contains("temperatureHigh=10")),
        sure(said, "maximumChargeCurrent").toString());
  }

  @Test
  void aSecondLabelOnTheLineIsNoConditionOfTheFirst() {
    Said said =
        Said.on(
            Pages.page().line("Nominal capacity\t2600 mAh\tRated voltage\t3.6 V"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of("capacity nominal 2.6"), sure(said, "capacity"));
  }

  @Test
  void aListOfLabelsInOneLineIsNoSetOfConditions() {
    Said said =
        Said.on(
            Pages.page().line("Capacity: 2600mAh, Voltage: 3.7V, Max. discharge current: 10A"),
            Pages.rest("Nominal capacity"));
    assertTrue(
        sure(said, "capacity").stream().noneMatch(s -> s.contains("{")),
        sure(said, "capacity").toString());
  }

  // ---- other voltages and resistances ----

  @Test
  void theVoltageToStoreAtIsNoChargeVoltage() {
    Said said =
        Said.on(
            Pages.page().line("8.1 Storage: store at 40 % SOC; recharge every 6 months to 3.8 V."),
            Pages.rest());
    assertEquals(List.of(), sure(said, "chargeVoltage"));
  }

  @Test
  void aFloatOrPrechargeVoltageIsNotTheChargeVoltage() {
    assertEquals(
        List.of(), sure(table("Item | Value", "Float charge voltage | 3.45 V"), "chargeVoltage"));
    assertEquals(
        List.of(), sure(table("Item | Value", "Pre-charge voltage | 3.0 V"), "chargeVoltage"));
  }

  @Test
  void theResistanceOfSomethingElseIsNotTheCells() {
    assertEquals(
        List.of(),
        sure(table("Item | Value", "Contact resistance | 3 mΩ"), "internalResistanceAC"));
    assertEquals(
        List.of(),
        sure(table("Item | Value", "Resistance of pack | 220 mΩ"), "internalResistanceAC"));
  }

  @Test
  void aDoubtShowsLargeNumbersWhole() {
    Said said = table("Item | Value", "Insulation resistance | 10 MΩ");
    assertTrue(
        said.doubts("internalResistanceAC").stream().noneMatch(d -> d.contains("e+")),
        said.doubts("internalResistanceAC").toString());
  }

  // ---- what is missed ----

  @Test
  void twoRangesInOneLineAreTwoStatements() {
    Said said =
        table("Item | Value", "Operating temperature | Charge 0~45 °C, discharge -20~60 °C");
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
  }

  @Test
  void threeStorageTimesInOneLineAreThreeStatements() {
    Said said =
        table(
            "Item | Value",
            "Storage temperature | 1 month: -20~60 °C, 3 months: -20~45 °C, 1 year: -20~25 °C");
    assertEquals(
        List.of(
            "-20..60 {duration=2592000}",
            "-20..45 {duration=7776000}",
            "-20..25 {duration=31536000}"),
        said.of("storageTemperature"));
  }

  @Test
  void oneMassInTwoUnitsIsOneStatement() {
    assertEquals(List.of("46"), table("Item | Value", "Weight | 46 g (1.62 oz)").of("mass"));
    assertEquals(List.of("46"), table("Item | Value", "Weight | 46 g / 1.62 oz").of("mass"));
  }
}
