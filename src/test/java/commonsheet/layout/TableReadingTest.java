package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the rows and columns of a table say, each on the smallest table that shows it. */
class TableReadingTest {
  // ---- labels ----

  @Test
  void aMergedLabelHoldsForEveryRowBesideIt() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | | Value",
                    "Operating temperature | Charge | 0 to 45 °C",
                    "^ | Discharge | -20 to 60 °C",
                    "^ | Storage | -20 to 35 °C"),
            Pages.rest());
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
    assertEquals(List.of("-20..35"), said.of("storageTemperature"));
  }

  @Test
  void aRowWithoutALabelGoesOnWithTheOneAbove() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value | Remark",
                    "Capacity | Min. 2500 mAh | 0.2C",
                    " | Typ. 2600 mAh | 0.2C"),
            Pages.rest("Nominal capacity"));
    assertEquals(
        List.of("minimum 2.5 {dischargeRate=0.2}", "typical 2.6 {dischargeRate=0.2}"),
        said.of("capacity"));
  }

  @Test
  void linesOfOneCellEachSayTheirOwn() {
    Said said =
        Said.on(
            Pages.page()
                .table("Item | Value", "Working temperature | Charge: 0~45℃\nDischarge: -20~60℃"),
            Pages.rest());
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
  }

  @Test
  void rowsSharingANumberAreParted() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "No. | Item | Value",
                    "1 | Standard charge current\nMax. charge current | 500 mA\n1000 mA",
                    "2 | Cell weight | 20 g"),
            Pages.rest("Standard charge", "Max. charge", "Nominal capacity"),
            Pages.page().table("Item | Value", "Nominal capacity | 1000 mAh"));
    assertEquals(List.of("standard 0.5"), said.of("standardChargeCurrent"));
    assertEquals(List.of("maximum 1"), said.of("maximumChargeCurrent"));
  }

  @Test
  void aWrappedLabelStaysWhole() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Max. continuous\ndischarge current | 5.2 A"),
            Pages.rest());
    assertEquals(List.of("maximum 5.2"), said.of("maximumContinuousDischargeCurrent"));
  }

  // ---- columns ----

  @Test
  void minimumTypicalAndMaximumColumnsGiveAStatementEach() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Parameter | Min | Typ | Max | Unit",
                    "Capacity | 2500 | 2600 |  | mAh",
                    "Internal impedance, AC 1 kHz |  | 18 | 25 | mΩ",
                    "Weight |  | 45 | 47 | g"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of("minimum 2.5", "typical 2.6"), said.of("capacity"));
    assertEquals(
        List.of("typical 18 {frequency=1000}", "maximum 25 {frequency=1000}"),
        said.of("internalResistanceAC"));
    assertEquals(List.of("typical 45", "maximum 47"), said.of("mass"));
  }

  @Test
  void aTemperatureRangeMayHaveItsEndsInTheMinimumAndMaximumColumns() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Parameter | Min | Typ | Max | Unit",
                    "Charge temperature | 0 |  | 45 | °C",
                    "Discharge temperature | −20 |  | 60 | °C",
                    "Storage temperature, 1 month | -20 |  | 45 | °C"),
            Pages.rest());
    assertEquals(List.of("0..45"), said.of("chargeTemperature"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
    assertEquals(List.of("-20..45 {duration=2592000}"), said.of("storageTemperature"));
  }

  @Test
  void aUnitColumnGivesItsUnitToTheRow() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value | Unit", "Weight | 46.5 | g", "Diameter | 18.35 | mm"),
            Pages.rest());
    assertEquals(List.of("46.5"), said.of("mass"));
    assertEquals(List.of("18.35"), said.of("diameter"));
  }

  @Test
  void aUnitInTheLabelIsAsGood() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Weight (g) | 46.5", "Height [mm] | 65.1"),
            Pages.rest());
    assertEquals(List.of("46.5"), said.of("mass"));
    assertEquals(List.of("65.1"), said.of("height"));
  }

  @Test
  void conditionsStandInTheirColumn() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Specification | Condition",
                    "Rated capacity | 2500 mAh | Discharge at 0.2C to 2.75V, 23 °C",
                    "Max. pulse discharge current | 10 A | 10 s"),
            Pages.rest("Nominal capacity"));
    assertEquals(
        List.of("rated 2.5 {dischargeRate=0.2, cutoffVoltage=2.75, temperature=23}"),
        said.of("capacity"));
    assertEquals(List.of("maximum 10 {duration=10}"), said.of("maximumPulseDischargeCurrent"));
  }

  @Test
  void theCellsColumnCountsNotThePacks() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Cell | Battery pack",
                    "Nominal capacity | 2500 mAh | 5000 mAh",
                    "Weight | 46 g | 380 g"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of("nominal 2.5"), said.of("capacity"));
    assertEquals(List.of("46"), said.of("mass"));
  }

  // ---- one statement per limit ----

  @Test
  void limitsByTemperatureRangeAreAStatementEach() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value | Remark",
                    "Max. charge current | 0.65 A | 0 to 10 °C",
                    "^ | 1.3 A | 10 to 25 °C",
                    "^ | 2.6 A | 25 to 45 °C"),
            Pages.rest("Max. charge"));
    assertEquals(
        List.of(
            "maximum 0.65 {temperatureLow=0, temperatureHigh=10}",
            "maximum 1.3 {temperatureLow=10, temperatureHigh=25}",
            "maximum 2.6 {temperatureLow=25, temperatureHigh=45}"),
        said.of("maximumChargeCurrent"));
  }

  @Test
  void limitsByDurationAreAStatementEach() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value",
                    "Pulse discharge current (1 s) | 30 A",
                    "Pulse discharge current (10 s) | 20 A"),
            Pages.rest());
    assertEquals(
        List.of("30 {duration=1}", "20 {duration=10}"), said.of("maximumPulseDischargeCurrent"));
  }

  @Test
  void limitsByStorageTimeAreAStatementEach() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value",
                    "Storage temperature | 1 month: -20 to 60 °C\n3 months: -20 to 45 °C\n"
                        + "1 year: -20 to 20 °C"),
            Pages.rest());
    assertEquals(
        List.of(
            "-20..60 {duration=2592000}",
            "-20..45 {duration=7776000}",
            "-20..20 {duration=31536000}"),
        said.of("storageTemperature"));
  }

  @Test
  void theShareLeftAfterStorageStandsBesideItsTemperature() {
    Said said =
        Said.on(
            Pages.page()
                .table("Item | Value", "Storage temperature | 1 year at −20 to 30 °C > 70 %"),
            Pages.rest());
    assertEquals(List.of("-20..30 {duration=31536000}"), said.of("storageTemperature"));
    assertEquals(
        List.of("minimum 70 {temperatureLow=-20, temperatureHigh=30, duration=31536000} ?"),
        said.of("capacityRetention"));
    assertEquals(
        List.of("the sheet does not say what this share is of"), said.doubts("capacityRetention"));
  }

  @Test
  void aRecoveryShareAfterStorageIsRecovery() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value | Remark",
                    "Storage temperature, 1 month | -20 to 45 °C | recovery capacity ≥ 80 %"),
            Pages.rest());
    assertEquals(
        List.of("minimum 80 {temperatureLow=-20, temperatureHigh=45, duration=2592000}"),
        said.of("capacityRecovery"));
  }

  // ---- other arrangements ----

  @Test
  void transposedTablesHaveTheirConditionsAbove() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Discharge temperature | -20 °C | 0 °C | 25 °C | 60 °C",
                    "Capacity retention | 60 % | 80 % | 100 % | 95 %"),
            Pages.rest());
    assertEquals(
        List.of(
            "60 {temperature=-20}",
            "80 {temperature=0}",
            "100 {temperature=25}",
            "95 {temperature=60}"),
        said.of("capacityRetention"));
  }

  @Test
  void conditionsMayStandInTheFirstColumn() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Storage time | Capacity retention | Capacity recovery",
                    "1 month | ≥ 95 % | ≥ 97 %",
                    "3 months | ≥ 90 % | ≥ 95 %"),
            Pages.rest());
    assertEquals(List.of(), said.doubts("capacityRetention"));
    assertEquals(
        List.of("minimum 95 {duration=2592000}", "minimum 90 {duration=7776000}"),
        said.of("capacityRetention"));
    assertEquals(
        List.of("minimum 97 {duration=2592000}", "minimum 95 {duration=7776000}"),
        said.of("capacityRecovery"));
  }

  @Test
  void aListStandsUnderAList() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value",
                    "Storage time | 1 month 3 months 6 months",
                    "Capacity retention | 95 % 90 % 80 %"),
            Pages.rest());
    assertEquals(
        List.of("95 {duration=2592000}", "90 {duration=7776000}", "80 {duration=15552000}"),
        said.of("capacityRetention"));
  }

  @Test
  void dimensionsInOneValueFollowTheLettersOfTheLabel() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Size (T × W × L) | 5.0 × 34 × 50 mm"),
            Pages.rest());
    assertEquals(List.of("5"), said.of("thickness"));
    assertEquals(List.of("34"), said.of("width"));
    assertEquals(List.of("50"), said.of("length"));
  }

  @Test
  void aTableGoesOnOnTheNextPage() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Parameter | Min | Typ | Max | Unit",
                    "Capacity | 2500 | 2600 |  | mAh",
                    "Internal impedance |  | 18 | 25 | mΩ"),
            Pages.page()
                .table(
                    "Weight             |      | 45 | 47 | g",
                    "Cycle life         | 500  |    |    | cycles",
                    "Discharge temperature | -20 | | 60 | °C"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of("typical 45", "maximum 47"), said.of("mass"));
    assertEquals(List.of("minimum 500"), said.of("cycleLife"));
    assertEquals(List.of("-20..60"), said.of("dischargeTemperature"));
  }

  @Test
  void anEmptyRowAtTheTopOfAPageIsNone() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Diameter | 18.3 mm"),
            Pages.page().table(" | ", "Cell weight | 46 g"),
            Pages.rest());
    assertEquals(List.of("46"), said.of("mass"));
  }

  @Test
  void aModelPerColumnIsARecordEach() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Model | LM18-26 | LM21-50",
                    "Nominal capacity | 2600 mAh | 5000 mAh",
                    "Max. charge current | 2.6 A | 5 A",
                    "Weight | 46 g | 70 g",
                    "Nominal voltage | 3.6 V | <",
                    "Charge voltage | 4.2 V | <"));
    assertEquals(2, said.reading().records().size());
    CellRecord small = said.record("LM18-26");
    CellRecord large = said.record("LM21-50");
    assertEquals(List.of("nominal 2.6"), Said.of(small, "capacity"));
    assertEquals(List.of("nominal 5"), Said.of(large, "capacity"));
    assertEquals(List.of("46"), Said.of(small, "mass"));
    assertEquals(List.of("70"), Said.of(large, "mass"));
    assertEquals(List.of("nominal 3.6"), Said.of(small, "nominalVoltage"));
    assertEquals(List.of("nominal 3.6"), Said.of(large, "nominalVoltage"));
    assertTrue(!small.id().equals(large.id()), small.id());
  }

  @Test
  void anUnruledTableReadsLikeARuledOne() {
    Said said =
        Said.on(
            Pages.page()
                .columns("Item | Value", "Cell weight | 46.5 g", "Internal resistance | ≤ 25 mΩ"),
            Pages.rest());
    assertEquals(List.of("46.5"), said.of("mass"));
    assertEquals(List.of("maximum 25"), said.of("internalResistanceAC"));
  }
}
