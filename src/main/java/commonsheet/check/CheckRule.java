package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.List;
import java.util.stream.Stream;

/**
 * One thing that can be wrong with a record. A rule is a class or, where rules differ only in their
 * figures, an instance; it is registered in {@link StandardRules}.
 */
public interface CheckRule {
  /** The source of a rule that the trade follows without a text to cite. */
  String COMMON_PRACTICE = "common practice, no source";

  /** Group and name, such as {@code contradiction/mass}; findings carry it and do not change it. */
  String id();

  /** How much each of its findings matters. */
  Severity severity();

  /** Where the rule comes from: a standard, a publication, or {@link #COMMON_PRACTICE}. */
  String source();

  /** Its findings in a record, in the order of the statements; none where all is well. */
  Stream<Finding> examine(CellRecord record);

  /** A finding of this rule. */
  default Finding finding(List<String> about, String message) {
    return new Finding(id(), severity(), about.stream().distinct().toList(), message, source());
  }
}
