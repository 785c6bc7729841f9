package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.List;
import java.util.stream.Stream;

/** The statements that say what the sheet says. */
final class Readings {
  private Readings() {}

  /** Without those a person rejected and those computed from others. */
  static Stream<Statement> of(CellRecord record) {
    return record.statements().stream()
        .filter(statement -> statement.standing() != Standing.REJECTED)
        .filter(statement -> statement.evidence().method() != Method.DERIVED);
  }

  /** Those of one quantity. */
  static List<Statement> of(CellRecord record, String quantity) {
    return of(record).filter(s -> s.quantity().equals(quantity)).toList();
  }
}
