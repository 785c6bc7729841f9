package commonsheet.chart.points;

import java.util.List;

/**
 * Axes through three marks or more that are known in both values, for a chart that is turned or
 * skewed: each value is a + b · x + c · y of the place, by least squares.
 *
 * @param x of the value across: a, b, c
 * @param y of the value upwards
 * @param residualX greatest distance of a mark from it
 * @param residualY greatest distance of a mark from it
 */
record PlaneReference(List<Double> x, List<Double> y, double residualX, double residualY) {
  /** Below this share of their extent the marks lie on one line. */
  private static final double FLAT = 1e-6;

  /** A mark of both scales. */
  record Mark(double left, double top, double x, double y) {}

  /** Null where the marks lie on one line and tell nothing across it. */
  static PlaneReference of(List<Mark> marks) {
    double left = marks.stream().mapToDouble(Mark::left).average().orElseThrow();
    double top = marks.stream().mapToDouble(Mark::top).average().orElseThrow();
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Mark mark : marks) {
      xx += Math.pow(mark.left() - left, 2);
      xy += (mark.left() - left) * (mark.top() - top);
      yy += Math.pow(mark.top() - top, 2);
    }
    double determinant = xx * yy - xy * xy;
    if (determinant <= FLAT * xx * yy || determinant == 0) {
      return null;
    }
    double[] sums = new double[4];
    double meanX = marks.stream().mapToDouble(Mark::x).average().orElseThrow();
    double meanY = marks.stream().mapToDouble(Mark::y).average().orElseThrow();
    for (Mark mark : marks) {
      sums[0] += (mark.left() - left) * (mark.x() - meanX);
      sums[1] += (mark.top() - top) * (mark.x() - meanX);
      sums[2] += (mark.left() - left) * (mark.y() - meanY);
      sums[3] += (mark.top() - top) * (mark.y() - meanY);
    }
    double bx = (sums[0] * yy - sums[1] * xy) / determinant;
    double cx = (sums[1] * xx - sums[0] * xy) / determinant;
    double by = (sums[2] * yy - sums[3] * xy) / determinant;
    double cy = (sums[3] * xx - sums[2] * xy) / determinant;
    List<Double> x = List.of(meanX - bx * left - cx * top, bx, cx);
    List<Double> y = List.of(meanY - by * left - cy * top, by, cy);
    double residualX = 0;
    double residualY = 0;
    for (Mark mark : marks) {
      residualX = Math.max(residualX, Math.abs(at(x, mark.left(), mark.top()) - mark.x()));
      residualY = Math.max(residualY, Math.abs(at(y, mark.left(), mark.top()) - mark.y()));
    }
    return new PlaneReference(x, y, residualX, residualY);
  }

  static double at(List<Double> plane, double left, double top) {
    return plane.get(0) + plane.get(1) * left + plane.get(2) * top;
  }

  double errorX(double placing) {
    return Math.hypot(placing * Math.hypot(x.get(1), x.get(2)), residualX);
  }

  double errorY(double placing) {
    return Math.hypot(placing * Math.hypot(y.get(1), y.get(2)), residualY);
  }
}
