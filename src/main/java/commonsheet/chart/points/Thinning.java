package commonsheet.chart.points;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Leaves out points that lie on the straight line between others, after Douglas and Peucker
 * (Cartographica 10 (1973) 112, from memory).
 */
final class Thinning {
  /** A few hundred points show any discharge curve. */
  static final int MOST_POINTS = 400;

  private Thinning() {}

  /**
   * The points that are kept, and how far others lie from the lines between them.
   *
   * @param scale by how much the tolerances had to be widened to keep no more than {@link
   *     #MOST_POINTS}; 1 for not at all
   */
  record Result(List<List<Double>> points, double scale) {}

  /**
   * Thins a line.
   *
   * @param toleranceX how far across a point may lie from the new line, above 0
   * @param toleranceY how far up or down
   */
  static Result thin(double[] x, double[] y, double toleranceX, double toleranceY) {
    double scale = 1;
    List<List<Double>> points = kept(x, y, toleranceX, toleranceY);
    while (points.size() > MOST_POINTS) {
      scale *= 2;
      points = kept(x, y, scale * toleranceX, scale * toleranceY);
    }
    return new Result(points, scale);
  }

  private static List<List<Double>> kept(double[] x, double[] y, double byX, double byY) {
    boolean[] keep = new boolean[x.length];
    keep[0] = true;
    keep[x.length - 1] = true;
    Deque<int[]> open = new ArrayDeque<>();
    open.push(new int[] {0, x.length - 1});
    while (!open.isEmpty()) {
      int[] piece = open.pop();
      int farthest = -1;
      double distance = 1;
      for (int i = piece[0] + 1; i < piece[1]; i++) {
        double away = away(x, y, piece[0], piece[1], i, byX, byY);
        if (away > distance) {
          distance = away;
          farthest = i;
        }
      }
      if (farthest >= 0) {
        keep[farthest] = true;
        open.push(new int[] {piece[0], farthest});
        open.push(new int[] {farthest, piece[1]});
      }
    }
    List<List<Double>> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      if (keep[i]) {
        points.add(List.of(x[i], y[i]));
      }
    }
    return points;
  }

  /** The distance of a point from a line in tolerances. */
  private static double away(
      double[] x, double[] y, int from, int to, int at, double byX, double byY) {
    double dx = (x[to] - x[from]) / byX;
    double dy = (y[to] - y[from]) / byY;
    double px = (x[at] - x[from]) / byX;
    double py = (y[at] - y[from]) / byY;
    double length = Math.hypot(dx, dy);
    return length == 0 ? Math.hypot(px, py) : Math.abs(dx * py - dy * px) / length;
  }
}
