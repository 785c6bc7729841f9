package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Severity;
import java.util.stream.Stream;

/** One thing that can be wrong between two records. It is registered in {@link StandardRules}. */
public interface RecordsRule {
  /** Group and name; findings carry it and do not change it. */
  String id();

  /** How much its findings matter at most. */
  Severity severity();

  /** Where the rule comes from. */
  String source();

  /** Its findings about two records, in the order of the first. */
  Stream<BetweenFinding> examine(CellRecord one, CellRecord other);
}
