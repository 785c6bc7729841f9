package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.DrawnPath;
import commonsheet.sheet.PageDrawing;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;

/** Sorts the paths of a page into strokes, straight rules, small shapes and painted areas. */
final class InkSorter {
  /** Corners of a closed rectangle or a bent axis; longer lines along the axes are steps. */
  private static final int RECTANGLE = 5;

  /** Largest side in points of a painted dot of a dotted line. */
  private static final double DOT = 1.8;

  /** Widest painted bar in points that shows as a line; borders in sheets are 0.2 to 3 wide. */
  private static final double WIDEST_LINE = 3.2;

  /** Width in points from which a short bar is a square marker rather than a piece of a line. */
  private static final double WIDEST_DASH = 2.2;

  /** Share of its box a painted area must fill to count as a rectangle. */
  private static final double FULL = 0.98;

  private final List<Stroke> strokes = new ArrayList<>();
  private final List<Shape> shapes = new ArrayList<>();
  private final List<Patch> patches = new ArrayList<>();

  private InkSorter() {}

  static PageInk sort(PageDrawing drawing) {
    InkSorter sorter = new InkSorter();
    for (DrawnPath path : drawing.paths()) {
      if (path.filled()) {
        sorter.fill(path);
      } else {
        sorter.stroke(path);
      }
    }
    return sorter.sorted();
  }

  private PageInk sorted() {
    List<Stroke> whole = DashJoiner.join(StrokeChains.join(crosses()));
    List<Stroke> lines = new ArrayList<>();
    List<Rule> rules = new ArrayList<>();
    List<Box> boxes = new ArrayList<>();
    for (Stroke stroke : whole) {
      if (!isAlongAxes(stroke) || isSteps(stroke)) {
        lines.add(stroke);
        continue;
      }
      if (stroke.isClosed()) {
        boxes.add(stroke.box());
      }
      addRules(stroke, rules);
    }
    return new PageInk(lines, rules, boxes, shapes, patches);
  }

  private static boolean isAlongAxes(Stroke stroke) {
    for (int i = 1; i < stroke.points().size(); i++) {
      if (!Rule.isAlongAxis(stroke.points().get(i - 1), stroke.points().get(i))) {
        return false;
      }
    }
    return true;
  }

  /** Whether a line along the axes goes on to one side only, as a curve drawn in steps does. */
  private static boolean isSteps(Stroke stroke) {
    if (stroke.points().size() <= RECTANGLE || stroke.isClosed()) {
      return false;
    }
    int right = 0;
    int left = 0;
    int turns = 0;
    for (int i = 1; i < stroke.points().size(); i++) {
      double dx = stroke.points().get(i).x() - stroke.points().get(i - 1).x();
      double dy = stroke.points().get(i).y() - stroke.points().get(i - 1).y();
      right += dx > Rule.STRAIGHT ? 1 : 0;
      left += dx < -Rule.STRAIGHT ? 1 : 0;
      turns += Math.abs(dy) > Rule.STRAIGHT ? 1 : 0;
    }
    return turns > 1 && Math.min(left, right) == 0;
  }

  /** The straight parts of a line along the axes, pieces that go straight on taken as one. */
  private static void addRules(Stroke stroke, List<Rule> rules) {
    Point from = stroke.first();
    for (int i = 1; i < stroke.points().size(); i++) {
      Point to = stroke.points().get(i);
      boolean last = i == stroke.points().size() - 1;
      if (last || !goesStraightOn(from, to, stroke.points().get(i + 1))) {
        if (from.distance(to) > Rule.STRAIGHT) {
          rules.add(Rule.between(from, to, stroke.look(), stroke.order()));
        }
        from = to;
      }
    }
  }

  private static boolean goesStraightOn(Point from, Point to, Point next) {
    return Rule.isAlongAxis(from, next)
        && Geometry.cosine(Geometry.direction(from, to), Geometry.direction(to, next)) > 0;
  }

  private void stroke(DrawnPath path) {
    if (path.rgb() == 0xFFFFFF) {
      // White lines are the gaps of a grid on a tinted ground; they are never curves.
      path.runs().forEach(run -> strokes.add(Stroke.of(run, look(path), path.order())));
      return;
    }
    Box bounds = bounds(path.runs());
    boolean small = Math.max(bounds.width(), bounds.height()) <= Shape.LARGEST;
    if (small && isCompact(path.runs(), bounds)) {
      addShape(new Shape(path.runs(), bounds, true, path.rgb(), path.order()));
      return;
    }
    for (List<Point> run : path.runs()) {
      strokes.add(Stroke.of(run, look(path), path.order()));
    }
  }

  private static Look look(DrawnPath path) {
    return new Look(path.rgb(), path.width(), path.dash());
  }

  /** Whether small lines make up one closed or crossed shape, as a marker. */
  private static boolean isCompact(List<List<Point>> runs, Box bounds) {
    if (Math.min(bounds.width(), bounds.height()) < Rule.STRAIGHT) {
      return false;
    }
    Point middle = Geometry.centre(bounds);
    for (List<Point> run : runs) {
      boolean closed =
          run.size() > 2 && run.get(0).distance(run.get(run.size() - 1)) < Geometry.SAME_PLACE;
      boolean centred =
          runs.size() > 1
              && Geometry.centre(bounds(List.of(run))).distance(middle) < bounds.width() / 8;
      if (!closed && !centred) {
        return false;
      }
    }
    return true;
  }

  private void addShape(Shape shape) {
    int last = shapes.size() - 1;
    boolean second =
        last >= 0
            && shapes.get(last).centre().distance(shape.centre()) < SAME_MARKER
            && (shapes.get(last).rgb() == shape.rgb() || isPaper(shapes.get(last).rgb()));
    if (second) {
      shapes.set(last, shapes.get(last).and(shape));
    } else {
      shapes.add(shape);
    }
  }

  private static boolean isPaper(int rgb) {
    return new Look(rgb, 0, List.of()).isPaper();
  }

  /** Points within which the area and the line of a marker, or the strokes of a star, centre. */
  private static final double SAME_MARKER = 0.15;

  /** Takes short lines that cross in their middles out of the strokes: they are markers. */
  private List<Stroke> crosses() {
    List<Stroke> kept = new ArrayList<>();
    for (Stroke stroke : strokes) {
      int last = kept.size() - 1;
      boolean bar = stroke.points().size() == 2 && isMarkerBar(stroke);
      if (bar && last >= 0 && isMarkerBar(kept.get(last)) && cross(kept.get(last), stroke)) {
        addShape(asShape(kept.remove(last)).and(asShape(stroke)));
      } else if (bar && !shapes.isEmpty() && isPartOfLast(stroke)) {
        addShape(asShape(stroke));
      } else {
        kept.add(stroke);
      }
    }
    shapes.sort(java.util.Comparator.comparingInt(Shape::order));
    return kept;
  }

  private boolean isPartOfLast(Stroke stroke) {
    Shape shape = shapes.get(shapes.size() - 1);
    double size = Math.max(shape.box().width(), shape.box().height());
    return stroke.length() <= LONGEST_BAR * size
        && shape.rgb() == stroke.look().rgb()
        && shape.centre().distance(Geometry.centre(stroke.box())) < SAME_MARKER;
  }

  /** How many times longer than a marker one of its bars can be; samples are longer. */
  private static final double LONGEST_BAR = 1.6;

  private static boolean isMarkerBar(Stroke stroke) {
    return stroke.points().size() == 2 && stroke.length() > 1 && stroke.extent() <= Shape.LARGEST;
  }

  private static boolean cross(Stroke a, Stroke b) {
    return a.look().rgb() == b.look().rgb()
        && Geometry.centre(a.box()).distance(Geometry.centre(b.box())) < SAME_MARKER
        && Math.abs(
                Geometry.cosine(
                    Geometry.direction(a.first(), a.last()),
                    Geometry.direction(b.first(), b.last())))
            < 0.9;
  }

  private static Shape asShape(Stroke bar) {
    return new Shape(List.of(bar.points()), bar.box(), true, bar.look().rgb(), bar.order());
  }

  private void fill(DrawnPath path) {
    if (path.runs().size() == 2 && isRing(path)) {
      Box outer = bounds(path.runs());
      double width = 0;
      for (List<Point> run : path.runs()) {
        width = Math.max(width, bounds(List.of(run)).x() - outer.x());
      }
      strokes.add(
          Stroke.of(corners(Geometry.grown(outer, -width / 2)), filled(path, width), path.order()));
      return;
    }
    Box bounds = bounds(path.runs());
    double side = Math.max(bounds.width(), bounds.height());
    if (side <= DOT) {
      addDot(path, bounds);
    } else if (side <= Shape.LARGEST && !isDash(path)) {
      addShape(new Shape(path.runs(), bounds, false, path.rgb(), path.order()));
    } else {
      for (List<Point> run : path.runs()) {
        fill(path, run);
      }
    }
  }

  private void addDot(DrawnPath path, Box bounds) {
    if (Math.min(bounds.width(), bounds.height()) < Rule.STRAIGHT) {
      return;
    }
    Point middle = Geometry.centre(bounds);
    strokes.add(Stroke.of(List.of(middle, middle), filled(path, bounds.width()), path.order()));
  }

  private void fill(DrawnPath path, List<Point> run) {
    Box bounds = bounds(List.of(run));
    double thin = Math.min(bounds.width(), bounds.height());
    boolean upright = run.size() == RECTANGLE && isFull(run, bounds);
    if (upright && thin > WIDEST_LINE) {
      patches.add(new Patch(bounds, true, path.rgb(), path.order()));
    } else if (upright) {
      if (thin > 0) {
        strokes.add(Stroke.of(middle(bounds), filled(path, thin), path.order()));
      }
    } else {
      CentreLine.Found line = CentreLine.of(run);
      boolean small = Math.max(bounds.width(), bounds.height()) <= Shape.LARGEST;
      if (line != null && !(small && isLetter(line))) {
        strokes.add(Stroke.of(line.points(), filled(path, line.width()), path.order()));
      } else if (thin > Shape.LARGEST) {
        patches.add(new Patch(bounds, isFull(run, bounds), path.rgb(), path.order()));
      }
    }
  }

  /** Whether a small outline is bent as the parts of letters are; dashes are nearly straight. */
  private static boolean isLetter(CentreLine.Found line) {
    Stroke middle = Stroke.of(line.points(), new Look(0, line.width(), List.of()), 0);
    return line.width() > WIDEST_DASH
        || middle.first().distance(middle.last()) < NEARLY_STRAIGHT * middle.length();
  }

  /** Share of its length that the ends of a dash lie apart, at least. */
  private static final double NEARLY_STRAIGHT = 0.7;

  private static Look filled(DrawnPath path, double width) {
    return new Look(path.rgb(), Math.round(width * 5) / 5.0, List.of());
  }

  /** Whether a small area is a piece of a line: a slender bar, or a short line that bends. */
  private static boolean isDash(DrawnPath path) {
    if (path.runs().size() != 1) {
      return false;
    }
    List<Point> run = path.runs().get(0);
    CentreLine.Found line = CentreLine.of(run);
    if (line == null || line.width() > WIDEST_DASH) {
      return false;
    }
    double length = line.points().get(0).distance(line.points().get(line.points().size() - 1));
    return run.size() == RECTANGLE || length >= SLENDER * line.width();
  }

  /** How many times longer than wide a small area of many corners must be to be a line. */
  private static final double SLENDER = 6;

  private static boolean isRing(DrawnPath path) {
    for (List<Point> run : path.runs()) {
      if (run.size() != RECTANGLE || !isFull(run, bounds(List.of(run)))) {
        return false;
      }
    }
    Box a = bounds(List.of(path.runs().get(0)));
    Box b = bounds(List.of(path.runs().get(1)));
    Box outer = a.width() > b.width() ? a : b;
    Box inner = outer == a ? b : a;
    return Geometry.contains(outer, inner)
        && outer.width() - inner.width() < 2 * WIDEST_LINE
        && outer.height() - inner.height() < 2 * WIDEST_LINE
        && inner.width() > Shape.LARGEST;
  }

  private static boolean isFull(List<Point> run, Box bounds) {
    double twice = 0;
    for (int i = 1; i < run.size(); i++) {
      Point a = run.get(i - 1);
      Point b = run.get(i);
      twice += a.x() * b.y() - b.x() * a.y();
    }
    return Math.abs(twice) / 2 >= FULL * bounds.width() * bounds.height();
  }

  private static List<Point> middle(Box b) {
    return b.width() >= b.height()
        ? List.of(new Point(b.x(), b.centreY()), new Point(b.right(), b.centreY()))
        : List.of(new Point(b.centreX(), b.y()), new Point(b.centreX(), b.bottom()));
  }

  private static List<Point> corners(Box b) {
    return List.of(
        new Point(b.x(), b.y()),
        new Point(b.right(), b.y()),
        new Point(b.right(), b.bottom()),
        new Point(b.x(), b.bottom()),
        new Point(b.x(), b.y()));
  }

  private static Box bounds(List<List<Point>> runs) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (List<Point> run : runs) {
      for (Point p : run) {
        left = Math.min(left, p.x());
        right = Math.max(right, p.x());
        top = Math.min(top, p.y());
        bottom = Math.max(bottom, p.y());
      }
    }
    return new Box(left, top, right - left, bottom - top);
  }
}
