package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Joins strokes of one look into curves: where ends touch, where a marker or a label stands between
 * them, and where two ends point at each other over a small gap. Of several ways to go on, the
 * straightest is taken, so that curves that cross stay apart.
 */
final class CurveJoiner {
  /** Widest gap in points that is bridged without anything standing in it. */
  private static final double SMALL_GAP = 3;

  /** Widest gap in points that a label can make. */
  private static final double LABEL_GAP = 110;

  /** Points within which ends touch. */
  private static final double TOUCHING = 0.15;

  /** Cosine of the sharpest turn of a curve where ends touch: 110 degrees. */
  private static final double TURN = -0.34;

  /** Cosine of the sharpest turn over a gap: 35 degrees. */
  private static final double STRAIGHT = 0.82;

  /** How far an end may lie from where the other one points, per point of gap. */
  private static final double MISS = 0.18;

  /** What a turn costs against a gap, in points. */
  private static final double TURN_COST = 4;

  /** Cosine of the angle within which an end must point at a marker to lead into it: 25 degrees. */
  private static final double INTO_MARKER = 0.9;

  /**
   * Share of the plot's width from which a stroke is a curve by itself and only goes straight on.
   */
  private static final double LONG = 0.2;

  /**
   * Share of the shorter of two strokes that may lie above or below the other: curves go onward.
   */
  private static final double BESIDE = 0.3;

  /** Points of width up to which a stroke is steep, and may lie above or below another. */
  private static final double STEEP = 3;

  /** Strokes of one look in one plot beyond which only touching ends are joined. */
  private static final int MANY = 4000;

  private final List<Stroke> strokes;
  private final double longest;
  private final List<Box> covers;
  private final List<MarkerSeries> markers;
  private final Map<Long, List<End>> cells = new HashMap<>();

  private record End(int stroke, boolean last, Point at, Point out) {}

  private record Link(End one, End other, double cost, Point over) {}

  private CurveJoiner(
      List<Stroke> strokes, double plotWidth, List<Box> covers, List<MarkerSeries> markers) {
    this.strokes = strokes;
    this.longest = LONG * plotWidth;
    this.covers = covers;
    this.markers = markers;
  }

  /**
   * Joins strokes.
   *
   * @param strokes of one look
   * @param plotWidth in points
   * @param covers boxes that can hide a piece of a curve
   * @param markers of the same colour, which can stand between two pieces
   */
  static List<Stroke> join(
      List<Stroke> strokes, double plotWidth, List<Box> covers, List<MarkerSeries> markers) {
    if (strokes.size() < 2) {
      return strokes;
    }
    return new CurveJoiner(strokes, plotWidth, covers, markers).joined();
  }

  private List<Stroke> joined() {
    List<End> ends = new ArrayList<>();
    for (int i = 0; i < strokes.size(); i++) {
      Stroke s = strokes.get(i);
      Point in = s.setOut();
      ends.add(new End(i, false, s.first(), new Point(-in.x(), -in.y())));
      ends.add(new End(i, true, s.last(), s.heading()));
    }
    List<Link> links = links(ends);
    links.sort(Comparator.comparingDouble(Link::cost));
    int[] group = new int[strokes.size()];
    Link[] after = new Link[2 * strokes.size()];
    Box[] reach = new Box[strokes.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
      reach[i] = strokes.get(i).box();
    }
    for (Link link : links) {
      int a = index(link.one());
      int b = index(link.other());
      int rootA = root(group, link.one().stroke());
      int rootB = root(group, link.other().stroke());
      boolean free = after[a] == null && after[b] == null && rootA != rootB;
      if (free && isOnward(reach[rootA], reach[rootB])) {
        after[a] = link;
        after[b] = link;
        group[rootA] = rootB;
        reach[rootB] = reach[rootA].union(reach[rootB]);
      }
    }
    return follow(after);
  }

  /** Whether one piece lies beside the other along the plot, rather than above or below it. */
  private static boolean isOnward(Box a, Box b) {
    double shared = Math.min(a.right(), b.right()) - Math.max(a.x(), b.x());
    double shorter = Math.min(a.width(), b.width());
    return shorter <= STEEP || shared <= BESIDE * shorter;
  }

  private static int index(End end) {
    return 2 * end.stroke() + (end.last() ? 1 : 0);
  }

  private static int root(int[] group, int i) {
    int r = i;
    while (group[r] != r) {
      group[r] = group[group[r]];
      r = group[r];
    }
    return r;
  }

  private List<Link> links(List<End> ends) {
    double cell = strokes.size() > MANY ? 1 : LABEL_GAP;
    for (End end : ends) {
      cells.computeIfAbsent(key(end.at(), cell, 0, 0), k -> new ArrayList<>()).add(end);
    }
    List<Link> links = new ArrayList<>();
    for (End end : ends) {
      for (int dx = -1; dx <= 1; dx++) {
        for (int dy = -1; dy <= 1; dy++) {
          for (End other : cells.getOrDefault(key(end.at(), cell, dx, dy), List.of())) {
            if (index(other) > index(end) && other.stroke() != end.stroke()) {
              Link link = link(end, other);
              if (link != null) {
                links.add(link);
              }
            }
          }
        }
      }
    }
    return links;
  }

  private static long key(Point p, double cell, int dx, int dy) {
    long x = (long) Math.floor(p.x() / cell) + dx;
    long y = (long) Math.floor(p.y() / cell) + dy;
    return x * 1_000_003 + y;
  }

  private Link link(End one, End other) {
    double gap = one.at().distance(other.at());
    if (gap > LABEL_GAP || (gap > SMALL_GAP && strokes.size() > MANY)) {
      return null;
    }
    double turn = -Geometry.cosine(one.out(), other.out());
    boolean whole =
        strokes.get(one.stroke()).box().width() > longest
            && strokes.get(other.stroke()).box().width() > longest;
    if (gap <= TOUCHING) {
      return turn < (whole ? STRAIGHT : TURN)
          ? null
          : new Link(one, other, gap + TURN_COST * (1 - turn), null);
    }
    Point marker = markerBetween(one, other);
    if (marker != null) {
      return new Link(one, other, gap / 4 + TURN_COST * (1 - turn) / 4, marker);
    }
    Point over = Geometry.direction(one.at(), other.at());
    double leave = Geometry.cosine(one.out(), over);
    double arrive = -Geometry.cosine(over, other.out());
    if (leave < STRAIGHT || arrive < STRAIGHT) {
      return null;
    }
    double cost = gap + TURN_COST * (2 - leave - arrive);
    if (gap <= SMALL_GAP) {
      return new Link(one, other, cost, null);
    }
    boolean aimed = miss(one, other) < MISS * gap + 0.5 && miss(other, one) < MISS * gap + 0.5;
    return aimed && isCovered(one.at(), other.at()) ? new Link(one, other, cost, null) : null;
  }

  /** How far an end lies from the straight line on which another one goes on. */
  private static double miss(End from, End to) {
    Point on = new Point(from.at().x() + from.out().x(), from.at().y() + from.out().y());
    return Geometry.distanceToLine(to.at(), from.at(), on);
  }

  private boolean isCovered(Point a, Point b) {
    Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    for (Box cover : covers) {
      if (Geometry.contains(cover, middle)
          && Geometry.distance(a, cover) < SMALL_GAP
          && Geometry.distance(b, cover) < SMALL_GAP) {
        return true;
      }
    }
    return false;
  }

  private Point markerBetween(End one, End other) {
    for (MarkerSeries series : markers) {
      double reach = series.size() / 2 + SMALL_GAP;
      if (one.at().distance(other.at()) > 2 * reach) {
        continue;
      }
      for (Shape shape : series.shapes()) {
        if (leadsInto(one, shape.centre(), reach) && leadsInto(other, shape.centre(), reach)) {
          return shape.centre();
        }
      }
    }
    return null;
  }

  private static boolean leadsInto(End end, Point centre, double reach) {
    double distance = end.at().distance(centre);
    return distance <= reach
        && distance > TOUCHING
        && Geometry.cosine(end.out(), Geometry.direction(end.at(), centre)) > INTO_MARKER;
  }

  private List<Stroke> follow(Link[] after) {
    boolean[] taken = new boolean[strokes.size()];
    List<Stroke> curves = new ArrayList<>();
    for (int i = 0; i < strokes.size(); i++) {
      if (!taken[i] && (after[2 * i] == null || after[2 * i + 1] == null)) {
        curves.add(follow(i, after, taken));
      }
    }
    return curves;
  }

  private Stroke follow(int start, Link[] after, boolean[] taken) {
    List<Point> points = new ArrayList<>();
    int current = start;
    boolean forward = after[2 * start] == null;
    while (true) {
      taken[current] = true;
      Stroke stroke = strokes.get(current);
      points.addAll(forward ? stroke.points() : stroke.reversed().points());
      int exit = 2 * current + (forward ? 1 : 0);
      Link link = after[exit];
      if (link == null) {
        break;
      }
      if (link.over() != null) {
        points.add(link.over());
      }
      End next = index(link.one()) == exit ? link.other() : link.one();
      current = next.stroke();
      forward = !next.last();
    }
    Stroke first = strokes.get(start);
    return Stroke.of(points, first.look(), first.order());
  }
}
