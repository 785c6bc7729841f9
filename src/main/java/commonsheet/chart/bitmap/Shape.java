package commonsheet.chart.bitmap;

/** What tells a curve from letters, rules, leader lines and other ink in a plot. */
final class Shape {
  /** Parts of a line between which its direction is compared, and their least length in pixels. */
  private static final int PARTS = 100;

  private static final int SHORTEST_PART = 8;

  private final Strand strand;
  private double arc;
  private double turning;
  private double backward;
  private int gaps;
  private double gapLength;
  private double longestGap;

  Shape(Strand strand) {
    this.strand = strand;
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
        gapLength += step;
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

  /** How far the line strays from the straight way between its ends, in pixels. */
  double bulge() {
    double[] x = strand.x();
    double[] y = strand.y();
    int n = x.length;
    double dx = x[n - 1] - x[0];
    double dy = y[n - 1] - y[0];
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    double most = 0;
    for (int i = 0; i < n; i++) {
      most = Math.max(most, Math.abs((x[i] - x[0]) * dy - (y[i] - y[0]) * dx) / length);
    }
    return most;
  }
}
