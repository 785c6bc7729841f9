package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;

/** Lines that lead from a label to a curve, or with an arrowhead to an axis. */
final class Pointers {
  /** Shortest pointer in pixels. */
  private static final double SHORTEST = 14;

  /** How near a pointer comes to its curve, in line widths and pixels. */
  private static final double NEAR_WIDTHS = 2;

  private static final double NEAR = 6;

  /** Width of an arrowhead in line widths and pixels. */
  private static final double HEAD_WIDTHS = 1.8;

  private static final double HEAD = 2.5;

  private final Field field;
  private final Area plot;
  private final List<Curves.Candidate> curves;

  Pointers(Field field, Area plot, List<Curves.Candidate> curves) {
    this.field = field;
    this.plot = plot;
    this.curves = curves;
  }

  /** A pointer in pixels of the field. */
  record Line(double x0, double y0, double x1, double y1, boolean arrow, Tone ink) {}

  List<Line> among(List<Curves.Candidate> candidates) {
    List<Line> out = new ArrayList<>();
    for (Curves.Candidate candidate : candidates) {
      Strand strand = candidate.strand();
      Shape shape = new Shape(strand, candidate.lineWidth());
      if (shape.arc() >= SHORTEST
          && shape.seen() > 0.8
          && Leaders.isLeader(strand, candidate.lineWidth(), plot)
          && !curves.contains(candidate)) {
        add(candidate, out);
      }
    }
    return out;
  }

  private void add(Curves.Candidate candidate, List<Line> out) {
    Strand strand = candidate.strand();
    int n = strand.length();
    int m = Math.max(1, Math.min(n / 3, 12));
    double width = candidate.lineWidth();
    boolean headFirst = isHead(strand, 0, m, width);
    boolean headLast = isHead(strand, n - 1, n - 1 - m, width);
    double first = distance(strand.x()[0], strand.y()[0]);
    double last = distance(strand.x()[n - 1], strand.y()[n - 1]);
    double near = NEAR_WIDTHS * width + NEAR;
    boolean arrow = headFirst != headLast;
    if (!arrow && Math.min(first, last) > near) {
      return;
    }
    boolean toFirst = arrow ? headFirst : first < last;
    int from = toFirst ? n - 1 : 0;
    int to = toFirst ? 0 : n - 1;
    out.add(
        new Line(
            strand.x()[from],
            strand.y()[from],
            strand.x()[to],
            strand.y()[to],
            arrow,
            strand.tone()));
  }

  /** How far a place is from the nearest curve, in pixels. */
  private double distance(double x, double y) {
    double least = Double.MAX_VALUE;
    for (Curves.Candidate curve : curves) {
      Strand strand = curve.strand();
      for (int i = 0; i < strand.length(); i += 2) {
        least = Math.min(least, Math.hypot(strand.x()[i] - x, strand.y()[i] - y));
      }
    }
    return least;
  }

  /** Whether ink widens just before and beyond an end, and narrows to a tip. */
  private boolean isHead(Strand strand, int end, int inner, double width) {
    double dx = strand.x()[end] - strand.x()[inner];
    double dy = strand.y()[end] - strand.y()[inner];
    double length = Math.max(1e-9, Math.hypot(dx, dy));
    dx /= length;
    dy /= length;
    double widest = 0;
    double beyond = Double.MAX_VALUE;
    double reach = 3 * width + 8;
    for (double t = -reach / 2; t <= reach; t++) {
      double across = across(strand.x()[end] + t * dx, strand.y()[end] + t * dy, dx, dy);
      widest = Math.max(widest, across);
      if (t > 0) {
        beyond = Math.min(beyond, across);
      }
    }
    return widest >= HEAD_WIDTHS * width + HEAD && widest < 8 * width + 10 && beyond < width;
  }

  /** Width of the ink across a direction. */
  private double across(double x, double y, double dx, double dy) {
    int count = 0;
    for (int side = -1; side <= 1; side += 2) {
      for (int k = side < 0 ? 1 : 0; k < 40; k++) {
        int px = (int) Math.round(x - side * k * dy);
        int py = (int) Math.round(y + side * k * dx);
        if (px < 0
            || py < 0
            || px >= field.width
            || py >= field.height
            || field.strength[py * field.width + px] < Palette.INK) {
          break;
        }
        count++;
      }
    }
    return count;
  }
}
