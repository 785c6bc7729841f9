package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.List;
import java.util.stream.Stream;

/** A value that its own range or tolerance does not hold. */
final class ValueOutsideItsRange implements CheckRule {
  @Override
  public String id() {
    return "contradiction/value-outside-its-range";
  }

  @Override
  public Severity severity() {
    return Severity.WARNING;
  }

  @Override
  public String source() {
    return COMMON_PRACTICE;
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    return Readings.of(record).filter(ValueOutsideItsRange::isOutside).map(this::finding);
  }

  private static boolean isOutside(Statement statement) {
    Double value = statement.value();
    return value != null
        && statement.low() != null
        && statement.high() != null
        && (value < statement.low() || value > statement.high());
  }

  private Finding finding(Statement statement) {
    String range =
        Wording.withUnit(
            Wording.number(statement.low()) + " to " + Wording.number(statement.high()),
            statement.unit());
    String message =
        "The "
            + Wording.name(statement)
            + " of "
            + Wording.valueAndPage(statement)
            + " lies outside its own range of "
            + range
            + "; check the value and its tolerance on the sheet.";
    return new Finding(id(), severity(), List.of(statement.id()), message, source());
  }
}
