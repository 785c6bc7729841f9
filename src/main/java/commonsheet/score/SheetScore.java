package commonsheet.score;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How one record agrees with one truth.
 *
 * @param sheet name of the truth
 * @param outcomes one per truth row or left-over statement: those of the truth in its order, then
 *     the spurious ones in the record's order
 * @param fields one per cell member that the truth lists
 */
public record SheetScore(String sheet, List<Outcome> outcomes, List<FieldOutcome> fields) {
  public SheetScore {
    outcomes = List.copyOf(outcomes);
    fields = List.copyOf(fields);
  }

  /** The counts of this sheet. */
  public Tally tally() {
    return Tally.of(outcomes);
  }

  /** The counts of this sheet by quantity, in alphabetical order. */
  public Map<String, Tally> tallyByQuantity() {
    return tallyByQuantity(outcomes);
  }

  static Map<String, Tally> tallyByQuantity(List<Outcome> outcomes) {
    return outcomes.stream()
        .collect(
            Collectors.groupingBy(
                Outcome::quantity,
                TreeMap::new,
                Collectors.collectingAndThen(Collectors.toList(), Tally::of)));
  }
}
