package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;

/** Whether a line is large enough, for the plot it stands in, to be a curve. */
final class CurveSize {
  /** Share of the plot's width from which a line can be a curve. */
  private static final double WIDE = 0.12;

  /** Shares of height and width from which a steep line can be a curve. */
  private static final double HIGH = 0.3;

  private static final double STEEP = 0.03;

  /** Share of the plot's width a straight line must have: shorter ones lead to labels. */
  private static final double STRAIGHT = 0.3;

  /** Points by which a straight line may bend. */
  private static final double BEND = 0.3;

  /** Share of the plot's height below which a line of few points is a rule that slants. */
  private static final double FLAT = 0.01;

  private static final int POINTS = 8;

  private final Box plot;

  CurveSize(Box plot) {
    this.plot = plot;
  }

  boolean isCurve(Stroke line) {
    Box box = line.box();
    boolean large =
        box.width() >= WIDE * plot.width()
            || (box.height() >= HIGH * plot.height() && box.width() >= STEEP * plot.width());
    boolean flat = box.height() < FLAT * plot.height() && line.points().size() < POINTS;
    return large
        && !flat
        && !line.isClosed()
        && !line.look().isPaper()
        && (box.width() >= STRAIGHT * plot.width() || !line.isStraight(BEND));
  }

  /** The share of a line's points that lie in the plot. */
  double shareInside(Stroke line) {
    Box around = Geometry.grown(plot, 2);
    int inside = 0;
    for (Point p : line.points()) {
      inside += Geometry.contains(around, p) ? 1 : 0;
    }
    return (double) inside / line.points().size();
  }
}
