package commonsheet.chart.vector;

import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The middle of a line that is drawn as a thin area, its outline around it. */
final class CentreLine {
  /** Widest area in points that counts as a line; lines in charts are 0.2 to 3 wide. */
  private static final double WIDEST = 3.2;

  /** How many times longer than wide an area must be to count as a line. */
  private static final double SLENDER = 3;

  /** Places at which the width is looked at while the ends are searched. */
  private static final int PROBES = 24;

  private static final int FEW_PROBES = 8;

  /** Places along an outline that are tried first as the end of a line. */
  private static final int MOST_ENDS = 300;

  private final List<Point> ring;
  private final double[] along;
  private final double round;

  private CentreLine(List<Point> closed) {
    ring = closed;
    along = new double[ring.size()];
    for (int i = 1; i < ring.size(); i++) {
      along[i] = along[i - 1] + ring.get(i - 1).distance(ring.get(i));
    }
    round = along[ring.size() - 1];
  }

  /** The line and its width. */
  record Found(List<Point> points, double width) {}

  /** The middle line of an outline that ends where it begins; null if it is not thin throughout. */
  static Found of(List<Point> closed) {
    double area = area(closed);
    CentreLine line = new CentreLine(closed);
    double half = line.round / 2;
    double root = half * half - 4 * area;
    if (root < 0) {
      return null;
    }
    double length = (half + Math.sqrt(root)) / 2;
    double width = length == 0 ? 0 : area / length;
    if (width > WIDEST || width <= 0 || length < SLENDER * width) {
      return null;
    }
    return line.between(line.end(), width);
  }

  private static double area(List<Point> closed) {
    double twice = 0;
    for (int i = 1; i < closed.size(); i++) {
      Point a = closed.get(i - 1);
      Point b = closed.get(i);
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2;
  }

  /** Where along the outline one end of the line is: there both ways around stay closest. */
  private double end() {
    int step = Math.max(1, (ring.size() - 1) / MOST_ENDS);
    int best = 1;
    double least = Double.MAX_VALUE;
    for (int i = 1; i < ring.size(); i += step) {
      double wide = meanWidth(middle(i), FEW_PROBES);
      if (wide < least) {
        least = wide;
        best = i;
      }
    }
    double end = middle(best);
    least = Double.MAX_VALUE;
    for (int i = Math.max(1, best - step); i < Math.min(ring.size(), best + step + 1); i++) {
      for (double start : new double[] {along[i - 1], middle(i), along[i]}) {
        double wide = meanWidth(start, PROBES);
        if (wide < least) {
          least = wide;
          end = start;
        }
      }
    }
    return end;
  }

  private double middle(int i) {
    return (along[i - 1] + along[i]) / 2;
  }

  private double meanWidth(double start, int probes) {
    double sum = 0;
    for (int k = 1; k < probes; k++) {
      double step = round / 2 * k / probes;
      sum += at(start + step).distance(at(start - step));
    }
    return sum / (probes - 1);
  }

  private Found between(double start, double width) {
    List<Point> one = side(start, 1);
    List<Point> other = side(start, -1);
    List<Point> base = one.size() >= other.size() ? one : other;
    List<Point> across = base == one ? other : one;
    List<Point> middle = new ArrayList<>();
    int from = 1;
    for (Point p : base) {
      int nearest = from;
      double least = Double.MAX_VALUE;
      int last = Math.min(across.size() - 1, from + WINDOW);
      for (int i = from; i <= last; i++) {
        double distance = Geometry.distanceToSegment(p, across.get(i - 1), across.get(i));
        if (distance < least) {
          least = distance;
          nearest = i;
        }
      }
      if (least > SLENDER * width + SLACK) {
        return null;
      }
      Point foot = foot(p, across.get(nearest - 1), across.get(nearest));
      middle.add(new Point((p.x() + foot.x()) / 2, (p.y() + foot.y()) / 2));
      from = nearest;
    }
    return new Found(withoutRepeats(middle), width);
  }

  /** Points by which a line may be wider at a corner than elsewhere. */
  private static final double SLACK = 0.3;

  /** Pieces ahead on the other side among which the opposite one is searched. */
  private static final int WINDOW = 40;

  private static Point foot(Point p, Point a, Point b) {
    double dx = b.x() - a.x();
    double dy = b.y() - a.y();
    double square = dx * dx + dy * dy;
    double t = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
    double s = Math.max(0, Math.min(1, t));
    return new Point(a.x() + s * dx, a.y() + s * dy);
  }

  private static List<Point> withoutRepeats(List<Point> points) {
    List<Point> kept = new ArrayList<>();
    for (Point p : points) {
      if (kept.isEmpty() || kept.get(kept.size() - 1).distance(p) > 1e-6) {
        kept.add(p);
      }
    }
    if (kept.size() == 1) {
      kept.add(kept.get(0));
    }
    return kept;
  }

  /** The outline from an end half way round, in either direction. */
  private List<Point> side(double start, int direction) {
    List<Point> points = new ArrayList<>();
    points.add(at(start));
    List<Double> stops = new ArrayList<>();
    for (int i = 1; i < ring.size(); i++) {
      double way = modulo(direction * (along[i] - start), round);
      if (way > 0 && way < round / 2) {
        stops.add(way);
      }
    }
    stops.sort(null);
    for (double way : stops) {
      points.add(at(start + direction * way));
    }
    points.add(at(start + direction * round / 2));
    return points;
  }

  private static double modulo(double value, double period) {
    double rest = value % period;
    return rest < 0 ? rest + period : rest;
  }

  private Point at(double place) {
    double way = modulo(place, round);
    int found = Arrays.binarySearch(along, way);
    int i = found >= 0 ? found : -found - 1;
    if (i <= 0) {
      return ring.get(0);
    }
    i = Math.min(i, ring.size() - 1);
    double piece = along[i] - along[i - 1];
    double t = piece == 0 ? 0 : (way - along[i - 1]) / piece;
    Point a = ring.get(i - 1);
    Point b = ring.get(i);
    return new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
  }
}
