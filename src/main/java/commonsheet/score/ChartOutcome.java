package commonsheet.score;

import java.util.List;

/**
 * What became of one chart of the truth.
 *
 * @param found whether the record has curves of this chart
 * @param curves one per curve of the truth, in its order, then the spurious ones
 */
public record ChartOutcome(ChartTruth expected, boolean found, List<CurveOutcome> curves) {
  public ChartOutcome {
    curves = List.copyOf(curves);
  }

  /** Whether each curve that was read shows the right quantities in the right units. */
  public boolean axesRight() {
    List<CurveOutcome> paired =
        curves.stream().filter(c -> c.expected() != null && c.read() != null).toList();
    return !paired.isEmpty() && paired.stream().allMatch(CurveOutcome::axesRight);
  }

  /** Whether every curve is there and right, and no other. */
  public boolean whole() {
    return curves.stream().allMatch(c -> c.kind() == CurveOutcome.Kind.RIGHT);
  }
}
