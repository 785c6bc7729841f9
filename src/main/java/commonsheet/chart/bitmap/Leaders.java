package commonsheet.chart.bitmap;

/**
 * Tells lines that lead from a label to a curve: straight, and not from the side of the plot as
 * curves are.
 */
final class Leaders {
  /** Longest leader, as a share of the plot's width and height. */
  private static final double LONGEST = 0.65;

  /** Shortest, in pixels. */
  private static final double SHORTEST = 9;

  /** How far a leader may stray from straight, in pixels and as a share of its length. */
  private static final double BULGE = 1.0;

  private static final double BULGE_SHARE = 0.012;

  /** How far from the left side of a plot a leader begins at least, as a share of its width. */
  private static final double FROM_SIDE = 0.03;

  private Leaders() {}

  /** Whether a line can be a leader. */
  static boolean isLeader(Strand strand, double lineWidth, Area plot) {
    if (strand.minX() < FROM_SIDE * plot.width() + 3) {
      return false;
    }
    Shape shape = new Shape(strand, lineWidth);
    double length = shape.arc();
    return length >= SHORTEST
        && strand.spanX() < LONGEST * plot.width()
        && strand.spanY() < LONGEST * plot.height()
        && shape.straightness() <= BULGE + BULGE_SHARE * length;
  }
}
