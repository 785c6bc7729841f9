package commonsheet.check;

import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.quantity.FigureParser;
import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/** A figure printed in a unit that does not measure its quantity, such as a current in mAh. */
final class PrintedUnit extends NamedRule {
  private static final Set<Dimension> TOLD = Set.of(Dimension.CHARGE, Dimension.CURRENT);

  PrintedUnit() {
    super("slip/printed-unit", Severity.NOTE, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    return Readings.of(record)
        .filter(s -> s.value() != null && s.evidence().text() != null)
        .filter(PrintedUnit::isForeign)
        .map(
            s ->
                finding(
                    List.of(s.id()),
                    "The "
                        + Wording.name(s)
                        + " of "
                        + Wording.valueAndPage(s)
                        + " stands on the sheet in a unit of another quantity (\""
                        + s.evidence().text().strip()
                        + "\"); it was taken for what the label says."));
  }

  /** Charge for current or current for charge, with the very number, and nothing else there. */
  private static boolean isForeign(Statement statement) {
    Dimension own = QuantityCatalogue.standard().get(statement.quantity()).dimension();
    if (!TOLD.contains(own)) {
      return false;
    }
    List<Figure> figures =
        new FigureParser(NumberStyle.DECIMAL_POINT).find(statement.evidence().text());
    List<Dimension> units =
        figures.stream()
            .filter(f -> f.value() != null && f.unit() != null)
            .map(f -> f.unit().dimension())
            .filter(TOLD::contains)
            .distinct()
            .toList();
    return units.size() == 1 && !Objects.equals(units.get(0), own);
  }
}
