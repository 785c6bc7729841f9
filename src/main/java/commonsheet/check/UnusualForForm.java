package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A size, mass or capacity that cells of the record's form do not have. */
final class UnusualForForm extends NamedRule {
  UnusualForForm() {
    super("reach/form", Severity.WARNING, Forms.RANGE_SOURCE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    Map<String, Interval> ranges = Forms.ranges(record);
    return Readings.of(record)
        .filter(s -> s.value() != null && ranges.containsKey(s.quantity()))
        .filter(s -> !ranges.get(s.quantity()).holds(s.value()))
        .map(
            s ->
                finding(
                    List.of(s.id()),
                    "A "
                        + Wording.name(s)
                        + " of "
                        + Wording.valueAndPage(s)
                        + " is unusual for a "
                        + (record.cell().form() == null
                            ? "cell of this form"
                            : record.cell().form() + " cell")
                        + ", which has "
                        + Wording.withUnit(ranges.get(s.quantity()).text(4), s.unit())
                        + "; look at the unit, and whether it is a pack's."));
  }
}
