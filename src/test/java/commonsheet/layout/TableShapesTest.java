package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Tables that are no list of labels with their values beside them. */
class TableShapesTest {
  @Test
  void namesOverFiguresArePaired() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Nominal voltage | Rated capacity (0.2C) | Weight",
                    "3.2 V | 1500 mAh | 41.5 ± 1.0 g"),
            Pages.rest("Nominal"));
    assertEquals(List.of("nominal 3.2"), said.of("nominalVoltage"));
    assertEquals(List.of("rated 1.5 {dischargeRate=0.2}"), said.of("capacity"));
  }

  @Test
  void twoPairsSideBySideAreTwoRows() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Nominal voltage: | 3.2 V | Nominal capacity: | 3300 mAh",
                    "Charge voltage: | 3.65 V | Discharge cut-off voltage: | 2.0 V",
                    "Charge temperature: | 0~45 ℃ | Discharge temperature: | -20~60 ℃"),
            Pages.rest("Nominal", "Charg", "Discharg", "Limited", "Max"));
    assertEquals(List.of("nominal 3.3"), said.of("capacity"));
    assertEquals(List.of("3.65"), said.of("chargeVoltage"));
    assertEquals(List.of("2"), said.of("dischargeCutoffVoltage"));
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
  }

  @Test
  void headingsSayWhichLimitOfTheRowIsMeant() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    " | Standard | Maximum | Temperature",
                    "Charge | 0.3 A | 1.5 A | 0 to 45 °C",
                    "Discharge | 0.3 A | 4.5 A | -20 to 60 °C"),
            Pages.rest("Standard", "Max", "Charg", "Discharg"));
    assertEquals(List.of("standard 0.3"), said.of("standardChargeCurrent"));
    assertEquals(List.of("maximum 1.5"), said.of("maximumChargeCurrent"));
    assertEquals(List.of("maximum 4.5"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
  }

  @Test
  void aRecoveryIsAtTheTemperatureOfItsRow() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Period | Storage temperature | Recoverable capacity",
                    "1 month | -20 to 60 °C | ≥ 85 %",
                    "3 months | -20 to 45 °C | ≥ 80 %"),
            Pages.rest());
    assertEquals(
        List.of(
            "minimum 85 {temperatureLow=-20, temperatureHigh=60, duration=2592000}",
            "minimum 80 {temperatureLow=-20, temperatureHigh=45, duration=7776000}"),
        said.of("capacityRecovery"));
  }

  @Test
  void aRemarkSaysWhichCurrentIsMeant() {
    Said said =
        Said.on(
            Pages.page()
                .table("Item | Value | Remark", "Charge current | 180 mA\n900 mA | Standard\nMax."),
            Pages.rest("Standard", "Max", "Charg", "Discharg"));
    assertEquals(List.of("standard 0.18"), said.of("standardChargeCurrent"));
    assertEquals(List.of("maximum 0.9"), said.of("maximumChargeCurrent"));
  }

  @Test
  void theChargedCellIsDischargedInItsTest() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Condition | Value",
                    "Capacity retention | fully charged, 25±2 °C, 28 days, then 0.5C to 2.0 V | ≥ 95 %"),
            Pages.rest());
    assertEquals(
        List.of(
            "minimum 95 {dischargeRate=0.5, cutoffVoltage=2, temperature=25, duration=2419200}"),
        said.of("capacityRetention"));
  }

  @Test
  void aDiameterSignMakesTheSecondFigureTheHeight() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Size | Φ26.2±0.2mm × 65.5±0.3mm"), Pages.rest());
    assertEquals(1, said.of("diameter").size());
    assertEquals(1, said.of("height").size());
  }
}
