package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Statement;
import commonsheet.sheet.Cell;
import commonsheet.sheet.Line;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import commonsheet.sheet.Table;
import commonsheet.sheet.Word;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** What makes a value unsure, and what it says then. */
class DoubtsTest {
  @Test
  void aValuePrintedAsOneReadsIsSure() {
    Said said = Said.on(Pages.page().table("Item | Value", "Cell weight | 46 g"), Pages.rest());
    assertEquals(List.of("46"), said.of("mass"));
    assertEquals(List.of(), said.doubts("mass"));
  }

  @Test
  void aMissingUnitIsTakenOnlyWhereNothingElseIsEverPrintedAndSaidSo() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Diameter | 18.35", "Cell weight | 46.5"),
            Pages.rest());
    assertEquals(List.of("18.35 ?"), said.of("diameter"));
    assertEquals(List.of("no unit is printed; mm is taken"), said.doubts("diameter"));
    assertEquals(List.of(), said.of("mass"));
  }

  @Test
  void aChargePrintedWhereACurrentIsMeantIsReadWithADoubt() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Max. discharge current | 2600 mAh"), Pages.rest());
    assertEquals(List.of("maximum 2.6 ?"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(
        List.of("printed with a unit of charge (2600 mAh); a current is meant"),
        said.doubts("maximumContinuousDischargeCurrent"));
  }

  /** Sheets of power cells print "10C" for the rate, and others lose the ring of "10 °C". */
  @Test
  void aBareCThatMayBeARateOrATemperatureLeavesACurrentUnsure() {
    Said said =
        Said.on(
            Pages.page()
                .table("Item | Value | Remark", "Max. continuous discharge current | 33 A | 10C"),
            Pages.rest());
    assertEquals(
        List.of("maximum 33 {temperature=10} ?"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(
        List.of("a rate or a temperature stands beside it: 10C"),
        said.doubts("maximumContinuousDischargeCurrent"));
  }

  @Test
  void twoCutOffVoltagesAreBothKept() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Discharge cut-off voltage | 2.5 V"),
            Pages.page().table("Item | Value", "End of discharge voltage | 2.75 V"),
            Pages.rest("Discharge cut-off"));
    assertEquals(List.of("2.5 ?", "2.75 ?"), said.of("dischargeCutoffVoltage"));
    assertEquals(
        List.of("the sheet also says 2.75 on page 2", "the sheet also says 2.5 on page 1"),
        said.doubts("dischargeCutoffVoltage"));
  }

  @Test
  void aMultipleOfCIsWorkedOutWithTheNominalCapacityAndSaysSo() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value",
                    "Minimum capacity | 2500 mAh",
                    "Nominal capacity | 2600 mAh",
                    "Max. continuous discharge current | 2C"),
            Pages.rest("Nominal capacity"));
    assertEquals(
        List.of("maximum 5.2 {dischargeRate=2}"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(
        List.of("2 C of the nominal capacity 2.6 A.h"),
        said.notes("maximumContinuousDischargeCurrent"));
  }

  @Test
  void aMultipleOfCWithoutACapacityIsNoCurrent() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Max. continuous discharge current | 2C"),
            Pages.rest("Nominal capacity"));
    assertEquals(List.of(), said.of("maximumContinuousDischargeCurrent"));
  }

  @Test
  void amperesThatDoNotGoWithTheirMultipleOfCAreDoubted() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Max. continuous discharge current | 7.8 A (2C)"),
            Pages.rest());
    assertEquals(
        List.of("maximum 7.8 {dischargeRate=2} ?"), said.of("maximumContinuousDischargeCurrent"));
    assertEquals(
        List.of("7.8 A and 2 C do not go together with any capacity on the sheet"),
        said.doubts("maximumContinuousDischargeCurrent"));
  }

  @Test
  void anImplausibleValueIsKeptWithItsReason() {
    Said said = Said.on(Pages.page().table("Item | Value", "Charge voltage | 42 V"), Pages.rest());
    assertEquals(List.of("42 ?"), said.of("chargeVoltage"));
    String doubt = said.doubts("chargeVoltage").get(0);
    assertTrue(doubt.startsWith("42 V is outside what a lithium-ion cell can have"), doubt);
  }

  @Test
  void aLabelUnderstoodByHalfMayMeanSomethingElse() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Weight of the whole shore equipment | 46 g"),
            Pages.rest());
    assertEquals(List.of("46 ?"), said.of("mass"));
    assertEquals(
        List.of("the label is only partly understood: Weight of the whole shore equipment"),
        said.doubts("mass"));
  }

  @Test
  void severalValuesInOneCellAreDoubted() {
    Said said =
        Said.on(Pages.page().table("Item | Value", "Cell weight | 46 g, 48 g"), Pages.rest());
    assertTrue(
        said.doubts("mass").stream().anyMatch(d -> d.startsWith("several values stand here")),
        said.of("mass").toString());
  }

  @Test
  void valuesInColumnsThatNothingHeadsAreDoubted() {
    Said said =
        Said.on(Pages.page().table("Item | Value | <", "Cell weight | 46 g | 380 g"), Pages.rest());
    assertEquals(List.of("46 ?", "380 ?"), said.of("mass"));
    assertTrue(
        said.doubts("mass")
            .contains("the row has values in several columns, and nothing says whose each is"),
        said.doubts("mass").toString());
  }

  @Test
  void aLabelThatLeavesRoomForAnotherQuantityIsDoubted() {
    Said said =
        Said.on(
            Pages.page().table("Item | Value", "Discharge voltage | 3.0 V"),
            Pages.rest("Discharge cut-off"));
    assertEquals(List.of("3 ?"), said.of("dischargeCutoffVoltage"));
    assertEquals(
        List.of("the label leaves room for another quantity: Discharge voltage"),
        said.doubts("dischargeCutoffVoltage"));
  }

  @Test
  void aDrawingsDimensionsAreToldApartByTheSizeInTheModelsName() {
    Said said =
        Said.on(
            Pages.page()
                .line("Model: LM603048")
                .lettered("6.0 ± 0.3")
                .lettered("30.0 ± 0.5 mm")
                .lettered("48.5 max"),
            Pages.rest());
    assertEquals(List.of("6 (5.7..6.3) ?"), said.of("thickness"));
    assertEquals(List.of("30 (29.5..30.5) ?"), said.of("width"));
    assertEquals(List.of("maximum 48.5 ?"), said.of("length"));
    assertEquals(
        List.of(
            "read from a drawing; which dimension it is follows from the size in the model's name"),
        said.doubts("width"));
    assertEquals(2, said.doubts("thickness").size());
  }

  @Test
  void aDrawingThatContradictsTheTableIsKeptBesideIt() {
    Said said =
        Said.on(
            Pages.page()
                .line("Model: LM18650-26")
                .table("Item | Value", "Diameter | 18.35 ± 0.1 mm")
                .lettered("Ø 18.8 ± 0.1"),
            Pages.rest());
    List<String> diameters = said.of("diameter");
    assertEquals(2, diameters.size(), diameters.toString());
    assertTrue(diameters.stream().allMatch(d -> d.endsWith("?")), diameters.toString());
  }

  @Test
  void severalMentionsWithoutALineOfTheirOwnAreDoubted() {
    Said said =
        Said.on(
            Pages.page()
                .table(
                    "Item | Value | Condition",
                    "Minimum capacity | 2500 mAh | discharge at 0.2C to 2.75 V cut-off",
                    "Typical capacity | 2600 mAh | discharge at 0.2C to 2.5 V cut-off"),
            Pages.rest("Nominal capacity", "Discharge cut-off"));
    assertEquals(2, said.of("dischargeCutoffVoltage").size());
    assertTrue(
        said.doubts("dischargeCutoffVoltage")
            .contains("the sheet mentions several values and names none as its own"));
  }

  @Test
  void wordsRecognisedFromAPictureCarryTheirConfidence() {
    Sheet written =
        Pages.sheet(Pages.page().table("Item | Value", "Cell weight | 46 g"), Pages.rest());
    Said said = Said.on(recognised(written, 0.7));
    Statement mass = Said.statements(said.record(), "mass").get(0);
    assertEquals(0.7, mass.evidence().confidence());
    assertEquals(
        List.of("the words were recognised from a picture with confidence 0.7"), mass.doubts());
    assertEquals(List.of("46"), Said.on(recognised(written, 0.99)).of("mass"));
  }

  /** "50% S0C" in the condition column of a scan: without the state of charge it says too much. */
  @Test
  void conditionsThatMayBeLostMakeTheirValueUnsure() {
    Sheet written =
        Pages.sheet(
            Pages.page()
                .table(
                    "Item | Value | Condition",
                    "Max. pulse discharge current | 56 A | 30 s, 50% S0C",
                    "Cell weight | 46 g | "),
            Pages.rest());
    Said said = Said.on(recognised(written, word -> word.equals("S0C") ? 0.7 : 0.99));
    assertEquals(List.of("46"), said.of("mass"));
    assertEquals(
        List.of("the conditions beside it were recognised from a picture with confidence 0.7"),
        Said.statements(said.record(), "maximumPulseDischargeCurrent").get(0).doubts());
  }

  private static Sheet recognised(Sheet sheet, double confidence) {
    return recognised(sheet, word -> confidence);
  }

  private static Sheet recognised(Sheet sheet, ToDoubleFunction<String> confidence) {
    return new Sheet(
        sheet.file(),
        sheet.sha256(),
        sheet.title(),
        sheet.pages().stream()
            .map(
                p ->
                    new Page(
                        p.number(),
                        p.width(),
                        p.height(),
                        p.words().stream().map(w -> recognised(w, confidence)).toList(),
                        p.lines().stream().map(l -> recognised(l, confidence)).toList(),
                        p.tables().stream().map(t -> recognised(t, confidence)).toList(),
                        p.running(),
                        p.kind()))
            .toList());
  }

  private static Table recognised(Table table, ToDoubleFunction<String> confidence) {
    List<Cell> cells =
        table.cells().stream()
            .map(
                c ->
                    new Cell(
                        c.row(),
                        c.column(),
                        c.rows(),
                        c.columns(),
                        c.box(),
                        c.lines().stream().map(l -> recognised(l, confidence)).toList()))
            .toList();
    return new Table(table.box(), table.ruled(), table.rows(), table.columns(), cells);
  }

  private static Line recognised(Line line, ToDoubleFunction<String> confidence) {
    return new Line(line.words().stream().map(w -> recognised(w, confidence)).toList());
  }

  private static Word recognised(Word w, ToDoubleFunction<String> confidence) {
    return new Word(
        w.text(),
        w.box(),
        w.size(),
        w.bold(),
        w.turn(),
        w.raised(),
        true,
        confidence.applyAsDouble(w.text()));
  }
}
