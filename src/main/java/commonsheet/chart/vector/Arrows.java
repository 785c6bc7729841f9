package commonsheet.chart.vector;

import commonsheet.chart.plot.Pointer;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The arrows in a plot: straight lines that end in a small triangle or in two short strokes. */
final class Arrows {
  /** Largest side of an arrowhead in points. */
  private static final double LARGEST_HEAD = 9;

  /** How far in points a line may end from its arrowhead. */
  private static final double REACH = 1.6;

  /** Shortest line in points that leads somewhere. */
  private static final double SHORTEST = 4;

  /** Share of the plot's larger side beyond which no line leads to a label. */
  private static final double LONGEST = 0.6;

  private static final double BEND = 0.35;

  private final List<Pointer> pointers = new ArrayList<>();
  private final Set<Stroke> used = new HashSet<>();
  private final Set<Rule> usedRules = new HashSet<>();

  private record Head(Box box, List<Point> corners, int rgb, Stroke stroke) {}

  private Arrows() {}

  static Arrows find(PageInk ink, Grid grid, Box frame) {
    Arrows arrows = new Arrows();
    Box around = Geometry.grown(frame, frame.width() / 10);
    List<Head> heads = heads(ink, around);
    if (heads.isEmpty()) {
      return arrows;
    }
    double longest = LONGEST * Math.max(frame.width(), frame.height());
    for (Stroke line : ink.lines()) {
      boolean shaft =
          line.length() >= SHORTEST
              && line.length() <= longest
              && Geometry.touch(line.box(), around)
              && line.isStraight(BEND);
      if (shaft && arrows.add(line, heads)) {
        arrows.used.add(line);
      }
    }
    for (Rule rule : grid.loose()) {
      if (rule.length() >= SHORTEST && rule.length() <= longest) {
        Stroke line = Stroke.of(List.of(rule.start(), rule.end()), rule.look(), rule.order());
        if (arrows.add(line, heads)) {
          arrows.usedRules.add(rule);
        }
      }
    }
    return arrows;
  }

  List<Pointer> pointers() {
    return List.copyOf(pointers);
  }

  List<Stroke> without(List<Stroke> lines) {
    return lines.stream().filter(line -> !used.contains(line)).toList();
  }

  List<Rule> withoutRules(List<Rule> rules) {
    return rules.stream().filter(rule -> !usedRules.contains(rule)).toList();
  }

  private static List<Head> heads(PageInk ink, Box around) {
    List<Head> heads = new ArrayList<>();
    for (Shape shape : ink.shapes()) {
      if (!shape.hollow()
          && shape.runs().size() == 1
          && isHeadSize(shape.box())
          && Geometry.touch(shape.box(), around)) {
        List<Point> corners = shape.runs().get(0);
        if (Outline.corners(corners).size() <= 5) {
          heads.add(new Head(shape.box(), corners, shape.rgb(), null));
        }
      }
    }
    for (Stroke line : ink.lines()) {
      if (line.points().size() == 3 && isHeadSize(line.box()) && isVee(line)) {
        heads.add(new Head(line.box(), line.points().subList(1, 2), line.look().rgb(), line));
      }
    }
    return heads;
  }

  private static boolean isHeadSize(Box box) {
    return Math.max(box.width(), box.height()) <= LARGEST_HEAD;
  }

  private static boolean isVee(Stroke line) {
    double one = line.points().get(0).distance(line.points().get(1));
    double other = line.points().get(1).distance(line.points().get(2));
    Point out = Geometry.direction(line.points().get(1), line.points().get(0));
    Point back = Geometry.direction(line.points().get(1), line.points().get(2));
    return Math.abs(one - other) < 0.2 * Math.max(one, other) && Geometry.cosine(out, back) > -0.2;
  }

  private boolean add(Stroke line, List<Head> heads) {
    Head atLast = headAt(line.first(), line.last(), heads);
    Head atFirst = headAt(line.last(), line.first(), heads);
    if (atLast == null && atFirst == null) {
      return false;
    }
    int rgb = line.look().rgb();
    Point last = atLast == null ? line.last() : tip(atLast, line.first(), line.last());
    Point first = atFirst == null ? line.first() : tip(atFirst, line.last(), line.first());
    if (atLast != null) {
      pointers.add(new Pointer(first, last, true, rgb));
      use(atLast);
    }
    if (atFirst != null) {
      pointers.add(new Pointer(last, first, true, rgb));
      use(atFirst);
    }
    return true;
  }

  private void use(Head head) {
    if (head.stroke() != null) {
      used.add(head.stroke());
    }
  }

  private static Head headAt(Point from, Point end, List<Head> heads) {
    Point way = Geometry.direction(from, end);
    for (Head head : heads) {
      if (Geometry.distance(end, head.box()) > REACH) {
        continue;
      }
      Point tip = tip(head, from, end);
      double beyond = (tip.x() - end.x()) * way.x() + (tip.y() - end.y()) * way.y();
      if (beyond > -REACH && Geometry.distanceToLine(tip, from, end) < REACH) {
        return head;
      }
    }
    return null;
  }

  /** The corner of a head that lies farthest along the line. */
  private static Point tip(Head head, Point from, Point end) {
    Point way = Geometry.direction(from, end);
    Point tip = head.corners().get(0);
    double farthest = -Double.MAX_VALUE;
    for (Point p : head.corners()) {
      double far = p.x() * way.x() + p.y() * way.y();
      if (far > farthest) {
        farthest = far;
        tip = p;
      }
    }
    return tip;
  }
}
