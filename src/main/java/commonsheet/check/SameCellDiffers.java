package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Records of one cell, from two revisions of its sheet or two sheets, that give one quantity, with
 * one statistic in one case, differently. Limits that keep a cell safe are warnings; what else a
 * maker changes is a note.
 */
final class SameCellDiffers implements RecordsRule {
  private static final double ROUNDING = 0.005;
  private static final Set<String> LIMITS =
      Set.of(
          "chargeVoltage",
          "dischargeCutoffVoltage",
          "standardChargeCurrent",
          "maximumChargeCurrent",
          "maximumContinuousDischargeCurrent",
          "maximumPulseDischargeCurrent",
          "chargeTemperature",
          "dischargeTemperature");

  @Override
  public String id() {
    return "between/same-cell";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public String source() {
    return CheckRule.COMMON_PRACTICE;
  }

  @Override
  public Stream<BetweenFinding> examine(CellRecord one, CellRecord other) {
    List<BetweenFinding> findings = new ArrayList<>();
    if (isSameCell(one, other)) {
      compare(one, other, findings);
    }
    return findings.stream();
  }

  private static boolean isSameCell(CellRecord one, CellRecord other) {
    return one.cell().model() != null
        && other.cell().model() != null
        && folded(one.cell().model()).equals(folded(other.cell().model()))
        && (one.cell().maker() == null
            || other.cell().maker() == null
            || folded(one.cell().maker()).equals(folded(other.cell().maker())));
  }

  private static String folded(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
  }

  private void compare(CellRecord one, CellRecord other, List<BetweenFinding> findings) {
    List<Statement> theirs = Readings.of(other).toList();
    for (Statement mine : Readings.of(one).toList()) {
      List<Statement> alike = theirs.stream().filter(s -> speaksOfTheSame(mine, s)).toList();
      boolean agrees =
          alike.isEmpty()
              || alike.stream().anyMatch(s -> !Span.of(mine).contradicts(Span.of(s), ROUNDING));
      if (!agrees) {
        findings.add(finding(one, mine, other, alike.get(0)));
      }
    }
  }

  private static boolean speaksOfTheSame(Statement one, Statement other) {
    return one.quantity().equals(other.quantity())
        && one.statistic() == other.statistic()
        && ConditionScope.DISCHARGE.sameCase(one.conditions(), other.conditions());
  }

  private BetweenFinding finding(
      CellRecord first, Statement one, CellRecord second, Statement other) {
    return new BetweenFinding(
        id(),
        LIMITS.contains(one.quantity()) ? Severity.WARNING : Severity.NOTE,
        List.of(first.id(), second.id()),
        List.of(one.id(), other.id()),
        "Two records of the cell "
            + first.cell().model()
            + " give "
            + Wording.valueAndPage(one)
            + " in "
            + document(first)
            + " and "
            + Wording.valueAndPage(other)
            + " in "
            + document(second)
            + " as "
            + Wording.name(one)
            + "; "
            + (first.source().isSameFileAs(second.source())
                ? "both are of one file, so one was read wrong."
                : "use the newer sheet, and tell the maker where it is not clear which that is."),
        source());
  }

  private static String document(CellRecord record) {
    String revision = record.source().revision();
    String date = record.source().date();
    return record.source().named()
        + (revision == null ? "" : ", revision " + revision)
        + (revision != null || date == null ? "" : ", " + date);
  }
}
