package commonsheet.chart.plot;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/** Leaves out the points of a curve that lie on the line between the others (Douglas-Peucker). */
public final class Thinning {
  /** A few hundred points draw any curve of a datasheet. */
  public static final int MOST_POINTS = 400;

  private static final double COARSER = 1.4;

  private Thinning() {}

  /** Points that are left, and how far the ones left out lie off at most, as a share of a unit. */
  public record Thinned(List<double[]> points, double off) {}

  /**
   * Thins a curve.
   *
   * @param unitX the length on x that counts as one
   * @param unitY the length on y that counts as one
   * @param tolerance how far a point left out may lie off, in those units; made coarser only where
   *     more than 400 points would be left
   */
  public static Thinned of(List<double[]> points, double unitX, double unitY, double tolerance) {
    double off = tolerance;
    List<double[]> left = thinned(points, unitX, unitY, off);
    while (left.size() > MOST_POINTS) {
      off *= COARSER;
      left = thinned(points, unitX, unitY, off);
    }
    return new Thinned(left, off);
  }

  private static List<double[]> thinned(
      List<double[]> points, double unitX, double unitY, double tolerance) {
    BitSet kept = new BitSet(points.size());
    kept.set(0);
    kept.set(points.size() - 1);
    Deque<int[]> spans = new ArrayDeque<>();
    spans.push(new int[] {0, points.size() - 1});
    while (!spans.isEmpty()) {
      int[] span = spans.pop();
      int farthest = -1;
      double most = tolerance;
      for (int i = span[0] + 1; i < span[1]; i++) {
        double off = off(points.get(i), points.get(span[0]), points.get(span[1]), unitX, unitY);
        if (off > most) {
          most = off;
          farthest = i;
        }
      }
      if (farthest >= 0) {
        kept.set(farthest);
        spans.push(new int[] {span[0], farthest});
        spans.push(new int[] {farthest, span[1]});
      }
    }
    List<double[]> left = new ArrayList<>();
    kept.stream().forEach(i -> left.add(points.get(i)));
    return left;
  }

  /** Distance of a point from the piece between two others. */
  private static double off(
      double[] point, double[] from, double[] to, double unitX, double unitY) {
    double px = (point[0] - from[0]) / unitX;
    double py = (point[1] - from[1]) / unitY;
    double dx = (to[0] - from[0]) / unitX;
    double dy = (to[1] - from[1]) / unitY;
    double length = dx * dx + dy * dy;
    double along = length == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / length));
    return Math.hypot(px - along * dx, py - along * dy);
  }
}
