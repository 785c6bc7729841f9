package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;

/** What a small shape is, by its corners. */
final class Outline {
  /** Share of its size by which an outline may leave the straight line between two corners. */
  private static final double BEND = 0.06;

  /** Points of an outline from which it can be round. */
  private static final int ROUND = 7;

  /** How many times farther from the middle than others a point of a round outline may lie. */
  private static final double UNEVEN = 1.2;

  private Outline() {}

  static InkStyle.Marker marker(Shape shape) {
    List<List<Point>> bars = shape.runs().stream().filter(run -> corners(run).size() == 2).toList();
    if (bars.size() == shape.runs().size()) {
      return bars(bars);
    }
    List<Point> largest =
        shape.runs().stream()
            .max(java.util.Comparator.comparingInt((List<Point> run) -> corners(run).size()))
            .orElseThrow();
    if (isRound(largest)) {
      return InkStyle.Marker.CIRCLE;
    }
    List<Point> corners = corners(largest);
    return switch (corners.size()) {
      case 3 -> triangle(corners, shape.box());
      case 4 -> fourCorners(corners);
      default -> other(corners);
    };
  }

  private static InkStyle.Marker bars(List<List<Point>> bars) {
    if (bars.size() > 2) {
      return InkStyle.Marker.STAR;
    }
    Point direction = Geometry.direction(bars.get(0).get(0), Geometry.after(bars.get(0), 0.5));
    boolean level = Math.min(Math.abs(direction.x()), Math.abs(direction.y())) < 0.2;
    if (bars.size() == 1) {
      return InkStyle.Marker.OTHER;
    }
    return level ? InkStyle.Marker.PLUS : InkStyle.Marker.CROSS;
  }

  private static InkStyle.Marker triangle(List<Point> corners, Box box) {
    long above = corners.stream().filter(p -> p.y() < box.centreY()).count();
    return above == 1 ? InkStyle.Marker.TRIANGLE : InkStyle.Marker.TRIANGLE_DOWN;
  }

  private static InkStyle.Marker fourCorners(List<Point> corners) {
    boolean upright = true;
    for (int i = 0; i < 4; i++) {
      Point way = Geometry.direction(corners.get(i), corners.get((i + 1) % 4));
      upright &= Math.min(Math.abs(way.x()), Math.abs(way.y())) < 0.2;
    }
    return upright ? InkStyle.Marker.SQUARE : InkStyle.Marker.DIAMOND;
  }

  /** Whether every point of an outline lies about as far from its middle. */
  private static boolean isRound(List<Point> run) {
    if (run.size() <= ROUND) {
      return false;
    }
    double left = run.stream().mapToDouble(Point::x).min().orElseThrow();
    double right = run.stream().mapToDouble(Point::x).max().orElseThrow();
    double top = run.stream().mapToDouble(Point::y).min().orElseThrow();
    double bottom = run.stream().mapToDouble(Point::y).max().orElseThrow();
    Point middle = new Point((left + right) / 2, (top + bottom) / 2);
    double least = run.stream().mapToDouble(middle::distance).min().orElseThrow();
    double most = run.stream().mapToDouble(middle::distance).max().orElseThrow();
    return most < UNEVEN * least;
  }

  private static InkStyle.Marker other(List<Point> corners) {
    return corners.size() == 12 ? InkStyle.Marker.PLUS : InkStyle.Marker.OTHER;
  }

  /**
   * The places where a line turns, its end and beginning taken once (Douglas and Peucker,
   * "Algorithms for the Reduction of the Number of Points", 1973, from memory).
   */
  static List<Point> corners(List<Point> run) {
    Point first = run.get(0);
    int far = 0;
    for (int i = 1; i < run.size(); i++) {
      far = run.get(i).distance(first) > run.get(far).distance(first) ? i : far;
    }
    double tolerance = BEND * run.get(far).distance(first);
    List<Point> ring = new ArrayList<>(run.subList(far, run.size()));
    boolean closed = first.distance(run.get(run.size() - 1)) < Geometry.SAME_PLACE;
    if (!closed) {
      List<Point> corners = new ArrayList<>();
      addCorners(run, 0, run.size() - 1, tolerance, corners);
      corners.add(run.get(run.size() - 1));
      return corners;
    }
    ring.addAll(run.subList(1, far + 1));
    int back = ring.size() - 1 - far;
    List<Point> corners = new ArrayList<>();
    addCorners(ring, 0, Math.max(0, back), tolerance, corners);
    addCorners(ring, Math.max(0, back), ring.size() - 1, tolerance, corners);
    return corners;
  }

  /** Adds the first point of a stretch and its corners, without its last point. */
  private static void addCorners(
      List<Point> run, int from, int to, double tolerance, List<Point> corners) {
    double most = 0;
    int corner = from;
    for (int i = from + 1; i < to; i++) {
      double off = Geometry.distanceToSegment(run.get(i), run.get(from), run.get(to));
      if (off > most) {
        most = off;
        corner = i;
      }
    }
    if (most > tolerance) {
      addCorners(run, from, corner, tolerance, corners);
      addCorners(run, corner, to, tolerance, corners);
    } else if (to > from) {
      corners.add(run.get(from));
    }
  }
}
