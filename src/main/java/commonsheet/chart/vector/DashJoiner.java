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

  /** Cosine of the angle by which a broken line may turn before and after a gap: 60 degrees. */
  private static final double ONWARD = 0.5;

  /** Dashes from which a row of them is a broken line. */
  private static final int ROW = 3;

  private DashJoiner() {}

  static List<Stroke> join(List<Stroke> strokes) {
    List<Stroke> joined = new ArrayList<>();
    int i = 0;
    while (i < strokes.size()) {
      List<Stroke> dashes = rowFrom(strokes, i);
      joined.add(dashes.size() >= ROW ? row(dashes) : strokes.get(i));
      i += dashes.size() >= ROW ? dashes.size() : 1;
    }
    return joined;
  }

  /** The dashes that go on from one, each turned so that it begins where the last one points. */
  private static List<Stroke> rowFrom(List<Stroke> strokes, int from) {
    List<Stroke> dashes = new ArrayList<>();
    Stroke last = strokes.get(from);
    if (!isDash(last) || from + 1 == strokes.size()) {
      return List.of(last);
    }
    Stroke second = strokes.get(from + 1);
    boolean backward = gap(last.reversed(), second) < gap(last, second);
    last = backward ? last.reversed() : last;
    dashes.add(last);
    double longest = last.length();
    Point heading = null;
    for (int i = from + 1; i < strokes.size() && isDash(strokes.get(i)); i++) {
      Stroke next = strokes.get(i);
      Stroke dash =
          next.last().distance(last.last()) < next.first().distance(last.last())
              ? next.reversed()
              : next;
      longest = Math.max(longest, dash.length());
      heading = onward(last, dash, longest, heading);
      if (heading == null) {
        break;
      }
      dashes.add(dash);
      last = dash;
    }
    return dashes;
  }

  /** How far the end of one stroke is from the nearer end of another. */
  private static double gap(Stroke one, Stroke other) {
    return Math.min(one.last().distance(other.first()), one.last().distance(other.last()));
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
