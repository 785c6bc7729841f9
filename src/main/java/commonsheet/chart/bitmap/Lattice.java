package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;

/**
 * What a plot is ruled with: sides, grid lines and ticks, and the exact plot area that follows.
 *
 * @param area the plot area, between the middles of its sides
 * @param levels sides and grid lines that lie level
 * @param uprights sides and grid lines that stand upright
 * @param levelMarks y of level grid lines and of ticks at the upright sides, ascending
 * @param uprightMarks x of upright grid lines and of ticks at the level sides, ascending
 * @param tickReach how far ticks go into the plot, in pixels
 */
record Lattice(
    Area area,
    List<Rule> levels,
    List<Rule> uprights,
    List<Double> levelMarks,
    List<Double> uprightMarks,
    double tickReach) {

  /** Pixels within which marks are one. */
  private static final double SAME = 1.6;

  /** How far the line at a side may be from where it was thought to be, in pixels or as a share. */
  private static final double NEAR = 3.5;

  private static final double NEAR_SHARE = 0.025;

  /** Marks from which their distances say something. */
  private static final int EVEN_MARKS = 4;

  static Lattice of(View view, View transposed, Area rough) {
    List<Rule> levels = new Rules(view, rough).find();
    List<Rule> uprights = new Rules(transposed, turned(rough)).find();
    Rule left = side(uprights, rough.left(), rough.width());
    Rule right = side(uprights, rough.right(), rough.width());
    Rule top = side(levels, rough.top(), rough.height());
    Rule bottom = side(levels, rough.bottom(), rough.height());
    Area area = new Area(left.at(), top.at(), right.at(), bottom.at());
    Marks down = new Marks(levels);
    down.add(new Ticks(view, area), left, right);
    Marks across = new Marks(uprights);
    across.add(new Ticks(transposed, turned(area)), top, bottom);
    return new Lattice(
        area,
        levels,
        uprights,
        down.places(area.top(), area.bottom()),
        across.places(area.left(), area.right()),
        Math.max(down.inward, across.inward));
  }

  private static Area turned(Area area) {
    return new Area(area.top(), area.left(), area.bottom(), area.right());
  }

  /** The line at a side of the area, or a line without thickness where none is drawn. */
  private static Rule side(List<Rule> rules, double at, double extent) {
    double near = Math.max(NEAR, NEAR_SHARE * extent);
    Rule best = null;
    for (Rule rule : rules) {
      if (Math.abs(rule.at() - at) <= near
          && (best == null || Math.abs(rule.at() - at) < Math.abs(best.at() - at))) {
        best = rule;
      }
    }
    return best == null ? new Rule(at, 0, 0) : best;
  }

  /** Whether its marks stand at even distances along one direction at least. */
  boolean isEven() {
    return isEven(levelMarks) || isEven(uprightMarks);
  }

  private static boolean isEven(List<Double> marks) {
    return marks.size() >= EVEN_MARKS && Ticks.areEven(marks);
  }

  /** Gathers where marks stand along one direction. */
  private static final class Marks {
    private final List<Double> found = new ArrayList<>();
    private double inward;

    Marks(List<Rule> rules) {
      rules.forEach(r -> found.add(r.at()));
    }

    void add(Ticks ticks, Rule low, Rule high) {
      ticks.along(low, -1).forEach(t -> found.add(t.at()));
      ticks.along(high, 1).forEach(t -> found.add(t.at()));
      addInward(ticks.along(low, 1));
      addInward(ticks.along(high, -1));
    }

    private void addInward(List<Ticks.Tick> ticks) {
      if (ticks.size() < 3) {
        return;
      }
      for (Ticks.Tick tick : ticks) {
        found.add(tick.at());
        inward = Math.max(inward, tick.length());
      }
    }

    /** Each place once, ascending, within the sides. */
    List<Double> places(double from, double to) {
      List<Double> sorted =
          found.stream().filter(p -> p >= from - 2 && p <= to + 2).sorted().toList();
      List<Double> out = new ArrayList<>();
      int i = 0;
      while (i < sorted.size()) {
        int k = i;
        double sum = 0;
        while (k < sorted.size() && sorted.get(k) - sorted.get(i) <= SAME) {
          sum += sorted.get(k);
          k++;
        }
        out.add(sum / (k - i));
        i = k;
      }
      return out;
    }
  }
}
