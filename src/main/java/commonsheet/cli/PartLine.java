package commonsheet.cli;

import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Statement;

/** A statement or curve on one line with its place and the words as printed. */
final class PartLine {
  private PartLine() {}

  /**
   * Such as {@code s1 p. 3 capacity minimum 2.5 A.h (dischargeRate 0.2) — read, "Min. 2500mAh"}.
   */
  static String of(CellRecord record, String id) {
    Statement statement = record.statement(id);
    return statement == null
        ? CurveLine.of(record.curve(id)) + place(record.curve(id).evidence())
        : id + " " + StatementLine.of(statement) + words(statement.evidence());
  }

  private static String words(Evidence evidence) {
    if (evidence.text() != null) {
      boolean seenElsewhere = evidence.page() == null && evidence.note() != null;
      return ", \""
          + evidence.text().replaceAll("\\s+", " ")
          + "\""
          + (seenElsewhere ? ", " + evidence.note() : "");
    }
    return evidence.from().isEmpty() ? "" : ", from " + String.join(", ", evidence.from());
  }

  private static String place(Evidence evidence) {
    if (evidence.page() != null) {
      return ", chart on p. " + evidence.page();
    }
    return evidence.file() == null ? "" : ", " + evidence.file();
  }
}
