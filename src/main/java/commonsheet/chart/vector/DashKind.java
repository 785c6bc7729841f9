package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import java.util.List;

/** How a broken line is called by the lengths of its dashes and gaps. */
final class DashKind {
  /** Longest dot in points, or in widths of its line. */
  private static final double LONGEST_DOT = 1.3;

  private static final double DOT_PER_WIDTH = 2;

  /** How many times longer than the gap a long dash is, and its length in points. */
  private static final double LONG_PER_GAP = 3;

  private static final double LONG = 10;

  private DashKind() {}

  static InkStyle.Dash of(Look look) {
    List<Double> lengths = look.dash();
    if (lengths.isEmpty()) {
      return InkStyle.Dash.SOLID;
    }
    double on = lengths.get(0);
    if (lengths.size() <= 2) {
      double gap = lengths.size() == 2 ? lengths.get(1) : on;
      if (on <= Math.max(LONGEST_DOT, DOT_PER_WIDTH * look.width()) && gap >= on / 2) {
        return InkStyle.Dash.DOTTED;
      }
      boolean isLong = on >= LONG || (on >= LONG_PER_GAP * gap && on >= LONG / 2);
      return isLong ? InkStyle.Dash.LONG_DASHED : InkStyle.Dash.DASHED;
    }
    double least = Double.MAX_VALUE;
    double most = 0;
    for (int i = 0; i < lengths.size(); i += 2) {
      least = Math.min(least, lengths.get(i));
      most = Math.max(most, lengths.get(i));
    }
    return most > 1.3 * least
        ? InkStyle.Dash.DASH_DOTTED
        : of(look.withDash(lengths.subList(0, 2)));
  }
}
