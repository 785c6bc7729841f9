package commonsheet.score;

import commonsheet.record.Standing;
import java.util.Collection;
import java.util.List;

/**
 * Counts over charts and their curves.
 *
 * @param charts charts of the truth
 * @param found those of which the record has curves
 * @param axes those whose curves all show the right quantities and units
 * @param whole those with every curve right and no other
 * @param curves curves of the truth
 * @param right read curves with the right axes, conditions and points
 * @param unsure those of the right that stand as unsure
 * @param complete those of the right that have all conditions the chart states
 * @param wrong read curves in which something is not right
 * @param missed curves of the truth that nothing was read for
 * @param spurious read curves that no chart has
 * @param silent wrong and spurious curves that do not stand as unsure
 */
public record ChartTally(
    int charts,
    int found,
    int axes,
    int whole,
    int curves,
    int right,
    int unsure,
    int complete,
    int wrong,
    int missed,
    int spurious,
    int silent) {

  /** The counts of several sheets together. */
  public static ChartTally of(Collection<ChartScore> scores) {
    List<ChartOutcome> charts = scores.stream().flatMap(s -> s.charts().stream()).toList();
    List<CurveOutcome> curves = scores.stream().flatMap(ChartScore::curves).toList();
    return new ChartTally(
        charts.size(),
        (int) charts.stream().filter(ChartOutcome::found).count(),
        (int) charts.stream().filter(ChartOutcome::axesRight).count(),
        (int) charts.stream().filter(ChartOutcome::whole).count(),
        (int) curves.stream().filter(c -> c.expected() != null).count(),
        count(curves, CurveOutcome.Kind.RIGHT),
        (int)
            curves.stream()
                .filter(c -> c.kind() == CurveOutcome.Kind.RIGHT)
                .filter(c -> c.read().standing() == Standing.UNSURE)
                .count(),
        (int) curves.stream().filter(CurveOutcome::complete).count(),
        count(curves, CurveOutcome.Kind.WRONG),
        count(curves, CurveOutcome.Kind.MISSED),
        count(curves, CurveOutcome.Kind.SPURIOUS),
        (int) curves.stream().filter(CurveOutcome::silent).count());
  }

  private static int count(List<CurveOutcome> curves, CurveOutcome.Kind kind) {
    return (int) curves.stream().filter(c -> c.kind() == kind).count();
  }
}
