package commonsheet.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Conditions;
import commonsheet.record.Records;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two revisions of one sheet side by side. */
class DifferencesTest {
  private static final Conditions SLOW = Conditions.NONE.with(Conditions.DISCHARGE_RATE, 0.2);

  private static Statement capacity(String id, Statistic statistic, double value) {
    return Records.statement(id, "capacity", statistic, value, "A.h", SLOW, 3);
  }

  private static Statement mass(String id, double value) {
    return Records.statement(id, "mass", null, value, "g", Conditions.NONE, 3);
  }

  @Test
  void pairsWhatSaysTheSameWhateverItsId() {
    List<Differences.Pair> pairs =
        Differences.ofStatements(
            Records.with(capacity("s1", Statistic.MINIMUM, 2.5), mass("s2", 45)),
            Records.with(
                mass("s1", 46),
                capacity("s2", Statistic.TYPICAL, 2.6),
                capacity("s3", Statistic.MINIMUM, 2.5)));
    assertEquals(3, pairs.size());
    assertTrue(pairs.get(0).isSame());
    assertEquals("s3", pairs.get(0).second().id());
    assertEquals(46, pairs.get(1).second().value());
    assertEquals(null, pairs.get(2).first());
    assertEquals(Statistic.TYPICAL, pairs.get(2).second().statistic());
  }

  @Test
  void leavesOutWhatAPersonRejected() {
    List<Differences.Pair> pairs =
        Differences.ofStatements(
            Records.with(mass("s1", 45)),
            Records.with(Records.standing(mass("s1", 54), Standing.REJECTED), mass("s2", 45)));
    assertEquals(1, pairs.size());
    assertTrue(pairs.get(0).isSame());
  }
}
