package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.List;
import java.util.stream.Stream;

/** Charging allowed where discharging is not: cells stand less heat and cold while charged. */
final class ChargeTemperatureBeyondDischarge extends NamedRule {
  ChargeTemperatureBeyondDischarge() {
    super("order/charge-and-discharge-temperature", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Statement> discharge = Readings.of(record, "dischargeTemperature");
    if (discharge.isEmpty()) {
      return Stream.empty();
    }
    Interval allowed = Known.of(discharge).range();
    return Readings.of(record, "chargeTemperature").stream()
        .filter(s -> s.low() != null && !inside(s, allowed))
        .map(
            s ->
                finding(
                    List.of(s.id(), discharge.get(0).id()),
                    "Charging is allowed at "
                        + Wording.valueAndPage(s)
                        + ", discharging only at "
                        + allowed.text(4)
                        + " °C; look whether the two were exchanged or a minus sign is missing."));
  }

  private static boolean inside(Statement charge, Interval discharge) {
    return charge.low() >= discharge.low() && charge.high() <= discharge.high();
  }
}
