package commonsheet.chart.naming;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.InkStyle.Marker;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Makes the traces of a plot into curves: pieces joined, what is none left out. */
public final class Lines {
  /** A trace shorter than this share of the frame, both ways, is a remnant. */
  private static final double REMNANT = 0.05;

  /** Pieces of one curve are no farther apart than this share of the frame. */
  private static final double WIDEST_GAP = 0.06;

  /** Lines of one style differ by no more than this. */
  private static final double SAME_STYLE = 0.15;

  /** A leader line keeps to the straight by this many points. */
  private static final double STRAIGHT = 0.3;

  /** It begins this close to words, in their heights, and ends this close to a curve, in points. */
  private static final double LEADER_START = 1.2;

  private static final double LEADER_END = 2;

  /** A straight line from the side that goes over so much of the plot is a curve. */
  private static final double FROM_SIDE = 0.06;

  private static final double LONGEST_LEADER = 0.4;

  private final Plot plot;
  private final Box frame;
  private final List<String> leftOut = new ArrayList<>();
  private final List<Pointer> leaders = new ArrayList<>();

  public Lines(Plot plot) {
    this.plot = plot;
    this.frame = plot.frame();
  }

  /** The lines that lead from words to a curve, though they were drawn like curves. */
  public List<Pointer> leaders() {
    return List.copyOf(leaders);
  }

  /** What was left out and why, one sentence each. */
  public List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  /** The curves, each from left to right. */
  public List<Trace> curves() {
    List<Trace> lines = new ArrayList<>();
    for (Trace trace : plot.traces()) {
      Pointer leader = trace.points().size() < 2 ? null : leader(trace);
      if (leader != null) {
        leaders.add(leader);
      } else if (trace.points().size() > 1 && !isSample(trace) && !isMarksOnly(trace)) {
        lines.add(rightwards(trace));
      }
    }
    lines = joined(lines);
    List<Trace> kept = new ArrayList<>();
    int remnants = 0;
    for (Trace line : lines) {
      if (isRemnant(line)) {
        remnants++;
      } else if (isRule(line)) {
        leftOut.add("a straight line across the plot was taken for a mark, not for a curve");
      } else {
        kept.add(line);
      }
    }
    if (remnants > 0) {
      leftOut.add(remnants + " short pieces of line belong to no curve");
    }
    return kept;
  }

  /** A straight line from close by some words to a curve, or null. */
  private Pointer leader(Trace trace) {
    Point first = CurveGeometry.first(trace);
    Point last = CurveGeometry.last(trace);
    boolean straight =
        trace.points().stream()
            .allMatch(p -> CurveGeometry.distance(first, last, p) < STRAIGHT + plot.pixel());
    boolean fromSide = Math.min(first.x(), last.x()) < frame.x() + FROM_SIDE * frame.width();
    boolean across = Math.abs(last.x() - first.x()) > LONGEST_LEADER * frame.width();
    if (!straight || trace.style().marker() != Marker.NONE || (fromSide && across)) {
      return null;
    }
    for (Word word : plot.words()) {
      double reach = LEADER_START * word.box().height();
      boolean names = word.turn() == 0 && word.box().x() > frame.x() - 1;
      for (boolean turned : new boolean[] {false, true}) {
        Point start = turned ? last : first;
        Point end = turned ? first : last;
        if (names && CurveLabels.distance(word.box(), start) < reach && isOnOther(trace, end)) {
          return new Pointer(start, end, false, trace.style().rgb());
        }
      }
    }
    return null;
  }

  private boolean isOnOther(Trace trace, Point place) {
    for (Trace other : plot.traces()) {
      boolean curved = other != trace && other.points().size() > 3;
      if (curved && CurveGeometry.distance(other, place) < LEADER_END + 2 * plot.pixel()) {
        return true;
      }
    }
    return false;
  }

  /** Markers without a line that stand on another line of their colour. */
  private boolean isMarksOnly(Trace trace) {
    if (trace.style().marker() == Marker.NONE || trace.points().size() > 40) {
      return false;
    }
    for (Trace other : plot.traces()) {
      boolean alike = other != trace && other.style().rgb() == trace.style().rgb();
      boolean finer = other.points().size() > trace.points().size();
      if (alike && finer) {
        long on =
            trace.points().stream()
                .filter(p -> CurveGeometry.distance(other, p) < LEADER_END)
                .count();
        if (on >= 0.9 * trace.points().size()) {
          return true;
        }
      }
    }
    return false;
  }

  /** The sample of a legend drawn like a curve. */
  private boolean isSample(Trace trace) {
    Box box = box(trace);
    for (Sample sample : plot.samples()) {
      Box shown = sample.box();
      boolean same =
          Math.abs(shown.centreX() - box.centreX()) < 2
              && Math.abs(shown.centreY() - box.centreY()) < 2
              && box.width() < 1.5 * shown.width() + 2;
      if (same) {
        return true;
      }
    }
    return false;
  }

  public static Box box(Trace trace) {
    return Box.around(trace.points().stream().map(p -> new Box(p.x(), p.y(), 0, 0)).toList());
  }

  private static Trace rightwards(Trace trace) {
    List<Point> points = trace.points();
    if (points.get(0).x() <= points.get(points.size() - 1).x()) {
      return trace;
    }
    List<Point> turned = new ArrayList<>(points);
    Collections.reverse(turned);
    return with(trace, turned);
  }

  private static Trace with(Trace trace, List<Point> points) {
    return new Trace(points, trace.style(), trace.errorX(), trace.errorY(), trace.doubts());
  }

  private boolean isRemnant(Trace trace) {
    Box box = box(trace);
    return box.width() < REMNANT * frame.width() && box.height() < REMNANT * frame.height();
  }

  /** Dead level across most of the plot, or dead upright. */
  private boolean isRule(Trace trace) {
    Box box = box(trace);
    boolean level = box.height() < 0.4 + plot.pixel() && box.width() > 0.8 * frame.width();
    return level || (box.width() < 0.4 && plot.traces().size() > 1);
  }

  private List<Trace> joined(List<Trace> lines) {
    List<Trace> rest = new ArrayList<>(lines);
    rest.sort(Comparator.comparingDouble(trace -> trace.points().get(0).x()));
    for (boolean again = true; again; ) {
      again = false;
      for (int i = 0; i < rest.size() && !again; i++) {
        int next = continuation(rest, i);
        if (next >= 0) {
          rest.set(i, joined(rest.get(i), rest.get(next)));
          rest.remove(next);
          again = true;
        }
      }
    }
    return rest;
  }

  /** The only piece that goes on where a line ends, in the same style; -1 where none or several. */
  private int continuation(List<Trace> lines, int index) {
    Trace line = lines.get(index);
    int found = -1;
    for (int i = 0; i < lines.size(); i++) {
      if (i != index && goesOn(line, lines.get(i))) {
        if (found >= 0) {
          return -1;
        }
        found = i;
      }
    }
    return found;
  }

  private boolean goesOn(Trace line, Trace next) {
    if (StyleDistance.between(line.style(), next.style()) > SAME_STYLE) {
      return false;
    }
    Point end = line.points().get(line.points().size() - 1);
    Point start = next.points().get(0);
    double gap = start.x() - end.x();
    if (gap < -0.5 || gap > WIDEST_GAP * frame.width()) {
      return false;
    }
    double expected = end.y() + slope(line, true) * gap;
    double back = start.y() - slope(next, false) * gap;
    double slack = 0.015 * frame.height() + 0.25 * gap;
    return Math.abs(start.y() - expected) < slack && Math.abs(end.y() - back) < slack;
  }

  /** Down the page per point across, at one end of a line. */
  private double slope(Trace trace, boolean atEnd) {
    List<Point> points = trace.points();
    Point end = atEnd ? points.get(points.size() - 1) : points.get(0);
    double reach = 0.02 * frame.width();
    for (int i = 1; i < points.size(); i++) {
      Point other = atEnd ? points.get(points.size() - 1 - i) : points.get(i);
      double across = Math.abs(end.x() - other.x());
      if (across >= reach || (i == points.size() - 1 && across > 0)) {
        double slope = (end.y() - other.y()) / (end.x() - other.x());
        return Math.abs(slope) < 20 ? slope : 0;
      }
    }
    return 0;
  }

  private static Trace joined(Trace line, Trace next) {
    List<Point> points = new ArrayList<>(line.points());
    points.addAll(next.points());
    List<String> doubts = new ArrayList<>(line.doubts());
    next.doubts().stream().filter(doubt -> !doubts.contains(doubt)).forEach(doubts::add);
    InkStyle style = line.style();
    return new Trace(
        points,
        style,
        Math.max(line.errorX(), next.errorX()),
        Math.max(line.errorY(), next.errorY()),
        doubts);
  }
}
