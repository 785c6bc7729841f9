package commonsheet.compare;

import commonsheet.record.CellRecord;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Which of the printed statements of one quantity is trusted most. */
final class StatedChoice {
  private StatedChoice() {}

  /** What the sheet itself states of a quantity; nothing that a person rejected. */
  static Stream<Statement> printed(CellRecord record, String quantity) {
    return record.statements().stream()
        .filter(s -> s.quantity().equals(quantity))
        .filter(s -> s.standing() != Standing.REJECTED)
        .filter(s -> s.evidence().method() != Method.DERIVED);
  }

  /** The first of those that a person has settled, else of those without doubt, else of all. */
  static Statement surest(List<Statement> stated) {
    return stated.stream().min(Comparator.comparingInt(s -> rank(s.standing()))).orElseThrow();
  }

  /** Lower is surer. */
  static int rank(Standing standing) {
    return switch (standing) {
      case CONFIRMED, CORRECTED -> 0;
      case READ -> 1;
      case UNSURE -> 2;
      case REJECTED -> 3;
    };
  }
}
