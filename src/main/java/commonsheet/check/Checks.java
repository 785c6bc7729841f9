package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import java.util.ArrayList;
import java.util.List;

/** A set of rules to hold a record against. */
public final class Checks {
  private final List<CheckRule> rules;

  public Checks(List<CheckRule> rules) {
    this.rules = List.copyOf(rules);
  }

  /** Every rule of the project. */
  public static Checks standard() {
    return new Checks(StandardRules.ALL);
  }

  public List<CheckRule> rules() {
    return rules;
  }

  /** The record with what the rules find added to its findings. */
  public CellRecord applied(CellRecord record) {
    List<Finding> findings = new ArrayList<>(record.findings());
    findings.addAll(examine(record));
    return new CellRecord(
        record.schema(),
        record.id(),
        record.cell(),
        record.source(),
        record.statements(),
        record.curves(),
        findings,
        record.review());
  }

  /**
   * What the rules find, in the order of the rules; the record itself stays as it is. Findings the
   * record already holds are neither looked at nor repeated.
   */
  public List<Finding> examine(CellRecord record) {
    return rules.stream().flatMap(rule -> rule.examine(record)).toList();
  }
}
