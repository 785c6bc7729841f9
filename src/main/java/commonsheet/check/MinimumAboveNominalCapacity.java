package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A minimum capacity above the nominal, rated or typical one at the same conditions. */
final class MinimumAboveNominalCapacity implements CheckRule {
  private static final Set<Statistic> MIDDLE =
      Set.of(Statistic.NOMINAL, Statistic.RATED, Statistic.TYPICAL);

  /** Relative; makers round capacities to 10 mAh or so. */
  private static final double ROUNDING = 0.005;

  @Override
  public String id() {
    return "contradiction/minimum-above-nominal-capacity";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public String source() {
    return COMMON_PRACTICE;
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Statement> capacities =
        Readings.of(record).filter(s -> s.quantity().equals("capacity")).toList();
    return capacities.stream()
        .filter(minimum -> minimum.statistic() == Statistic.MINIMUM)
        .flatMap(
            minimum ->
                capacities.stream()
                    .filter(other -> isBelow(minimum, other))
                    .map(other -> finding(minimum, other)));
  }

  private static boolean isBelow(Statement minimum, Statement other) {
    return other.statistic() != null
        && MIDDLE.contains(other.statistic())
        && ConditionScope.ANY.sameCase(minimum.conditions(), other.conditions())
        && Span.of(minimum).low() > Span.of(other).high() * (1 + ROUNDING);
  }

  private Finding finding(Statement minimum, Statement other) {
    String message =
        "The "
            + Wording.name(minimum)
            + " of "
            + Wording.valueAndPage(minimum)
            + " is above the "
            + Wording.name(other)
            + " of "
            + Wording.valueAndPage(other)
            + "; check both on the sheet, they may be exchanged or misprinted.";
    return new Finding(id(), severity(), List.of(minimum.id(), other.id()), message, source());
  }
}
