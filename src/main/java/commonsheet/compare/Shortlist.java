package commonsheet.compare;

import java.util.List;

/**
 * Cells at one condition, judged and ranked: first those that carry the current, by what they
 * deliver; then near misses, those whose rating is not known, and those that fail.
 *
 * @param condition the load on one cell, and to where
 * @param requirement what the machine asks; null where cells are
 *     compared under the condition's load alone
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
}
