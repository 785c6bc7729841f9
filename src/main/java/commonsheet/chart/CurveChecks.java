package commonsheet.chart;

import commonsheet.chart.text.ChartKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the points of a curve can be those of a lithium-ion cell. Rules of the trade: common
 * practice, no source.
 */
final class CurveChecks {
  /** No single cell is charged to more or discharged to less. */
  private static final double MOST_VOLTS = 6;

  /**
   * Voltage may recover at first in the cold, but not by more than this share of its fall later.
   */
  private static final double RISE = 0.15;

  /** From this share of the way on a discharge only falls. */
  private static final double SETTLED = 0.4;

  private CurveChecks() {}

  /** What speaks against the points, one sentence each, in the units of the axes. */
  static List<String> doubts(
      ChartKind kind, String x, String y, String unitY, List<double[]> points) {
    List<String> doubts = new ArrayList<>();
    double least = points.stream().mapToDouble(p -> p[1]).min().orElse(0);
    double most = points.stream().mapToDouble(p -> p[1]).max().orElse(0);
    if (y.equals("voltage") && unitY.equals("V") && (most > MOST_VOLTS || least < -0.5)) {
      doubts.add("A lithium-ion cell has no voltage such as this curve reaches.");
    }
    if (kind == ChartKind.DISCHARGE && y.equals("voltage") && rises(points)) {
      doubts.add("The voltage of this curve rises in the course of a discharge.");
    }
    if (kind == ChartKind.CYCLE_LIFE && unitY.equals("%") && most > 130) {
      doubts.add("This curve shows more than 130 % of the capacity.");
    }
    double first = points.get(0)[0];
    boolean counts = List.of("capacity", "time", "cycles").contains(x);
    double span = points.get(points.size() - 1)[0] - first;
    if (counts && first < -0.05 * Math.abs(span)) {
      doubts.add("This curve begins at less than nothing of its x axis.");
    }
    return doubts;
  }

  private static boolean rises(List<double[]> points) {
    double from = points.get(0)[0];
    double to = points.get(points.size() - 1)[0];
    double settled = from + SETTLED * (to - from);
    double up = 0;
    double down = 0;
    for (int i = 1; i < points.size(); i++) {
      double step = points.get(i)[1] - points.get(i - 1)[1];
      if ((points.get(i)[0] - settled) * (to - from) >= 0) {
        up += Math.max(0, step);
        down += Math.max(0, -step);
      }
    }
    boolean ends = points.get(points.size() - 1)[1] > points.get(0)[1];
    return ends || up > RISE * Math.max(down, 1e-9);
  }
}
