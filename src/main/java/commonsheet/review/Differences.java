package commonsheet.review;

import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiPredicate;

/**
 * How two records differ, statement by statement: two revisions of a sheet, two readings, or two
 * cells. What a person rejected in a record counts as absent from it.
 */
public final class Differences {
  /**
   * A statement of either record, or of both.
   *
   * @param first null where only the second record has it
   * @param second null where only the first record has it
   */
  public record Pair(Statement first, Statement second) {
    /** Whether both give the same value and bounds under the same conditions. */
    public boolean isSame() {
      return first != null
          && second != null
          && isSameValue(first, second)
          && first.statistic() == second.statistic()
          && first.conditions().equals(second.conditions());
    }
  }

  /**
   * A member of the cell that differs.
   *
   * @param first null where the first record does not have it, as with {@code second}
   */
  public record MemberPair(CellMember member, String first, String second) {}

  private Differences() {}

  /** The members of the cell that differ. */
  public static List<MemberPair> ofCell(CellRecord first, CellRecord second) {
    List<MemberPair> pairs = new ArrayList<>();
    for (CellMember member : CellMember.values()) {
      String one = member.of(first.cell());
      String other = member.of(second.cell());
      if (!Objects.equals(one, other)) {
        pairs.add(new MemberPair(member, one, other));
      }
    }
    return pairs;
  }

  /**
   * Every statement of both records, paired: first those alike in all, then those of one quantity
   * and statistic under the same conditions, then those of one quantity and statistic, then those
   * of one quantity. In the order of the first record; what only the second has comes last.
   */
  public static List<Pair> ofStatements(CellRecord first, CellRecord second) {
    List<Statement> left = standing(first);
    List<Statement> open = standing(second);
    Statement[] partners = new Statement[left.size()];
    BiPredicate<Statement, Statement> quantity = (a, b) -> a.quantity().equals(b.quantity());
    BiPredicate<Statement, Statement> statistic =
        quantity.and((a, b) -> a.statistic() == b.statistic());
    BiPredicate<Statement, Statement> conditions =
        statistic.and((a, b) -> a.conditions().equals(b.conditions()));
    for (BiPredicate<Statement, Statement> alike :
        List.of(
            conditions.and(Differences::isSameValue),
            conditions,
            statistic.and((a, b) -> a.conditions().agreeWith(b.conditions())),
            statistic,
            quantity)) {
      for (int i = 0; i < partners.length; i++) {
        if (partners[i] == null) {
          Statement one = left.get(i);
          Optional<Statement> other = open.stream().filter(s -> alike.test(one, s)).findFirst();
          partners[i] = other.orElse(null);
          other.ifPresent(open::remove);
        }
      }
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < partners.length; i++) {
      pairs.add(new Pair(left.get(i), partners[i]));
    }
    open.forEach(only -> pairs.add(new Pair(null, only)));
    return pairs;
  }

  /**
   * The curves that one of two records has and the other has not, by kind, label and conditions.
   */
  public static List<Curve> onlyIn(CellRecord first, CellRecord second) {
    return first.curves().stream()
        .filter(c -> c.standing() != Standing.REJECTED)
        .filter(
            c ->
                second.curves().stream()
                    .noneMatch(
                        o ->
                            o.standing() != Standing.REJECTED
                                && o.kind().equals(c.kind())
                                && Objects.equals(o.label(), c.label())
                                && o.conditions().equals(c.conditions())))
        .toList();
  }

  private static boolean isSameValue(Statement one, Statement other) {
    return Objects.equals(one.value(), other.value())
        && Objects.equals(one.low(), other.low())
        && Objects.equals(one.high(), other.high());
  }

  private static List<Statement> standing(CellRecord record) {
    return new ArrayList<>(
        record.statements().stream().filter(s -> s.standing() != Standing.REJECTED).toList());
  }
}
