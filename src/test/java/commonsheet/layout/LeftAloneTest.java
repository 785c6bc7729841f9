package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures that are no ratings of the cell give no statement. */
class LeftAloneTest {
  private static final Set<String> ORDINARY =
      Set.of("nominal 2.6", "nominal 3.6", "2.75", "standard 1.3", "maximum 2.6");

  private static List<String> unexpected(Said said) {
    return said.record().statements().stream()
        .filter(s -> !ORDINARY.contains(Said.inShort(s)))
        .map(s -> s.quantity() + " " + Said.inShort(s))
        .collect(Collectors.toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Over-charge detection voltage | 4.28 V",
        "Over current protection | 5 A",
        "Protection circuit resistance | 60 mΩ",
        "Shipping voltage | 3.70 V",
        "Shipment capacity | 30 %",
        "Open circuit voltage | 3.8 V",
        "Short circuit test | 80 mΩ",
        "Crush | 13 kN",
        "Drop | 1.0 m",
        "Impact | 9.1 kg",
        "Vibration | 1.6 mm",
        "Thermal shock | -40 to 75 °C",
        "Hot box | 130 °C, 30 min",
        "Forced discharge | 1.0 A",
        "Charge time | 2.5 h",
        "Relative humidity | 65 %",
        "Lead wire length | 50 mm",
        "Tab width | 4 mm",
        "Warranty | 12 months",
        "Shelf life | 1 year at 25 °C",
        "Voltmeter accuracy | 0.5 %",
        "Charger voltage | 5 V",
        "Self discharge rate | 3 %"
      })
  void aRowAboutSomethingElseSaysNothingOfTheCell(String row) {
    assertEquals(
        List.of(), unexpected(Said.on(Pages.page().table("Item | Value", row), Pages.rest())));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "6.1 Overcharge: charge at 3C to 4.8 V for 8 h; no fire, no explosion.",
        "6.2 Short circuit: short the terminals with less than 50 mΩ for 1 h at 55 °C.",
        "6.3 Drop test: drop from 1.0 m onto concrete 3 times.",
        "6.4 Thermal test: heat at 5 °C/min to 130 °C and hold for 10 min."
      })
  void aSafetyClauseSaysNothingOfTheCell(String clause) {
    assertEquals(List.of(), unexpected(Said.on(Pages.page().line(clause), Pages.rest())));
  }

  @Test
  void everythingUnderASafetyHeadingIsLeftAlone() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value",
                    "Safety test | <",
                    "Charge current | 3 A",
                    "Charge voltage | 10 V"),
            Pages.rest());
    assertEquals(List.of(), unexpected(said));
  }

  @Test
  void aTableOfContentsIsNone() {
    Said said =
        Said.on(
            Pages.page()
                .line("1 Nominal capacity ........................ 3")
                .line("2 Cell weight ............................. 12")
                .line("3 Charge temperature ...................... 4"),
            Pages.rest());
    assertEquals(List.of(), unexpected(said));
  }

  @Test
  void aRevisionTableSpeaksOfTheDocument() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Version | Date | Description",
                    "A0 | 2019-03-01 | First issue",
                    "A1 | 2020-07-15 | Minimum capacity 2450 mAh to 2500 mAh"),
            Pages.rest());
    assertEquals(List.of(), unexpected(said));
  }

  @Test
  void ticksOfAChartAreNoValues() {
    Said said =
        Said.on(
            Pages.page()
                .heading("Discharge characteristics")
                .line("Capacity (mAh)")
                .line("0\t500\t1000\t1500\t2000\t2500")
                .line("Voltage (V)")
                .line("4.2\t3.8\t3.4\t3.0"),
            Pages.rest());
    assertEquals(List.of(), unexpected(said));
  }

  @Test
  void aLabelNobodyKnowsSaysNothingAndIsExplained() {
    Said said =
        Said.on(Pages.page().table("Item | Value", "Juice of the lake | 2600 mAh"), Pages.rest());
    assertEquals(List.of(), unexpected(said));
    assertTrue(
        said.reading().explanation().outcomes().stream()
            .anyMatch(
                o -> o.label().equals("Juice of the lake") && o.result().startsWith("unmatched")),
        said.reading().explanation().toString());
  }

  @Test
  void aLossIsNoRetention() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Capacity loss after 28 days | ≤ 5 %"),
            Pages.rest());
    assertEquals(List.of(), Said.statements(said.record(), "capacityRetention"));
  }

  @Test
  void whatIsNoCellsSheetGivesNoRecord() {
    Reading story =
        Said.on(
                Pages.page()
                    .line("The boat left at dawn with 12 V on board and 40 km to go.")
                    .line("The current was strong, and the night was cold: -5 °C."))
            .reading();
    assertEquals(List.of(), story.records());
    assertEquals(
        "does not read like the datasheet of a lithium-ion cell; check that it is one",
        story.reason());
  }

  @Test
  void anotherChemistryIsNamedInTheReason() {
    Reading nickel =
        Said.on(
                Pages.page()
                    .heading("Ni-MH rechargeable battery")
                    .table(
                        "Item | Value",
                        "Nominal capacity | 2000 mAh",
                        "Nominal voltage | 1.2 V",
                        "Standard charge current | 200 mA",
                        "Max. discharge current | 2 A"))
            .reading();
    assertEquals(List.of(), nickel.records());
    assertTrue(nickel.reason().contains("not a lithium-ion one"), nickel.reason());
  }
}
