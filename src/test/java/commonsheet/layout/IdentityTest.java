package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import commonsheet.record.Cell;
import commonsheet.record.Finding;
import commonsheet.record.Source;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which cell a sheet is about, and which document it is. */
class IdentityTest {
  private static Cell cell(Pages first) {
    return Said.on(first, Pages.rest()).record().cell();
  }

  @ParameterizedTest
  @CsvSource({
    "Model: LM18650-26, LM18650-26",
    "Model No.: LM-603048, LM-603048",
    "MODEL LM-26P, LM-26P",
    "型号：LM603048, LM603048",
    "Typ: LM18650-26, LM18650-26"
  })
  void theModelStandsBesideItsLabel(String line, String model) {
    assertEquals(model, cell(Pages.page().line(line)).model());
  }

  @Test
  void aModelsNameMayHaveASpace() {
    assertEquals("LM 18650-26", cell(Pages.page().line("Type: LM 18650-26")).model());
  }

  @Test
  void aModelMayStandInATable() {
    Cell cell = cell(Pages.page().table("Item | Value", "Model | LM18650-26"));
    assertEquals("LM18650-26", cell.model());
    assertEquals("18650", cell.sizeCode());
  }

  @Test
  void aCodeInTheTitleIsTheModelWhereNoLabelSays() {
    assertEquals("LM603048", cell(Pages.page().heading("Product specification LM603048")).model());
  }

  @ParameterizedTest
  @CsvSource({"IEC61960", "UN38.3", "UL1642", "2600mAh", "www.merrow18.example"})
  void aStandardOrAFigureIsNoModel(String word) {
    assertNull(cell(Pages.page().line("Tested as in " + word)).model());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Merrow Lakeside Cells Co., Ltd. | Merrow Lakeside Cells Co., Ltd.",
        "Merrow Zellenbau GmbH | Merrow Zellenbau GmbH",
        "Manufacturer: Merrow Cells | Merrow Cells",
        "This cell is manufactured by Merrow Cellworks | Merrow Cellworks",
        "Curves of single cells, no warranty. Merrow Cells, Reed Wharf | Merrow Cells"
      })
  void theMakerIsACompanyOrStandsBesideItsLabel(String line, String maker) {
    assertEquals(maker, cell(Pages.page().line(line)).maker());
  }

  @ParameterizedTest
  @CsvSource({
    "Lithium-ion cell with LiFePO4, LiFePO4",
    "Rechargeable lithium ion polymer battery, lithium ion polymer",
    "Lithium-ion rechargeable cell, Lithium-ion",
    "锂离子电芯, 锂离子",
    "Chemistry: NMC, NMC"
  })
  void theChemistryIsTheMostExactNamePrinted(String line, String chemistry) {
    assertEquals(chemistry, cell(Pages.page().line(line)).chemistry());
  }

  @Test
  void theMostExactChemistryWinsWhereverItStands() {
    Cell cell =
        cell(Pages.page().heading("Lithium-ion rechargeable cell").line("Cathode: LiFePO4"));
    assertEquals("LiFePO4", cell.chemistry());
  }

  @ParameterizedTest
  @CsvSource({
    "Cylindrical cell, cylindrical",
    "Prismatische Zelle, prismatic",
    "Pouch cell, pouch",
    "软包电芯, pouch"
  })
  void theFormIsNamedInOneLanguageOrAnother(String line, String form) {
    assertEquals(form, cell(Pages.page().line(line)).form());
  }

  @Test
  void theDesignationIsThatOfIec61960() {
    // IEC 61960-3, 5.1, from memory: I, material, shape, diameter/height or thickness/width/height.
    assertEquals("INR19/66", cell(Pages.page().line("Designation: INR19/66")).designation());
    assertEquals("ICP6/31/49", cell(Pages.page().line("Type ICP6/31/49 cell")).designation());
  }

  @Test
  void aSizeIsPartOfTheNameOnlyWhereItStandsAlone() {
    assertNull(cell(Pages.page().line("Model: LM1865012")).sizeCode());
    assertEquals("21700", cell(Pages.page().line("Model: LM21700P")).sizeCode());
  }

  @Test
  void theDocumentHasItsOwnNumbers() {
    Source source =
        Said.on(
                Pages.page()
                    .line("Document No.: LM-SP-0042")
                    .line("Revision: B")
                    .line("Date: 2021-05-03"),
                Pages.rest())
            .record()
            .source();
    assertEquals("LM-SP-0042", source.document());
    assertEquals("B", source.revision());
    assertEquals("2021-05-03", source.date());
    assertEquals(2, source.pages());
  }

  @Test
  void twoNamesForTheModelAreAFinding() {
    List<Finding> findings =
        Said.on(
                Pages.page().line("Model: LM18650-26"),
                Pages.page().line("Model: LM18650-29"),
                Pages.rest())
            .record()
            .findings();
    assertEquals(
        List.of(
            "the sheet names its model differently: LM18650-26 on page 1, LM18650-29 on page 2;"
                + " find out which cell its figures are for"),
        findings.stream().map(Finding::message).toList());
  }

  @Test
  void whatTheSheetDoesNotSayStaysMissing() {
    Cell cell = cell(Pages.page());
    assertNull(cell.maker());
    assertNull(cell.model());
    assertNull(cell.designation());
    assertNull(cell.form());
    assertNull(cell.sizeCode());
  }
}
