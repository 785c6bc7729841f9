package commonsheet.check;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.List;
import java.util.stream.Stream;

/** A discharge curve that ends before the cut-off that its chart states. */
final class EndAboveCutoff extends NamedRule {
  /** Lines end a little early, in V. */
  private static final double EARLY = 0.1;

  EndAboveCutoff() {
    super("curve/ends-above-cutoff", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    return Trace.of(record).stream()
        .filter(EndAboveCutoff::endsEarly)
        .map(
            trace ->
                finding(
                    List.of(trace.id()),
                    "Curve "
                        + trace.name()
                        + " ends at "
                        + PlainNumber.of(trace.lastVoltage(), 4)
                        + " V, above its cut-off of "
                        + PlainNumber.of(cutoff(trace), 4)
                        + " V; look whether its line goes on, or the cut-off is another."));
  }

  private static boolean endsEarly(Trace trace) {
    Double cutoff = cutoff(trace);
    return cutoff != null && trace.lastVoltage() > cutoff + EARLY + trace.errorVoltage();
  }

  private static Double cutoff(Trace trace) {
    return trace.curve().conditions().get(Conditions.CUTOFF_VOLTAGE);
  }
}
