package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Severity;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Two records of one cell that were read from the very same file. */
final class SameSheetTwice implements RecordsRule {
  @Override
  public String id() {
    return "between/same-sheet";
  }

  @Override
  public Severity severity() {
    return Severity.NOTE;
  }

  @Override
  public String source() {
    return CheckRule.COMMON_PRACTICE;
  }

  @Override
  public Stream<BetweenFinding> examine(CellRecord one, CellRecord other) {
    if (!one.source().isSameFileAs(other.source())
        || !Objects.equals(one.cell().model(), other.cell().model())) {
      return Stream.empty();
    }
    return Stream.of(
        new BetweenFinding(
            id(),
            severity(),
            List.of(one.id(), other.id()),
            List.of(),
            "The records "
                + one.id()
                + " and "
                + other.id()
                + " are of the same cell and the same file; keep one of them.",
            source()));
  }
}
