package commonsheet.layout;

import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * "Capacity by standard discharge": the rate is the one the sheet gives for its standard discharge.
 * Taken only where the value states no rate or current of its own.
 */
final class StandardDischarge {
  private final Vocabulary vocabulary;
  private final Set<Candidate> awaiting = new HashSet<>();

  StandardDischarge(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /**
   * Notes which of an entry's candidates wait for the rate of the standard discharge; returns them
   * all.
   */
  List<Candidate> awaiting(Entry entry, List<Candidate> candidates) {
    boolean says = saysStandardDischarge(entry.conditions().text());
    for (Entry.Value value : entry.values()) {
      says |=
          saysStandardDischarge(value.conditions().text())
              || saysStandardDischarge(value.text().text());
    }
    if (says) {
      candidates.stream()
          .filter(c -> c.quantity().equals("capacity"))
          .filter(c -> c.conditions().get(Conditions.DISCHARGE_RATE) == null)
          .filter(c -> c.conditions().get(Conditions.DISCHARGE_CURRENT) == null)
          .forEach(awaiting::add);
    }
    return candidates;
  }

  private boolean saysStandardDischarge(String text) {
    List<Hit> hits = vocabulary.hits(text);
    for (int i = 0; i + 1 < hits.size(); i++) {
      if (hits.get(i).means("standard")
          && hits.get(i + 1).means("discharge")
          && hits.get(i + 1).start() - hits.get(i).end() <= 1) {
        return true;
      }
    }
    return false;
  }

  List<Candidate> resolve(List<Candidate> all) {
    Optional<Double> rate =
        all.stream()
            .filter(c -> c.quantity().equals("standardDischargeCurrent") && !c.mentioned())
            .map(c -> c.conditions().get(Conditions.DISCHARGE_RATE))
            .filter(r -> r != null)
            .findFirst();
    List<Candidate> resolved = new ArrayList<>();
    for (Candidate c : all) {
      boolean waits = rate.isPresent() && awaiting.contains(c);
      resolved.add(waits ? c.with(c.conditions().with(Conditions.DISCHARGE_RATE, rate.get())) : c);
    }
    return resolved;
  }
}
