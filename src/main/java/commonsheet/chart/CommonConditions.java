package commonsheet.chart;

import commonsheet.chart.text.ChartKind;
import commonsheet.chart.text.ConditionReader;
import commonsheet.record.Conditions;
import java.util.LinkedHashMap;
import java.util.Map;

/** Which conditions around a chart hold for all its curves. */
final class CommonConditions {
  private CommonConditions() {}

  /**
   * Those of the half of the cycle the chart shows, then those said of neither; of the charge
   * before a discharge everything but its temperature.
   */
  static Conditions of(ChartKind kind, ConditionReader.Said said) {
    if (kind == ChartKind.CHARGE) {
      return said.charge().withMissingFrom(said.either());
    }
    Conditions discharge = said.discharge().withMissingFrom(said.either());
    Conditions charge = kind == ChartKind.CYCLE_LIFE ? said.charge() : cooled(said.charge());
    return discharge.withMissingFrom(charge);
  }

  private static Conditions cooled(Conditions charge) {
    Map<String, Double> rest = new LinkedHashMap<>(charge.values());
    rest.remove(Conditions.TEMPERATURE);
    return new Conditions(rest);
  }
}
