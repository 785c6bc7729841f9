package commonsheet.compare;

import java.util.Arrays;

/**
 * A smooth line through points that never rises where they fall nor falls where they rise: a cubic
 * between each two, with the slopes of Fritsch and Butland (A method for constructing local
 * monotone piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5 (1984) 300), which keep
 * within the bounds of Fritsch and Carlson (SIAM J. Numer. Anal. 17 (1980) 238).
 */
final class MonotoneCubic {
  private final double[] x;
  private final double[] y;
  private final double[] slope;

  /** The area under the line from the first point to each. */
  private final double[] area;

  /**
   * The line through points.
   *
   * @param x strictly ascending, at least two
   * @param y as many
   */
  MonotoneCubic(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
    this.slope = slopes(x, y);
    this.area = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      area[i] = area[i - 1] + areaWithin(i - 1, x[i]);
    }
  }

  double first() {
    return x[0];
  }

  double last() {
    return x[x.length - 1];
  }

  int points() {
    return x.length;
  }

  double x(int point) {
    return x[point];
  }

  double y(int point) {
    return y[point];
  }

  /** The height of the line; at its ends beyond them. */
  double at(double place) {
    int i = piece(place);
    double h = x[i + 1] - x[i];
    double t = clamped(place, i) / h;
    double rise = (y[i + 1] - y[i]) / h;
    double c2 = (3 * rise - 2 * slope[i] - slope[i + 1]) * h;
    double c3 = (slope[i] + slope[i + 1] - 2 * rise) * h;
    return y[i] + t * (slope[i] * h + t * (c2 + t * c3));
  }

  /** The area under the line from its first point to a place on it. */
  double areaTo(double place) {
    int i = piece(place);
    return area[i] + areaWithin(i, place);
  }

  private double areaWithin(int i, double place) {
    double h = x[i + 1] - x[i];
    double t = clamped(place, i) / h;
    double rise = (y[i + 1] - y[i]) / h;
    double c2 = (3 * rise - 2 * slope[i] - slope[i + 1]) * h;
    double c3 = (slope[i] + slope[i + 1] - 2 * rise) * h;
    return h * t * (y[i] + t * (slope[i] * h / 2 + t * (c2 / 3 + t * c3 / 4)));
  }

  private double clamped(double place, int i) {
    return Math.max(0, Math.min(x[i + 1] - x[i], place - x[i]));
  }

  private int piece(double place) {
    int found = Arrays.binarySearch(x, place);
    int i = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(x.length - 2, i));
  }

  private static double[] slopes(double[] x, double[] y) {
    int last = x.length - 1;
    double[] slopes = new double[x.length];
    if (last == 1) {
      Arrays.fill(slopes, (y[1] - y[0]) / (x[1] - x[0]));
      return slopes;
    }
    for (int i = 1; i < last; i++) {
      slopes[i] = inner(x[i] - x[i - 1], y[i] - y[i - 1], x[i + 1] - x[i], y[i + 1] - y[i]);
    }
    slopes[0] = outer(x[1] - x[0], y[1] - y[0], x[2] - x[1], y[2] - y[1]);
    slopes[last] =
        outer(
            x[last] - x[last - 1],
            y[last] - y[last - 1],
            x[last - 1] - x[last - 2],
            y[last - 1] - y[last - 2]);
    return slopes;
  }

  /** The weighted harmonic mean of the slopes on both sides; level at a turning point. */
  private static double inner(double before, double rise, double after, double nextRise) {
    double one = rise / before;
    double two = nextRise / after;
    if (one * two <= 0) {
      return 0;
    }
    double first = 2 * after + before;
    double second = after + 2 * before;
    return (first + second) / (first / one + second / two);
  }

  /** Through three points, but not steeper than monotony allows. */
  private static double outer(double near, double rise, double far, double nextRise) {
    double one = rise / near;
    double two = nextRise / far;
    double slope = ((2 * near + far) * one - near * two) / (near + far);
    if (slope * one <= 0) {
      return 0;
    }
    return one * two <= 0 && Math.abs(slope) > 3 * Math.abs(one) ? 3 * one : slope;
  }
}
