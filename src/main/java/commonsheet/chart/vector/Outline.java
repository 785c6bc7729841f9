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

  /** Corners from which an outline is round. */
  private static final int ROUND = 7;

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
    List<Point> corners = corners(largest);
    return switch (corners.size()) {
      case 3 -> triangle(corners, shape.box());
      case 4 -> fourCorners(corners);
      default -> isRound(largest, corners) ? InkStyle.Marker.CIRCLE : other(corners);
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

  private static boolean isRound(List<Point> run, List<Point> corners) {
    if (corners.size() < ROUND) {
      return false;
    }
    double x = run.stream().mapToDouble(Point::x).average().orElseThrow();
    double y = run.stream().mapToDouble(Point::y).average().orElseThrow();
    Point middle = new Point(x, y);
    double least = run.stream().mapToDouble(middle::distance).min().orElseThrow();
    double most = run.stream().mapToDouble(middle::distance).max().orElseThrow();
    return most < 1.25 * least;
  }

  private static InkStyle.Marker other(List<Point> corners) {
    return corners.size() == 12 ? InkStyle.Marker.PLUS : InkStyle.Marker.OTHER;
  }

  /** The places where an outline turns, its end and beginning taken once. */
  static List<Point> corners(List<Point> run) {
    List<Point> points = new ArrayList<>(run);
    if (points.size() > 2
        && points.get(0).distance(points.get(points.size() - 1)) < Geometry.SAME_PLACE) {
      points.remove(points.size() - 1);
    }
    double size = size(points);
    boolean removed = true;
    while (removed && points.size() > 2) {
      removed = false;
      for (int i = 0; i < points.size() && points.size() > 2; i++) {
        Point before = points.get((i + points.size() - 1) % points.size());
        Point after = points.get((i + 1) % points.size());
        if (Geometry.distanceToSegment(points.get(i), before, after) < BEND * size) {
          points.remove(i);
          i--;
          removed = true;
        }
      }
    }
    return points;
  }

  private static double size(List<Point> points) {
    double most = 0;
    for (Point p : points) {
      most = Math.max(most, p.distance(points.get(0)));
    }
    return most;
  }
}
