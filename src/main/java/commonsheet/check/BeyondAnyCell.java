package commonsheet.check;

import commonsheet.quantity.PlainNumber;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.quantity.QuantityKind;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.List;
import java.util.stream.Stream;

/** A value that no lithium-ion cell has, by the catalogue of quantities. */
final class BeyondAnyCell extends NamedRule {
  private static final int DIGITS = 6;

  BeyondAnyCell() {
    super(
        "reach/any-cell",
        Severity.ERROR,
        "the ranges and sources of the catalogue of quantities (quantities.yaml)");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    return Readings.of(record).filter(BeyondAnyCell::isBeyond).map(this::finding);
  }

  private static boolean isBeyond(Statement statement) {
    QuantityKind kind = QuantityCatalogue.standard().get(statement.quantity());
    Interval possible = new Interval(kind.plausibleLow(), kind.plausibleHigh());
    if (statement.value() != null) {
      return !possible.holds(statement.value());
    }
    return !possible.holds(statement.low()) || !possible.holds(statement.high());
  }

  private Finding finding(Statement statement) {
    QuantityKind kind = QuantityCatalogue.standard().get(statement.quantity());
    return finding(
        List.of(statement.id()),
        "No lithium-ion cell has a "
            + Wording.name(statement)
            + " of "
            + Wording.valueAndPage(statement)
            + ": it lies at "
            + Wording.withUnit(
                PlainNumber.of(kind.plausibleLow(), DIGITS)
                    + " to "
                    + PlainNumber.of(kind.plausibleHigh(), DIGITS),
                kind.unit())
            + "; look at the unit and the decimal sign.");
  }
}
