package commonsheet.layout;

import java.util.List;
import java.util.Set;

/**
 * One way a label can name a quantity.
 *
 * @param weak whether a label that says no more than this leaves room for another quantity
 */
record Term(String quantity, List<String> all, List<String> any, List<String> none, boolean weak) {
  Term {
    all = all == null ? List.of() : List.copyOf(all);
    any = any == null ? List.of() : List.copyOf(any);
    none = none == null ? List.of() : List.copyOf(none);
  }

  boolean fits(Set<String> concepts) {
    return concepts.containsAll(all)
        && (any.isEmpty() || any.stream().anyMatch(concepts::contains))
        && none.stream().noneMatch(concepts::contains);
  }

  /** How much the term asks for: the more, the better it knows the label. */
  int weight() {
    return 2 * all.size() + (any.isEmpty() ? 0 : 1);
  }
}
