package commonsheet.compare;

import java.util.List;

/**
 * Cells at one condition, judged and ranked: first those that carry the current, by what they
 * deliver; then near misses, those whose rating is not known, and those that fail.
 *
 * @param condition the load on one cell, and to where
 * @param requirement what the machine asks; null where cells are only compared
 * @param rankedBy the measure by which cells of one verdict are ordered, best first
 * @param contenders every cell compared, in order of rank
 */
public record Shortlist(
    Condition condition, Requirement requirement, Measure rankedBy, List<Contender> contenders) {
  public Shortlist {
    contenders = List.copyOf(contenders);
  }
}
