package commonsheet.workbench.desk;

import commonsheet.chart.text.ChartKind;
import commonsheet.export.Caution;
import commonsheet.export.MeasureHead;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.ConditionKind;
import commonsheet.record.Statistic;
import commonsheet.review.CellMember;
import java.util.Arrays;
import java.util.List;

/**
 * What a person can choose from.
 *
 * @param curveKinds what charts show
 * @param caution what everyone who uses the figures must know
 */
record CatalogueView(
    List<Choice> quantities,
    List<String> statistics,
    List<Choice> conditions,
    List<Member> cellMembers,
    List<Kind> curveKinds,
    String caution) {
  private static final List<String> FORMS = List.of("cylindrical", "prismatic", "pouch", "coin");

  private static final CatalogueView STANDARD = create();

  /**
   * A quantity or condition.
   *
   * @param unit UCUM code
   * @param shown how the unit is written; empty for none
   * @param range whether it is given as a range
   */
  record Choice(String name, String label, String unit, String shown, boolean range) {}

  /** A member of the cell; {@code choices} are all it can be, null where it is free text. */
  record Member(String member, String label, List<String> choices) {}

  /** A kind of chart. */
  record Kind(String kind, String label) {}

  static CatalogueView standard() {
    return STANDARD;
  }

  private static CatalogueView create() {
    return new CatalogueView(
        QuantityCatalogue.standard().all().stream()
            .map(
                kind ->
                    new Choice(
                        kind.name(), kind.label(), kind.unit(), shown(kind.unit()), kind.range()))
            .toList(),
        Arrays.stream(Statistic.values()).map(Statistic::label).toList(),
        ConditionKind.all().stream()
            .map(
                kind ->
                    new Choice(
                        kind.name(),
                        kind.label(),
                        kind.unit(),
                        kind.isRate() ? "C" : shown(kind.unit()),
                        false))
            .toList(),
        Arrays.stream(CellMember.values())
            .map(
                member ->
                    new Member(
                        member.member(), member.title(), member == CellMember.FORM ? FORMS : null))
            .toList(),
        Arrays.stream(ChartKind.values())
            .map(kind -> new Kind(kind.label(), PartViews.kind(kind.label())))
            .toList(),
        Caution.TEXT);
  }

  private static String shown(String ucum) {
    return ucum.equals("1") ? "" : MeasureHead.unit(ucum);
  }
}
