package commonsheet.review;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A record in a list of records.
 *
 * @param state draft, approved or reopened
 * @param unsettled how many statements and curves nobody has settled
 * @param errors open findings that are errors; likewise {@code warnings} and {@code notes}
 * @param missing quantities that a comparison needs and the record does not give
 */
public record Overview(
    CellRecord record,
    String state,
    int unsettled,
    int errors,
    int warnings,
    int notes,
    List<String> missing) {
  /** What every datasheet of a cell is expected to say. Common practice, no source. */
  private static final Set<String> EXPECTED =
      Set.of(
          "capacity",
          "nominalVoltage",
          "chargeVoltage",
          "dischargeCutoffVoltage",
          "maximumContinuousDischargeCurrent",
          "mass",
          "chargeTemperature",
          "dischargeTemperature");

  /** That of a record. */
  public static Overview of(CellRecord record) {
    Progress progress = Progress.of(record);
    Set<String> given =
        record.statements().stream()
            .filter(s -> s.standing() != Standing.REJECTED)
            .map(s -> s.quantity())
            .collect(Collectors.toSet());
    return new Overview(
        record,
        record.review().state(),
        progress.unsettled().size(),
        progress.open(Severity.ERROR).size(),
        progress.open(Severity.WARNING).size(),
        progress.open(Severity.NOTE).size(),
        QuantityCatalogue.standard().all().stream()
            .map(kind -> kind.name())
            .filter(name -> EXPECTED.contains(name) && !given.contains(name))
            .toList());
  }
}
