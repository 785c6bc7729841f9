package commonsheet.review;

import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.Severity;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * How far a record is on its way to an approval.
 *
 * @param unsettled ids of the statements and curves that a person has yet to settle, in the order
 *     of the record; a value computed from others is settled with these
 * @param openFindings those that nobody has accepted
 */
public record Progress(List<String> unsettled, List<Finding> openFindings) {
  public Progress {
    unsettled = List.copyOf(unsettled);
    openFindings = List.copyOf(openFindings);
  }

  /** That of a record. */
  public static Progress of(CellRecord record) {
    List<String> unsettled = new ArrayList<>();
    for (Statement statement : record.statements()) {
      if (!isSettled(statement, record) && !waitsForItsOrigin(statement, record)) {
        unsettled.add(statement.id());
      }
    }
    for (Curve curve : record.curves()) {
      if (!isSettled(curve)) {
        unsettled.add(curve.id());
      }
    }
    return new Progress(unsettled, record.findings().stream().filter(Finding::isOpen).toList());
  }

  /** The open findings of a severity. */
  public List<Finding> open(Severity severity) {
    return openFindings.stream().filter(finding -> finding.severity() == severity).toList();
  }

  /**
   * Whether a person has settled a statement, or everything that it was computed from: it then
   * follows from what they settled. What follows from something rejected does not.
   */
  public static boolean isSettled(Statement statement, CellRecord record) {
    return statement.standing().isSettled()
        || (statement.evidence().method() == Method.DERIVED
            && statement.standing() == Standing.READ
            && statement.evidence().from().stream().allMatch(id -> carries(id, record)));
  }

  private static boolean waitsForItsOrigin(Statement statement, CellRecord record) {
    return statement.evidence().method() == Method.DERIVED
        && statement.evidence().from().stream().anyMatch(id -> isOpen(id, record));
  }

  private static boolean isOpen(String id, CellRecord record) {
    Curve curve = record.curve(id);
    Statement statement = record.statement(id);
    return (curve != null && !isSettled(curve))
        || (statement != null && !isSettled(statement, record));
  }

  /** Whether a person has settled a curve; what users measured themselves is settled by them. */
  public static boolean isSettled(Curve curve) {
    return curve.standing().isSettled() || curve.method() == Method.MEASURED;
  }

  private static boolean carries(String id, CellRecord record) {
    Curve curve = record.curve(id);
    if (curve != null) {
      return isSettled(curve) && curve.standing() != Standing.REJECTED;
    }
    Statement statement = record.statement(id);
    return statement != null
        && statement.standing() != Standing.REJECTED
        && isSettled(statement, record);
  }
}
