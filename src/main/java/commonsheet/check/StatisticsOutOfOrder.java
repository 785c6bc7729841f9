package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A minimum above a typical or maximum value, or a typical above a maximum one, of one quantity in
 * one case: columns that were exchanged. Of capacity and energy also a rated or nominal value above
 * the typical one; a minimum above these has a rule of its own.
 */
final class StatisticsOutOfOrder extends NamedRule {
  private static final double ROUNDING = 0.005;
  private static final Map<Statistic, Integer> RANK =
      Map.of(Statistic.MINIMUM, 0, Statistic.TYPICAL, 2, Statistic.MAXIMUM, 3);
  private static final Set<String> RATED = Set.of("capacity", "energy");

  StatisticsOutOfOrder() {
    super("order/statistics", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Statement> all =
        Readings.of(record).filter(s -> s.value() != null && s.statistic() != null).toList();
    return all.stream()
        .flatMap(lower -> all.stream().filter(u -> isAbove(lower, u)).map(u -> finding(lower, u)));
  }

  private static boolean isAbove(Statement lower, Statement upper) {
    Integer below = rank(lower);
    Integer above = rank(upper);
    return lower.quantity().equals(upper.quantity())
        && below != null
        && above != null
        && below < above
        && !hasARuleOfItsOwn(lower, upper)
        && ConditionScope.DISCHARGE.sameCase(lower.conditions(), upper.conditions())
        && Span.of(lower).low() > Span.of(upper).high() * (1 + ROUNDING);
  }

  /** {@link MinimumAboveNominalCapacity}. */
  private static boolean hasARuleOfItsOwn(Statement lower, Statement upper) {
    return lower.quantity().equals("capacity")
        && lower.statistic() == Statistic.MINIMUM
        && upper.statistic() != Statistic.MAXIMUM;
  }

  private static Integer rank(Statement statement) {
    boolean middle =
        statement.statistic() == Statistic.RATED || statement.statistic() == Statistic.NOMINAL;
    return middle && RATED.contains(statement.quantity())
        ? Integer.valueOf(1)
        : RANK.get(statement.statistic());
  }

  private Finding finding(Statement lower, Statement upper) {
    return finding(
        List.of(lower.id(), upper.id()),
        "The "
            + Wording.name(lower)
            + " of "
            + Wording.valueAndPage(lower)
            + " is above the "
            + Wording.name(upper)
            + " of "
            + Wording.valueAndPage(upper)
            + "; look which column each stands in.");
  }
}
