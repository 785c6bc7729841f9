package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;

/** Cuts strokes that leave a plot to what lies in it. */
final class Cutting {
  /** Points by which a curve may run along outside of its frame, as by half its width. */
  private static final double SLACK = 1;

  private Cutting() {}

  static List<Stroke> cut(Stroke line, Box frame) {
    Box open = Geometry.grown(frame, SLACK);
    if (Geometry.contains(open, line.box())) {
      return List.of(line);
    }
    List<Stroke> pieces = new ArrayList<>();
    List<Point> run = new ArrayList<>();
    Point before = null;
    for (Point p : line.points()) {
      boolean in = Geometry.contains(open, p);
      if (before != null && in != Geometry.contains(open, before)) {
        run.add(in ? crossing(p, before, open) : crossing(before, p, open));
      }
      if (in) {
        run.add(p);
      } else {
        addRun(run, line, pieces);
      }
      before = p;
    }
    addRun(run, line, pieces);
    return pieces;
  }

  private static void addRun(List<Point> run, Stroke line, List<Stroke> pieces) {
    if (run.size() > 1) {
      pieces.add(Stroke.of(run, line.look(), line.order()));
    }
    run.clear();
  }

  /** Where the way from a place inside to one outside leaves a box. */
  private static Point crossing(Point inside, Point outside, Box box) {
    double dx = outside.x() - inside.x();
    double dy = outside.y() - inside.y();
    double t = 1;
    if (dx != 0) {
      t = Math.min(t, ((dx > 0 ? box.right() : box.x()) - inside.x()) / dx);
    }
    if (dy != 0) {
      t = Math.min(t, ((dy > 0 ? box.bottom() : box.y()) - inside.y()) / dy);
    }
    return new Point(inside.x() + t * dx, inside.y() + t * dy);
  }
}
