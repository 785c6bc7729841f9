package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

  /**
   * The record with what the rules find now in place of what they found before. Findings of others
   * stay; one that was accepted and is found again stays accepted.
   */
  public CellRecord applied(CellRecord record) {
    Set<String> own = rules.stream().map(CheckRule::id).collect(Collectors.toSet());
    List<Finding> findings =
        Stream.concat(
                record.findings().stream().filter(finding -> !own.contains(finding.rule())),
                examine(record).stream().map(f -> f.acceptedAsIn(record.findings())))
            .toList();
    return record.withFindings(findings);
  }

  /**
   * What the rules find, in the order of the rules; the record itself stays as it is. Findings the
   * record already holds are neither looked at nor repeated.
   */
  public List<Finding> examine(CellRecord record) {
    return rules.stream().flatMap(rule -> rule.examine(record)).toList();
  }

  /** Every rule of the project between records. */
  public static List<RecordsRule> between() {
    return StandardRules.BETWEEN;
  }

  /** What the rules between records find of each two, in the order of the rules and records. */
  public static List<BetweenFinding> between(List<CellRecord> records) {
    List<BetweenFinding> findings = new ArrayList<>();
    for (RecordsRule rule : StandardRules.BETWEEN) {
      for (int i = 0; i < records.size(); i++) {
        CellRecord one = records.get(i);
        for (CellRecord other : records.subList(i + 1, records.size())) {
          rule.examine(one, other).forEach(findings::add);
        }
      }
    }
    return List.copyOf(findings);
  }
}
