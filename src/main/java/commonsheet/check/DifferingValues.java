package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A sheet that gives one quantity, with the same statistic and in the same case, with values that
 * cannot both hold. One finding for all statements that contradict one another.
 *
 * @param tolerance relative difference up to which two values count as the same
 * @param advice what to do, the end of the sentence
 */
record DifferingValues(
    String id,
    Set<String> quantities,
    ConditionScope scope,
    double tolerance,
    Severity severity,
    String advice)
    implements CheckRule {
  /** Rounding in a sheet's own conversions, such as from inches or from a multiple of C. */
  private static final double ROUNDING = 0.005;

  static DifferingValues differing(String id, String... quantities) {
    return new DifferingValues(
        id,
        Set.of(quantities),
        ConditionScope.ANY,
        ROUNDING,
        Severity.WARNING,
        "compare both places and reject the one that does not hold for this cell");
  }

  DifferingValues beyond(double other) {
    return new DifferingValues(id, quantities, scope, other, severity, advice);
  }

  DifferingValues onlyAtTheSame(ConditionScope other) {
    return new DifferingValues(id, quantities, other, tolerance, severity, advice);
  }

  DifferingValues severity(Severity other) {
    return new DifferingValues(id, quantities, scope, tolerance, other, advice);
  }

  DifferingValues advice(String other) {
    return new DifferingValues(id, quantities, scope, tolerance, severity, other);
  }

  @Override
  public String source() {
    return COMMON_PRACTICE;
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Statement> readings =
        Readings.of(record).filter(s -> quantities.contains(s.quantity())).toList();
    List<Statement> open = new ArrayList<>(readings);
    List<Finding> findings = new ArrayList<>();
    while (!open.isEmpty()) {
      List<Statement> group = takeContradicting(open);
      if (group.size() > 1) {
        group.sort(Comparator.comparingInt(readings::indexOf));
        findings.add(finding(group));
      }
    }
    return findings.stream();
  }

  /**
   * Takes the first statement, those that contradict it, those that contradict these, and so on.
   */
  private List<Statement> takeContradicting(List<Statement> open) {
    List<Statement> group = new ArrayList<>(List.of(open.remove(0)));
    for (int i = 0; i < group.size(); i++) {
      Statement member = group.get(i);
      List<Statement> contradicting = open.stream().filter(s -> contradict(member, s)).toList();
      open.removeAll(contradicting);
      group.addAll(contradicting);
    }
    return group;
  }

  private boolean contradict(Statement one, Statement other) {
    return one.quantity().equals(other.quantity())
        && one.statistic() == other.statistic()
        && scope.sameCase(one.conditions(), other.conditions())
        && Span.of(one).contradicts(Span.of(other), tolerance);
  }

  private Finding finding(List<Statement> group) {
    String message =
        "The sheet gives "
            + Wording.valuesAndPages(group)
            + " as "
            + Wording.name(group.get(0))
            + "; "
            + advice
            + ".";
    return new Finding(id, severity, group.stream().map(Statement::id).toList(), message, source());
  }
}
