package commonsheet.check;

import static commonsheet.record.Statistic.NOMINAL;
import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.record.CellRecord;
import commonsheet.record.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two revisions of one sheet, and one sheet read twice. */
class BetweenRecordsTest {
  private static final String OTHER = "0".repeat(64);

  @Test
  void warnsOfALimitThatARevisionChanges() {
    List<BetweenFinding> findings =
        between(
            Invented.sound().from("a.pdf", OTHER).record(),
            Invented.sound().butSays("chargeVoltage", null, 4.15).record());
    assertEquals(1, findings.size(), findings::toString);
    assertEquals("between/same-cell", findings.get(0).rule());
    assertEquals(Severity.WARNING, findings.get(0).severity());
    assertEquals(
        "Two records of the cell TC-26E give 4.2 V (page 1) in a.pdf and 4.15 V (page 1) in"
            + " tc-26e.pdf as charge voltage; use the newer sheet, and tell the maker where it is"
            + " not clear which that is.",
        findings.get(0).message());
  }

  @Test
  void notesWhatElseARevisionChanges() {
    List<BetweenFinding> findings =
        between(
            Invented.sound().from("a.pdf", OTHER).record(),
            Invented.sound().butSays("mass", null, 46).record());
    assertEquals(List.of(Severity.NOTE), findings.stream().map(BetweenFinding::severity).toList());
  }

  @Test
  void saysNothingOfOtherCellsAndOtherCases() {
    CellRecord one = Invented.sound().from("a.pdf", OTHER).record();
    assertEquals(List.of(), between(one, Invented.sound().record()));
    assertEquals(
        List.of(),
        between(one, Invented.sound().is("model", "TC-35E").butSays("mass", null, 48).record()));
    assertEquals(
        List.of(),
        between(
            one, Invented.sound().butSays("capacity", NOMINAL, 2.4, "dischargeRate", 2).record()));
  }

  @Test
  void notesOneSheetReadTwice() {
    List<BetweenFinding> findings = between(Invented.sound().record(), Invented.sound().record());
    assertEquals(
        List.of("between/same-sheet"), findings.stream().map(BetweenFinding::rule).toList());
  }

  private static List<BetweenFinding> between(CellRecord one, CellRecord other) {
    return Checks.between(List.of(one, other));
  }
}
