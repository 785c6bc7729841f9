package commonsheet.workbench.figure;

import commonsheet.record.Curve;
import java.util.List;

/** Whether the marks of an axis were read or placed by a person. */
final class Ticks {
  /** Places are kept to a hundredth of a point. */
  private static final double SAME = 0.006;

  private Ticks() {}

  /** Whether a mark stands where none of the axes that were read has one. */
  static boolean arePlaced(Curve.Axis axis, List<Curve.Axis> read) {
    return axis.ticks().stream().anyMatch(tick -> read.stream().noneMatch(r -> has(r, tick)));
  }

  /** How many marks stand where another axis has none. */
  static long placed(Curve.Axis axis, Curve.Axis read) {
    return axis.ticks().stream().filter(tick -> !has(read, tick)).count();
  }

  private static boolean has(Curve.Axis axis, Curve.Tick tick) {
    return axis.ticks().stream()
        .anyMatch(
            other ->
                Math.abs(other.at() - tick.at()) < SAME
                    && (tick.across() == null
                        ? other.across() == null
                        : other.across() != null
                            && Math.abs(other.across() - tick.across()) < SAME));
  }
}
