package commonsheet.compare;

import commonsheet.record.CellRecord;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which of the printed statements of one quantity is trusted most. */
final class StatedChoice {
  private StatedChoice() {}

  /** What the sheet itself states of a quantity as a value; nothing that a person rejected. */
  static List<Statement> printed(CellRecord record, String quantity) {
    List<Statement> printed = new ArrayList<>();
    for (Statement statement : record.statements()) {
      if (statement.quantity().equals(quantity)
          && statement.value() != null
          && statement.standing() != Standing.REJECTED
          && statement.evidence().method() != Method.DERIVED) {
        printed.add(statement);
      }
    }
    return printed;
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
