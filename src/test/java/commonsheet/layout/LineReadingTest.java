package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What lines outside tables say: clauses, dotted leaders, footnotes, sentences. */
class LineReadingTest {
  @Test
  void numberedClausesHaveALabelAndAValue() {
    Said said =
        Said.on(
            Pages.page()
                .line("3.1 Nominal capacity: 2600 mAh (0.2 C, 2.75 V cut-off)")
                .line("3.2 Nominal voltage: 3.6 V")
                .line("3.3 Charge voltage: 4.20 ± 0.05 V")
                .line("3.4 Cell weight: Max. 48 g"));
    assertEquals(
        List.of("nominal 2.6 {dischargeRate=0.2, cutoffVoltage=2.75}"), said.of("capacity"));
    assertEquals(List.of("4.2 (4.15..4.25)"), said.of("chargeVoltage"));
    assertEquals(List.of("maximum 48"), said.of("mass"));
  }

  @Test
  void dotsLeadFromALabelToItsValue() {
    Said said =
        Said.on(
            Pages.page()
                .line("Nominal capacity .............. 2600 mAh")
                .line("Nominal voltage ............... 3.6 V")
                .line("Cell weight ................... 46 g"),
            Pages.rest("Nominal capacity", "Nominal voltage"));
    assertEquals(List.of("nominal 2.6"), said.of("capacity"));
    assertEquals(List.of("nominal 3.6"), said.of("nominalVoltage"));
    assertEquals(List.of("46"), said.of("mass"));
  }

  @Test
  void aWideGapPartsALabelFromItsValue() {
    Said said =
        Said.on(
            Pages.page().line("Cell weight\t46 g").line("Internal resistance\t≤ 25 mΩ"),
            Pages.rest());
    assertEquals(List.of("46"), said.of("mass"));
    assertEquals(List.of("maximum 25"), said.of("internalResistanceAC"));
  }

  @Test
  void aClauseMayGoOnOnTheNextLine() {
    Said said =
        Said.on(
            Pages.page()
                .line("2.1 Rated capacity: 2500 mAh, discharged with 0.2 C")
                .line("to a cut-off voltage of 2.75 V at 23 °C after a standard charge"),
            Pages.rest("Nominal capacity"));
    assertEquals(
        List.of("rated 2.5 {dischargeRate=0.2, cutoffVoltage=2.75, temperature=23}"),
        said.of("capacity"));
  }

  @Test
  void aProcedureNamesCurrentVoltageAndEnd() {
    Said said =
        Said.on(
            Pages.page().line("4.1 Standard charge: CC 0.5C to 4.2 V, CV 4.2 V, 0.05C cut-off"),
            Pages.rest("Standard charge"));
    assertEquals(List.of("standard 1.3 {chargeRate=0.5}"), said.of("standardChargeCurrent"));
    assertEquals(List.of("4.2"), said.of("chargeVoltage"));
    assertEquals(
        List.of("0.13 {chargeRate=0.05, chargeVoltage=4.2}"), said.of("chargeCutoffCurrent"));
  }

  // ---- footnotes ----

  @Test
  void aStarredFootnoteHoldsTheConditions() {
    Said said =
        Said.on(
            Pages.page()
                .table("Item | Value", "Rated capacity *1 | 2500 mAh", "Weight *2 | 46 g")
                .line("*1 Discharged at 0.2C to 2.75 V at 23 °C")
                .line("*2 Without label"),
            Pages.rest("Nominal capacity"));
    assertEquals(
        List.of("rated 2.5 {dischargeRate=0.2, cutoffVoltage=2.75, temperature=23}"),
        said.of("capacity"));
    assertEquals(List.of("46"), said.of("mass"));
  }

  @Test
  void aRaisedFootnoteIsNoNumber() {
    Said said =
        Said.on(
            Pages.page()
                .table("Item | Value", "Internal resistance ¹ | 25 mΩ ²")
                .line("¹ At 1 kHz")
                .line("² At 23 °C"),
            Pages.rest());
    assertEquals(List.of("25 {temperature=23, frequency=1000}"), said.of("internalResistanceAC"));
  }

  @Test
  void aBracketedNumberIsAFootnoteOnlyWhereANoteAnswers() {
    Said said =
        Said.on(
            Pages.page()
                .table("Item | Value", "Rated capacity (1) | 2500 mAh", "Weight (2) | 46 g")
                .line("(1) At 0.2C to 2.75 V"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of("rated 2.5 {dischargeRate=0.2, cutoffVoltage=2.75}"), said.of("capacity"));
    assertEquals(List.of("46"), said.of("mass"));
  }

  @Test
  void oneLineMayHoldSeveralNotes() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value", "Min. capacity *1 | 2500 mAh", "Typical capacity *2 | 2600 mAh")
                .line("*1 At 0.2C to 2.75 V. *2 At 0.5C to 2.5 V."),
            Pages.rest("Nominal capacity"));
    assertEquals(
        List.of(
            "minimum 2.5 {dischargeRate=0.2, cutoffVoltage=2.75}",
            "typical 2.6 {dischargeRate=0.5, cutoffVoltage=2.5}"),
        said.of("capacity"));
  }

  // ---- sentences ----

  @Test
  void aShareLeftAfterManyCyclesIsACycleLife() {
    Said said =
        Said.on(
            Pages.page().line("5.2 Capacity retention after 300 cycles at 45 °C: ≥ 75 %"),
            Pages.rest());
    assertEquals(List.of(), said.of("capacityRetention"));
    assertEquals(List.of("300 {temperature=45, retention=75}"), said.of("cycleLife"));
  }

  @Test
  void cycleLifeIsToldInASentence() {
    Said said =
        Said.on(
            Pages.page()
                .heading("5.4 Cycle life")
                .line(
                    "Charge and discharge at 0.5C; after 500 cycles the capacity is at least 80 %"),
            Pages.rest());
    assertEquals(
        List.of("500 {dischargeRate=0.5, chargeRate=0.5, retention=80}"), said.of("cycleLife"));
  }

  @Test
  void retentionIsToldInASentence() {
    Said said =
        Said.on(
            Pages.page()
                .line(
                    "5.5 Capacity retention: ≥ 85 % after storage at 25 °C for 28 days,"
                        + " discharged at 0.2C"),
            Pages.rest());
    assertEquals(
        List.of("minimum 85 {dischargeRate=0.2, temperature=25, duration=2419200}"),
        said.of("capacityRetention"));
  }
}
