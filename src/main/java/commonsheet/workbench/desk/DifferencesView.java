package commonsheet.workbench.desk;

import com.fasterxml.jackson.annotation.JsonInclude;
import commonsheet.export.AmountText;
import commonsheet.export.ConditionText;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Curve;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.review.CellMember;
import commonsheet.review.Differences;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Two records side by side.
 *
 * @param rows the members of the cell, then the statements, then the curves
 */
record DifferencesView(Side first, Side second, List<Row> rows) {
  /** One of the two. */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  record Side(String file, String id, String maker, String model, String state, String source) {
    static Side of(String file, CellRecord record) {
      return new Side(
          file,
          record.id(),
          record.cell().maker(),
          record.cell().model(),
          record.review().state(),
          record.source().named()
              + (record.source().revision() == null
                  ? ""
                  : ", revision " + record.source().revision()));
    }
  }

  /**
   * What one or both say.
   *
   * @param conditions of the first, or of the second where only that has it
   * @param first what the first says, with its conditions where they differ; null where it says
   *     nothing, like {@code second}
   */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  record Row(
      String what,
      String conditions,
      String first,
      String second,
      boolean same,
      String firstId,
      String secondId) {}

  static DifferencesView of(
      String firstFile, CellRecord first, String secondFile, CellRecord second) {
    List<Row> rows = new ArrayList<>();
    for (CellMember member : CellMember.values()) {
      String one = member.of(first.cell());
      String other = member.of(second.cell());
      if (one != null || other != null) {
        rows.add(
            new Row(
                member.title(),
                "",
                one,
                other,
                Objects.equals(one, other),
                one == null ? null : member.label(),
                other == null ? null : member.label()));
      }
    }
    Differences.ofStatements(first, second).forEach(pair -> rows.add(row(pair)));
    rows.addAll(curves(first, second));
    return new DifferencesView(Side.of(firstFile, first), Side.of(secondFile, second), rows);
  }

  private static Row row(Differences.Pair pair) {
    Statement one = pair.first();
    Statement other = pair.second();
    Statement named = one == null ? other : one;
    boolean alike = one == null || other == null || one.conditions().equals(other.conditions());
    boolean sameKind = one == null || other == null || one.statistic() == other.statistic();
    return new Row(
        QuantityCatalogue.standard().get(named.quantity()).label()
            + (sameKind && named.statistic() != null ? ", " + named.statistic().label() : ""),
        alike ? ConditionText.of(named.conditions()) : "",
        text(one, !alike, !sameKind),
        text(other, !alike, !sameKind),
        pair.isSame(),
        one == null ? null : one.id(),
        other == null ? null : other.id());
  }

  private static String text(Statement statement, boolean conditions, boolean statistic) {
    if (statement == null) {
      return null;
    }
    return (statistic && statement.statistic() != null ? statement.statistic().label() + " " : "")
        + AmountText.shown(statement.value(), statement.low(), statement.high(), statement.unit())
        + (conditions && !statement.conditions().isEmpty()
            ? " (" + ConditionText.of(statement.conditions()) + ")"
            : "")
        + (statement.standing() == Standing.UNSURE ? " ?" : "");
  }

  /** Curves are the same where kind, label, conditions and points are. */
  private static List<Row> curves(CellRecord first, CellRecord second) {
    List<Row> rows = new ArrayList<>();
    List<Curve> open = new ArrayList<>(standing(second));
    for (Curve one : standing(first)) {
      Curve other = open.stream().filter(c -> isAlike(one, c)).findFirst().orElse(null);
      open.remove(other);
      boolean same = other != null && one.points().equals(other.points());
      rows.add(row(one, text(one), other == null ? null : text(other), same, one, other));
    }
    open.forEach(only -> rows.add(row(only, null, text(only), false, null, only)));
    return rows;
  }

  private static Row row(
      Curve named, String first, String second, boolean same, Curve one, Curve other) {
    return new Row(
        PartViews.kind(named.kind()) + (named.label() == null ? "" : " \"" + named.label() + "\""),
        ConditionText.of(named.conditions()),
        first,
        second,
        same,
        one == null ? null : one.id(),
        other == null ? null : other.id());
  }

  private static boolean isAlike(Curve one, Curve other) {
    return one.kind().equals(other.kind())
        && Objects.equals(one.label(), other.label())
        && one.conditions().equals(other.conditions());
  }

  private static List<Curve> standing(CellRecord record) {
    return record.curves().stream().filter(c -> c.standing() != Standing.REJECTED).toList();
  }

  private static String text(Curve curve) {
    return PartViews.ranges(curve) + (curve.standing() == Standing.UNSURE ? " ?" : "");
  }
}
