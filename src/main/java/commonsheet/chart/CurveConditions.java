package commonsheet.chart;

import commonsheet.record.Conditions;
import java.util.LinkedHashMap;
import java.util.Map;

/** The conditions of one curve: its label's, and the chart's where the label is silent. */
final class CurveConditions {
  private static final String[][] SAME_LOAD = {
    {Conditions.DISCHARGE_RATE, Conditions.DISCHARGE_CURRENT},
    {Conditions.CHARGE_RATE, Conditions.CHARGE_CURRENT}
  };

  private CurveConditions() {}

  /** A label with a rate puts aside the chart's current as well as its rate. */
  static Conditions of(Conditions own, Conditions common) {
    Map<String, Double> shared = new LinkedHashMap<>(common.values());
    for (String[] load : SAME_LOAD) {
      if (own.get(load[0]) != null || own.get(load[1]) != null) {
        shared.remove(load[0]);
        shared.remove(load[1]);
      }
    }
    return own.withMissingFrom(new Conditions(shared));
  }

  /**
   * With the currents of rates that stand alone.
   *
   * @param capacity A.h of one C, or null
   * @return the same object where nothing is added
   */
  static Conditions withCurrent(Conditions conditions, Double capacity) {
    Conditions all = conditions;
    for (String[] load : SAME_LOAD) {
      Double rate = conditions.get(load[0]);
      if (capacity != null && rate != null && conditions.get(load[1]) == null) {
        all = all.with(load[1], rate * capacity);
      }
    }
    return all;
  }
}
