package commonsheet.chart.vector;

import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Joins strokes of one look that are drawn one after the other, each beginning where one ended. */
final class StrokeChains {
  /**
   * Points within which a stroke goes on where the one before ended. Typesetters that draw a curve
   * piece by piece round each end by itself, to a tenth of a point.
   */
  private static final double JOINED = 0.15;

  private StrokeChains() {}

  static List<Stroke> join(List<Stroke> strokes) {
    List<Stroke> joined = new ArrayList<>();
    int i = 0;
    while (i < strokes.size()) {
      List<Point> points = new ArrayList<>(strokes.get(i).points());
      Stroke first = strokes.get(i);
      boolean open = !first.isClosed();
      int next = i + 1;
      while (open && next < strokes.size() && goesOn(points, first, strokes.get(next), next - i)) {
        append(points, strokes.get(next));
        next++;
      }
      joined.add(next == i + 1 ? first : Stroke.of(points, first.look(), first.order()));
      i = next;
    }
    return joined;
  }

  private static boolean goesOn(List<Point> points, Stroke first, Stroke next, int pieces) {
    if (!first.look().equals(next.look()) || next.isClosed() || next.length() == 0) {
      return false;
    }
    Point end = points.get(points.size() - 1);
    boolean single = next.points().size() == 2;
    if (first.length() > 0 && (isSame(end, next.first()) || (single && isSame(end, next.last())))) {
      return true;
    }
    Point start = points.get(0);
    boolean turned =
        pieces == 1
            && single
            && first.points().size() == 2
            && first.length() > 0
            && (isSame(start, next.first()) || isSame(start, next.last()));
    if (turned) {
      Collections.reverse(points);
    }
    return turned;
  }

  private static boolean isSame(Point a, Point b) {
    return a.distance(b) <= JOINED;
  }

  private static void append(List<Point> points, Stroke next) {
    Point end = points.get(points.size() - 1);
    List<Point> more = isSame(end, next.first()) ? next.points() : next.reversed().points();
    points.addAll(more.subList(1, more.size()));
  }
}
