package commonsheet.layout;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which quantity a label's concepts name; what statistics and conditions each quantity may carry.
 */
record Terms(
    List<String> blockers,
    List<Term> terms,
    List<Procedure> procedures,
    Map<String, StatisticRule> statistics,
    Map<String, List<String>> conditions) {

  /**
   * The statistic a quantity always has ({@code fixed}), or those that the figure's own bound or
   * word may give it ({@code allowed}), the label's words, and the column; the latter two are the
   * same unless said otherwise.
   */
  record StatisticRule(
      @JsonProperty("fixed") String fixed,
      @JsonProperty("allowed") List<String> allowed,
      @JsonProperty("fromLabel") List<String> fromLabel,
      @JsonProperty("fromColumn") List<String> fromColumn) {
    StatisticRule {
      allowed = allowed == null ? List.of() : List.copyOf(allowed);
      fromLabel = fromLabel == null ? allowed : List.copyOf(fromLabel);
      fromColumn = fromColumn == null ? allowed : List.copyOf(fromColumn);
    }
  }

  /** Whether a label with these concepts is about something that is no rating of the cell. */
  boolean blocked(Set<String> concepts) {
    return blockers.stream().anyMatch(concepts::contains);
  }

  /** The terms that fit, the one that asks for most first. */
  List<Term> fitting(Set<String> concepts) {
    List<Term> named = LabelRule.named(concepts);
    if (!named.isEmpty()) {
      return named;
    }
    List<Term> fitting = new ArrayList<>(terms.stream().filter(t -> t.fits(concepts)).toList());
    fitting.sort(Comparator.comparingInt(Term::weight).reversed());
    return fitting;
  }

  Optional<Procedure> procedure(Set<String> concepts) {
    return procedures.stream().filter(p -> p.fits(concepts)).findFirst();
  }

  StatisticRule statistics(String quantity) {
    return statistics.getOrDefault(quantity, statistics.get("default"));
  }

  boolean mayCarry(String quantity, String condition) {
    return conditions.getOrDefault(quantity, conditions.get("default")).contains(condition);
  }
}
