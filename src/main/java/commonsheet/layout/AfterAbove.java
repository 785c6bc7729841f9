package commonsheet.layout;

import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.List;

/**
 * The conditions of what is recovered after storage are those of the storage, stated for what is
 * retained.
 */
final class AfterAbove {
  private AfterAbove() {}

  /**
   * Gives a recovery without time and temperature those of the retention read before it on this or
   * the last page.
   */
  static List<Candidate> inherit(List<Candidate> candidates) {
    List<Candidate> all = new ArrayList<>();
    Candidate retained = null;
    for (Candidate c : candidates) {
      if (c.quantity().equals("capacityRetention") && !c.mentioned()) {
        retained = c;
      }
      boolean lacks =
          c.quantity().equals("capacityRecovery")
              && c.conditions().get(Conditions.DURATION) == null
              && c.conditions().get(Conditions.TEMPERATURE) == null;
      boolean near = retained != null && c.page() - retained.page() <= 1;
      all.add(lacks && near ? c.with(c.conditions().withMissingFrom(retained.conditions())) : c);
    }
    return all;
  }
}
