package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;
import java.util.stream.Stream;

/** A nominal and a charge voltage that no chemistry has together, whatever the sheet calls it. */
final class VoltagesOfNoChemistry extends NamedRule {
  VoltagesOfNoChemistry() {
    super("chemistry/voltages-together", Severity.WARNING, Chemistry.SOURCE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Statement> charges =
        Readings.of(record, "chargeVoltage").stream()
            .filter(s -> s.statistic() != Statistic.MINIMUM)
            .toList();
    return Readings.of(record, "nominalVoltage").stream()
        .filter(nominal -> !charges.isEmpty())
        .filter(nominal -> charges.stream().noneMatch(charge -> isPair(nominal, charge)))
        .map(nominal -> finding(nominal, charges.get(0)));
  }

  private static boolean isPair(Statement nominal, Statement charge) {
    Span low = Span.of(nominal);
    Span high = Span.of(charge);
    return Chemistry.ALL.stream()
        .anyMatch(
            c ->
                c.nominal().meets(new Interval(low.low(), low.high()))
                    && c.charge().meets(new Interval(high.low(), high.high())));
  }

  private Finding finding(Statement nominal, Statement charge) {
    return finding(
        List.of(nominal.id(), charge.id()),
        "No chemistry of lithium-ion cells has a nominal voltage of "
            + Wording.valueAndPage(nominal)
            + " and a charge voltage of "
            + Wording.valueAndPage(charge)
            + "; charge by neither until both have been compared with the sheet.");
  }
}
