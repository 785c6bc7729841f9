package commonsheet.chart.naming;

import commonsheet.chart.plot.Trace;
import commonsheet.chart.text.ChartKind;
import commonsheet.record.Conditions;

/**
 * The order curves of a family keep: the higher current lies lower in a discharge and higher in a
 * charge, the warmer cell higher in a discharge. Rule of the trade: common practice, no source.
 */
final class CurveOrder {
  private static final String[] LOADS = {
    Conditions.DISCHARGE_RATE,
    Conditions.DISCHARGE_CURRENT,
    Conditions.CHARGE_RATE,
    Conditions.CHARGE_CURRENT
  };

  private final ChartKind kind;

  CurveOrder(ChartKind kind) {
    this.kind = kind;
  }

  /**
   * Whether the first label's curve should run above the second's: 1 above, -1 below, 0 where
   * nothing is known.
   */
  int expected(LabelMeaning one, LabelMeaning other) {
    if (kind != ChartKind.DISCHARGE && kind != ChartKind.CHARGE) {
      return 0;
    }
    int sign = kind == ChartKind.DISCHARGE ? 1 : -1;
    for (String load : LOADS) {
      Double first = one.conditions().get(load);
      Double second = other.conditions().get(load);
      if (first != null && second != null && !first.equals(second)) {
        return sign * Double.compare(second, first);
      }
    }
    Double warm = one.conditions().get(Conditions.TEMPERATURE);
    Double second = other.conditions().get(Conditions.TEMPERATURE);
    return warm == null || second == null ? 0 : sign * Double.compare(warm, second);
  }

  /**
   * Whether two curves with these labels keep the order.
   *
   * @param slack curves closer than this, in points, contradict nothing
   * @return 1 if they do, -1 if they contradict it, 0 where nothing can be said
   */
  int kept(Trace one, LabelMeaning first, Trace other, LabelMeaning second, double slack) {
    double above = CurveGeometry.above(one, other);
    if (Math.abs(above) < slack) {
      return 0;
    }
    return expected(first, second) * (above > 0 ? 1 : -1);
  }
}
