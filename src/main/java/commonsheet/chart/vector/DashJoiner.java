package commonsheet.chart.vector;

import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Joins short strokes of one look, drawn one after the other and going on in the same direction
 * over small gaps: a broken line whose dashes and dots are drawn one by one.
 */
final class DashJoiner {
  /** Longest dash in points. */
  private static final double LONGEST_DASH = 30;

  /** Widest gap in points between two dashes. */
  private static final double WIDEST_GAP = 12;

  /** How many times wider than the longest dash next to it a gap may be; dots aside. */
  private static final double GAP_PER_DASH = 2.5;

  /** Length in points up to which a stroke is a dot, which has no direction. */
  private static final double DOT = 0.4;

  /** Cosine of the angle by which a broken line may turn from one dash to the next: 40 degrees. */
  private static final double ONWARD = 0.77;

  /** Dashes from which a row of them is a broken line. */
  private static final int ROW = 3;

  private DashJoiner() {}

  static List<Stroke> join(List<Stroke> strokes) {
    List<Stroke> joined = new ArrayList<>();
    int i = 0;
    while (i < strokes.size()) {
      int end = rowEnd(strokes, i);
      if (end - i >= ROW) {
        joined.add(row(strokes.subList(i, end)));
      } else {
        end = i + 1;
        joined.add(strokes.get(i));
      }
      i = end;
    }
    return joined;
  }

  private static int rowEnd(List<Stroke> strokes, int from) {
    if (!isDash(strokes.get(from))) {
      return from + 1;
    }
    int next = from + 1;
    double longest = strokes.get(from).length();
    Point heading = null;
    while (next < strokes.size() && isDash(strokes.get(next))) {
      Stroke last = strokes.get(next - 1);
      Stroke dash = strokes.get(next);
      longest = Math.max(longest, dash.length());
      Point onward = onward(last, dash, longest, heading);
      if (onward == null) {
        break;
      }
      heading = onward;
      next++;
    }
    return next;
  }

  private static boolean isDash(Stroke stroke) {
    return stroke.length() <= LONGEST_DASH && !stroke.isClosed() && stroke.look().dash().isEmpty();
  }

  /** The direction from one dash over the gap to the next, or null if it is no continuation. */
  private static Point onward(Stroke last, Stroke dash, double longest, Point heading) {
    if (last.look().rgb() != dash.look().rgb()
        || Math.abs(last.look().width() - dash.look().width()) > 0.3) {
      return null;
    }
    double gap = last.last().distance(dash.first());
    double widest =
        longest <= DOT ? WIDEST_GAP / 2 : Math.min(WIDEST_GAP, GAP_PER_DASH * longest + 1);
    if (gap > widest || gap <= Geometry.SAME_PLACE) {
      return null;
    }
    Point over = Geometry.direction(last.last(), dash.first());
    Point before = last.length() > DOT ? last.heading() : heading;
    Point after = dash.length() > DOT ? dash.setOut() : over;
    boolean straight =
        (before == null || Geometry.cosine(before, over) > ONWARD)
            && Geometry.cosine(over, after) > ONWARD;
    return straight ? after : null;
  }

  private static Stroke row(List<Stroke> dashes) {
    List<Point> points = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    List<Double> gaps = new ArrayList<>();
    for (Stroke dash : dashes) {
      if (!points.isEmpty()) {
        gaps.add(points.get(points.size() - 1).distance(dash.first()));
      }
      lengths.add(dash.length());
      points.addAll(dash.length() > DOT ? dash.points() : List.of(dash.first()));
    }
    Look look = dashes.get(0).look();
    return Stroke.of(points, look.withDash(pattern(lengths, gaps)), dashes.get(0).order());
  }

  /** Dash and gap, or long dash, gap, short dash, gap where two lengths alternate. */
  private static List<Double> pattern(List<Double> lengths, List<Double> gaps) {
    List<Double> sorted = new ArrayList<>(lengths);
    Collections.sort(sorted);
    double few = sorted.get(sorted.size() / 5);
    double many = sorted.get(sorted.size() * 4 / 5);
    double middle = sorted.get(sorted.size() / 2);
    List<Double> ordered = new ArrayList<>(gaps);
    Collections.sort(ordered);
    double gap = ordered.get(ordered.size() / 2);
    return many > 2 * few + 1 ? List.of(many, gap, few, gap) : List.of(middle, gap);
  }
}
