package commonsheet.chart.vector;

import commonsheet.sheet.Point;
import java.util.List;

/** How exactly a file states where a line runs. */
final class Precision {
  /** Points by which curves resolved into straight pieces can be off. */
  private static final double FLATTENING = 0.01;

  /** Share of its width by which a line can be off: renderers place it by its middle. */
  private static final double PER_WIDTH = 0.02;

  /** Finest step of coordinates in points worth knowing. */
  private static final double FINEST = 0.004;

  /** Coarsest step in points that a file rounds to. */
  private static final double COARSEST = 1.01;

  /** Share of the distances between points that must be multiples of a step. */
  private static final double MOST = 0.9;

  private Precision() {}

  /** Points by which a line can lie off its true middle. */
  static double of(Stroke line) {
    return FLATTENING + PER_WIDTH * line.look().width() + step(line.points()) / 2;
  }

  /** The step to which a file rounds coordinates, in points; 0 if none is seen. */
  static double step(List<Point> points) {
    double least = COARSEST;
    for (int i = 1; i < points.size(); i++) {
      least = smaller(least, Math.abs(points.get(i).x() - points.get(i - 1).x()));
      least = smaller(least, Math.abs(points.get(i).y() - points.get(i - 1).y()));
    }
    if (least >= COARSEST || points.size() < 8) {
      return 0;
    }
    int multiples = 0;
    int all = 0;
    for (int i = 1; i < points.size(); i++) {
      double[] steps = {
        Math.abs(points.get(i).x() - points.get(i - 1).x()),
        Math.abs(points.get(i).y() - points.get(i - 1).y())
      };
      for (double step : steps) {
        if (step >= FINEST && step < 100 * least) {
          double count = step / least;
          all++;
          multiples += Math.abs(count - Math.rint(count)) < 0.1 ? 1 : 0;
        }
      }
    }
    return all > 0 && multiples >= MOST * all ? least : 0;
  }

  private static double smaller(double least, double step) {
    return step >= FINEST && step < least ? step : least;
  }
}
