package commonsheet.chart.bitmap;

/** What tells a curve from letters, rules, leader lines and other ink in a plot. */
final class Shape {
  /** Parts of a line between which its direction is compared, and their least length in pixels. */
  private static final int PARTS = 100;

  private static final int SHORTEST_PART = 8;

  private final Strand strand;
  private final double lineWidth;
  private double arc;
  private double turning;
  private double backward;
  private int gaps;
  private double gapLength;
  private double longestGap;

  /**
   * @param lineWidth in pixels; dots as long as that lie in the gaps of a dotted line
   */
  Shape(Strand strand, double lineWidth) {
    this.strand = strand;
    this.lineWidth = lineWidth;
    measure();
  }

  private void measure() {
    double[] x = strand.x();
    double[] y = strand.y();
    for (int i = 1; i < x.length; i++) {
      double step = Math.hypot(x[i] - x[i - 1], y[i] - y[i - 1]);
      arc += step;
      if (strand.bridged()[i]) {
        gaps++;
        gapLength += Math.max(0, step - 1.5 * lineWidth);
        longestGap = Math.max(longestGap, step);
      }
    }
    double before = Double.NaN;
    double heading = Math.signum(x[x.length - 1] - x[0]);
    int base = Math.max(SHORTEST_PART, x.length / PARTS);
    for (int i = base; i < x.length; i += base) {
      double dx = x[i] - x[i - base];
      double dy = y[i] - y[i - base];
      double angle = Math.atan2(dy, dx);
      if (!Double.isNaN(before)) {
        double turn = Math.abs(angle - before);
        turning += Math.min(turn, 2 * Math.PI - turn);
      }
      before = angle;
      if (dx * heading < 0) {
        backward += Math.abs(dx);
      }
    }
  }

  /** Length along the line in pixels. */
  double arc() {
    return arc;
  }

  /** Sum of all turns, in radians. */
  double turning() {
    return turning;
  }

  /** How far the line runs against its own direction, in pixels across. */
  double backward() {
    return backward;
  }

  /** Share of the line that was seen, not bridged. */
  double seen() {
    return arc == 0 ? 0 : 1 - gapLength / arc;
  }

  int gaps() {
    return gaps;
  }

  double longestGap() {
    return longestGap;
  }

  /**
   * How far the line strays from the straight way between its ends, in pixels, but for a fifth of
   * it at either end, where a leader may be bent.
   */
  double straightness() {
    int n = strand.length();
    return Math.min(bulge(0, n), Math.min(bulge(n / 5, n), bulge(0, n - n / 5)));
  }

  private double bulge(int from, int to) {
    double[] x = strand.x();
    double[] y = strand.y();
    double dx = x[to - 1] - x[from];
    double dy = y[to - 1] - y[from];
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    double most = 0;
    for (int i = from; i < to; i++) {
      most = Math.max(most, Math.abs((x[i] - x[from]) * dy - (y[i] - y[from]) * dx) / length);
    }
    return most;
  }
}
