package commonsheet.score;

import java.util.List;
import java.util.stream.Stream;

/**
 * How the curves of a sheet's records agree with the truth of its charts.
 *
 * @param sheet name of the truth
 * @param charts one per chart of the truth, in its order
 * @param spurious curves of what is no chart of the truth
 */
public record ChartScore(String sheet, List<ChartOutcome> charts, List<CurveOutcome> spurious) {
  public ChartScore {
    charts = List.copyOf(charts);
    spurious = List.copyOf(spurious);
  }

  /** The counts of this sheet. */
  public ChartTally tally() {
    return ChartTally.of(List.of(this));
  }

  /** Every curve, those of no chart last. */
  Stream<CurveOutcome> curves() {
    return Stream.concat(charts.stream().flatMap(c -> c.curves().stream()), spurious.stream());
  }
}
