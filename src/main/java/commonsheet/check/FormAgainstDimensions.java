package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.List;
import java.util.stream.Stream;

/** A cylindrical cell with a thickness, or a flat one with a diameter. */
final class FormAgainstDimensions extends NamedRule {
  FormAgainstDimensions() {
    super("size/form", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    String form = record.cell().form();
    if (form == null) {
      return Stream.empty();
    }
    List<String> foreign =
        switch (form) {
          case "cylindrical" -> List.of("width", "thickness");
          case "pouch", "prismatic" -> List.of("diameter");
          default -> List.of();
        };
    return Readings.of(record)
        .filter(s -> foreign.contains(s.quantity()))
        .map(
            s ->
                finding(
                    List.of(s.id()),
                    "The cell is "
                        + form
                        + ", and the sheet gives a "
                        + s.quantity()
                        + " of "
                        + Wording.valueAndPage(s)
                        + "; look whether it is of the cell, and which form the cell has."));
  }
}
