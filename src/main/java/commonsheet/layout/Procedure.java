package commonsheet.layout;

import java.util.List;
import java.util.Set;

/**
 * A row about a whole procedure, such as a standard charge: which quantity its current, its voltage
 * and its end-of-charge current are. A null member means that such a figure is no statement.
 */
record Procedure(
    List<String> all, List<String> none, String current, String voltage, String taper) {
  Procedure {
    all = all == null ? List.of() : List.copyOf(all);
    none = none == null ? List.of() : List.copyOf(none);
  }

  boolean fits(Set<String> concepts) {
    return concepts.containsAll(all) && none.stream().noneMatch(concepts::contains);
  }
}
