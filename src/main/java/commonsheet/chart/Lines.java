package commonsheet.chart;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Makes the traces of a plot into curves: pieces joined, what is none left out. */
final class Lines {
  /** A trace shorter than this share of the frame, both ways, is a remnant. */
  private static final double REMNANT = 0.05;

  /** Pieces of one curve are no farther apart than this share of the frame. */
  private static final double WIDEST_GAP = 0.06;

  /** Lines of one style differ by no more than this. */
  private static final double SAME_STYLE = 0.15;

  private final Plot plot;
  private final Box frame;
  private final List<String> leftOut = new ArrayList<>();

  Lines(Plot plot) {
    this.plot = plot;
    this.frame = plot.frame();
  }

  /** What was left out and why, one sentence each. */
  List<String> leftOut() {
    return List.copyOf(leftOut);
  }

  /** The curves, each from left to right. */
  List<Trace> curves() {
    List<Trace> lines = new ArrayList<>();
    for (Trace trace : plot.traces()) {
      if (trace.points().size() > 1 && !isSample(trace)) {
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

  static Box box(Trace trace) {
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
    boolean level = box.height() < 0.4 && box.width() > 0.8 * frame.width();
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
