package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Tells plots from tables, panels and drawings: a plot has curves inside and numbers beside. */
final class PlotCheck {
  /** Numbers along a side from which it is an axis. */
  private static final int LABELS = 2;

  /** Grid lines of either direction from which a box without written words is a plot. */
  private static final int GRID = 3;

  /** Share of the area of the smaller of two boxes from which they are one plot seen twice. */
  private static final double SAME = 0.2;

  /** Boxes in a box that are compared with each other. */
  private static final int MOST_HELD = 40;

  private final PageInk ink;
  private final TickWords numbers;

  PlotCheck(PageInk ink, List<Word> words) {
    this.ink = ink;
    this.numbers = new TickWords(words);
  }

  private record Rated(Box box, double rate) {}

  /** The boxes that are plots, each plot once. */
  List<Box> plots(List<Box> boxes) {
    List<Rated> rated = new ArrayList<>();
    for (Box box : boxes) {
      double rate = rate(box);
      if (rate > 0) {
        rated.add(new Rated(box, rate));
      }
    }
    List<Rated> panels = rated.stream().filter(one -> isPanel(one.box(), rated)).toList();
    rated.removeAll(panels);
    rated.sort(Comparator.comparingDouble(Rated::rate).reversed());
    List<Box> kept = new ArrayList<>();
    for (Rated one : rated) {
      if (kept.stream().noneMatch(other -> overlap(one.box(), other))) {
        kept.add(one.box());
      }
    }
    kept.sort(Comparator.comparingDouble(Box::y).thenComparingDouble(Box::x));
    return kept;
  }

  /** Whether a box holds two plots beside or above each other. */
  private static boolean isPanel(Box box, List<Rated> all) {
    List<Box> held =
        all.stream()
            .map(Rated::box)
            .filter(other -> other != box && Geometry.contains(Geometry.grown(box, 1), other))
            .limit(MOST_HELD)
            .toList();
    for (Box one : held) {
      for (Box other : held) {
        if (!overlap(one, other)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean overlap(Box a, Box b) {
    double width = Math.min(a.right(), b.right()) - Math.max(a.x(), b.x());
    double height = Math.min(a.bottom(), b.bottom()) - Math.max(a.y(), b.y());
    double least = Math.min(a.width() * a.height(), b.width() * b.height());
    return width > 0 && height > 0 && width * height > SAME * least;
  }

  /** How much speaks for a plot; 0 if it is none. */
  private double rate(Box box) {
    if (!hasCurve(box)) {
      return 0;
    }
    int sides = Math.max(numbers.besideLeft(box), numbers.besideRight(box));
    int ends = Math.max(numbers.below(box), numbers.above(box));
    int levels = grid(box, true);
    int uprights = grid(box, false);
    boolean labelled = sides >= LABELS && ends >= LABELS && sides + ends > 2 * LABELS;
    boolean gridded = levels >= GRID && uprights >= GRID;
    if (!labelled && !gridded) {
      return 0;
    }
    return 2.0 * (sides + ends) + Math.min(levels + uprights, 20) / 20.0 + edges(box);
  }

  private boolean hasCurve(Box box) {
    CurveSize size = new CurveSize(box);
    Box around = Geometry.grown(box, 2);
    for (Stroke line : ink.lines()) {
      if (size.isCurve(line) && Geometry.contains(around, line.box())) {
        return true;
      }
    }
    for (Stroke line : ink.lines()) {
      if (size.isCurve(line) && size.shareInside(line) > 0.8) {
        return true;
      }
    }
    return MarkerSeries.rowsIn(ink.shapes(), box) > 0;
  }

  private int grid(Box box, boolean level) {
    double from = level ? box.x() : box.y();
    double to = level ? box.right() : box.bottom();
    double low = level ? box.y() : box.x();
    double high = level ? box.bottom() : box.right();
    int count = 0;
    for (Rule rule : ink.rules()) {
      boolean inside = rule.at() > low + 2 && rule.at() < high - 2;
      double shared = Math.min(to, rule.to()) - Math.max(from, rule.from());
      boolean beyond = rule.from() < from - 20 || rule.to() > to + 20;
      count += rule.level() == level && inside && !beyond && shared > (to - from) / 2 ? 1 : 0;
    }
    return count;
  }

  /** How many of the four sides are drawn, as quarters. */
  private double edges(Box box) {
    double drawn = 0;
    for (Rule rule : ink.rules()) {
      boolean along =
          rule.level()
              ? near(rule.from(), box.x()) && near(rule.to(), box.right())
              : near(rule.from(), box.y()) && near(rule.to(), box.bottom());
      boolean side =
          rule.level()
              ? near(rule.at(), box.y()) || near(rule.at(), box.bottom())
              : near(rule.at(), box.x()) || near(rule.at(), box.right());
      drawn += along && side ? 0.25 : 0;
    }
    return Math.min(1, drawn);
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < 1.5;
  }
}
