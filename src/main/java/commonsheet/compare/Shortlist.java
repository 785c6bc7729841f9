package commonsheet.compare;

import commonsheet.record.CellRecord;
import java.util.List;

/**
 * Cells at one condition, judged and ranked: first those that carry the current, by what they
 * deliver; then near misses, those whose rating is not known, and those that fail.
 *
 * @param condition the load on one cell, and to where
 * @param requirement what the machine asks; null where cells are compared under the condition's
 *     load alone
 * @param rankedBy the measure by which cells of one verdict are ordered, best first
 * @param contenders every cell compared, in order of rank
 * @param remarks for people, a sentence each: what cannot be compared between these cells, and what
 *     the comparison takes for granted
 */
public record Shortlist(
    Condition condition,
    Requirement requirement,
    Measure rankedBy,
    List<Contender> contenders,
    List<String> remarks) {
  public Shortlist {
    remarks = List.copyOf(remarks);
    contenders = List.copyOf(contenders);
  }

  /**
   * Compares, judges and ranks cells.
   *
   * @param records in any order; which of them are given changes nothing about each
   * @param condition with the load on one cell
   * @param requirement what the machine asks; null to judge cells by the peak of the load itself
   * @param rankedBy the measure by which cells of one verdict are ordered
   */
  public static Shortlist of(
      List<CellRecord> records, Condition condition, Requirement requirement, Measure rankedBy) {
    List<CellFigures> cells =
        records.parallelStream()
            .map(record -> DischargeFamily.of(record, condition).under(condition.load()))
            .toList();
    return ofFigures(cells, condition, requirement, rankedBy);
  }

  /**
   * The same from figures that are known already; all are at the condition.
   *
   * @throws IllegalArgumentException for figures at another condition
   */
  public static Shortlist ofFigures(
      List<CellFigures> cells, Condition condition, Requirement requirement, Measure rankedBy) {
    Judge judge = Judge.of(condition, requirement);
    for (CellFigures cell : cells) {
      if (!cell.condition().equals(condition)) {
        throw new IllegalArgumentException(
            "the figures of " + cell.record().id() + " are at another condition");
      }
    }
    List<Contender> contenders =
        cells.parallelStream()
            .map(cell -> contender(cell, judge.judge(cell), requirement))
            .sorted(new Ranking(rankedBy))
            .toList();
    return new Shortlist(
        condition, requirement, rankedBy, contenders, Remarks.on(condition, cells));
  }

  private static Contender contender(
      CellFigures cell, Judge.Judgement judgement, Requirement requirement) {
    return new Contender(
        cell,
        judgement.verdict(),
        judgement.margin(),
        judgement.reason(),
        requirement == null ? null : PackSums.of(cell, requirement));
  }
}
