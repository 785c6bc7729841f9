package commonsheet.check;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.List;
import java.util.stream.Stream;

/** A discharge in whose course the voltage rises. */
final class VoltageRises extends NamedRule {
  /**
   * In the cold and under load a cell warms itself and recovers at first; a share of the charge.
   */
  private static final double RECOVERED = 0.4;

  /** Ripples of a traced line, in V, besides its uncertainty. */
  private static final double RIPPLE = 0.03;

  VoltageRises() {
    super("curve/voltage-rises", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    return Trace.of(record).stream().flatMap(trace -> rise(trace).stream());
  }

  private List<Finding> rise(Trace trace) {
    double from = trace.start() + RECOVERED * (trace.end() - trace.start());
    double least = Double.POSITIVE_INFINITY;
    for (List<Double> point : trace.curve().points()) {
      if (point.get(0) >= from) {
        least = Math.min(least, point.get(1));
        if (point.get(1) > least + RIPPLE + 2 * trace.errorVoltage()) {
          return List.of(
              finding(
                  List.of(trace.id()),
                  "The voltage of curve "
                      + trace.name()
                      + " rises near "
                      + PlainNumber.of(point.get(0), 3)
                      + ", where a discharge only falls; compare it with the chart there."));
        }
      }
    }
    return List.of();
  }
}
