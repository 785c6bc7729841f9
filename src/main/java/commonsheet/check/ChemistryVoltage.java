package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** A voltage that the chemistry which the sheet names does not have. */
final class ChemistryVoltage extends NamedRule {
  private final String quantity;
  private final Function<Chemistry, Interval> window;

  ChemistryVoltage(
      String id, Severity severity, String quantity, Function<Chemistry, Interval> window) {
    super(id, severity, Chemistry.SOURCE);
    this.quantity = quantity;
    this.window = window;
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    return Chemistry.of(record).stream()
        .flatMap(
            chemistry ->
                Readings.of(record, quantity).stream()
                    .filter(
                        s ->
                            s.statistic() != Statistic.MINIMUM || !quantity.equals("chargeVoltage"))
                    .filter(s -> !fits(s, window.apply(chemistry)))
                    .map(s -> finding(s, chemistry)));
  }

  private static boolean fits(Statement statement, Interval window) {
    Span span = Span.of(statement);
    return window.meets(new Interval(span.low(), span.high()));
  }

  private Finding finding(Statement statement, Chemistry chemistry) {
    return finding(
        List.of(statement.id()),
        "Cells of "
            + chemistry.name()
            + ", as the sheet names it, have a "
            + Wording.name(statement)
                .replaceFirst("^(nominal|minimum|maximum|typical) (?!voltage)", "")
            + " of "
            + Wording.withUnit(window.apply(chemistry).text(3), "V")
            + ", not "
            + Wording.valueAndPage(statement)
            + "; look at the voltage and at the chemistry, and whether it is a pack's.");
  }
}
