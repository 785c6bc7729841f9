package commonsheet.check;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/** A curve of a family that gives more charge than another that should give at least as much. */
final class CurveCapacity extends NamedRule {
  /** A cell warms itself under load and may give a little more; a share. */
  private static final double SPREAD = 0.02;

  private final BiPredicate<Trace, Trace> shouldGiveLess;
  private final String because;

  private CurveCapacity(
      String id, String source, BiPredicate<Trace, Trace> shouldGiveLess, String because) {
    super(id, Severity.WARNING, source);
    this.shouldGiveLess = shouldGiveLess;
    this.because = because;
  }

  /** By load: Peukert exponents of lithium-ion cells lie at 1.0 and above. */
  static CurveCapacity byLoad() {
    return new CurveCapacity(
        "curve/capacity-and-load",
        "Peukert exponents of 1.02 to 1.06 fitted to open measurements (doi"
            + " 10.1149/2.0122001JES, doi 10.5281/zenodo.2580327)",
        (one, other) -> one.sharesTemperatureWith(other) && one.isHarderThan(other),
        "at the higher load a cell gives less");
  }

  /** By temperature, up to room temperature; above it cells differ. */
  static CurveCapacity byTemperature() {
    return new CurveCapacity(
        "curve/capacity-and-temperature",
        COMMON_PRACTICE,
        (one, other) ->
            one.sharesLoadWith(other)
                && one.temperature() != null
                && other.temperature() != null
                && one.temperature() < other.temperature()
                && one.temperature() < 20,
        "in the cold a cell gives less");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Trace> traces = Trace.of(record);
    return traces.stream()
        .flatMap(
            one ->
                traces.stream()
                    .filter(other -> one.sharesPlotWith(other) && one.sharesCutoffWith(other))
                    .filter(other -> shouldGiveLess.test(one, other) && givesMore(one, other))
                    .map(other -> finding(one, other)));
  }

  private static boolean givesMore(Trace one, Trace other) {
    double error = one.errorCharge() + other.errorCharge();
    return one.end() - error > other.end() * (1 + SPREAD);
  }

  private Finding finding(Trace one, Trace other) {
    return finding(
        List.of(one.id(), other.id()),
        "Curve "
            + one.name()
            + " ends at "
            + PlainNumber.of(one.end(), 4)
            + ", curve "
            + other.name()
            + " at "
            + PlainNumber.of(other.end(), 4)
            + ", though "
            + because
            + "; look whether their labels were exchanged.");
  }
}
