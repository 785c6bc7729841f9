package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the boxes of a page that can be the area of a plot, by their lines alone. */
final class FrameFinder {
  /** Smallest plot area in points; the smallest charts on sheets are some 100 by 70 points. */
  private static final double NARROWEST = 50;

  private static final double LOWEST = 30;

  /** Points within which two lines meet. */
  private static final double MEETING = 1.5;

  /** Lines of either direction among which axes and grids are searched, the longest first. */
  private static final int MOST_RULES = 1200;

  /** Share of the longest line of a grid from which another one spans the plot too. */
  private static final double SPANNING = 0.85;

  /** Level lines of one extent from which they are a grid without uprights. */
  private static final int GRID = 3;

  /** Ticks from which a line is an axis. */
  private static final int TICKS = 3;

  /** Longest tick mark in points. */
  private static final double LONGEST_TICK = 10;

  private final PageInk ink;
  private final List<Rule> levels;
  private final List<Rule> uprights;
  private final List<Box> found = new ArrayList<>();

  private FrameFinder(PageInk ink) {
    this.ink = ink;
    this.levels = longest(ink.rules(), true, NARROWEST);
    this.uprights = longest(ink.rules(), false, LOWEST);
  }

  static List<Box> find(PageInk ink) {
    FrameFinder finder = new FrameFinder(ink);
    ink.boxes().forEach(finder::add);
    ink.patches().stream().filter(Patch::rectangle).map(Patch::box).forEach(finder::add);
    finder.addMeeting();
    finder.addLevelGrids();
    finder.addSeparateAxes();
    return finder.found;
  }

  private static List<Rule> longest(List<Rule> rules, boolean level, double least) {
    return rules.stream()
        .filter(rule -> rule.level() == level && rule.length() >= least)
        .sorted(Comparator.comparingDouble(Rule::length).reversed())
        .limit(MOST_RULES)
        .toList();
  }

  private void add(Box box) {
    if (box.width() < NARROWEST || box.height() < LOWEST) {
      return;
    }
    for (Box other : found) {
      if (Math.abs(other.x() - box.x()) < 1
          && Math.abs(other.y() - box.y()) < 1
          && Math.abs(other.right() - box.right()) < 1
          && Math.abs(other.bottom() - box.bottom()) < 1) {
        return;
      }
    }
    found.add(box);
  }

  /** Boxes spanned by lines that meet: frames of four lines, pairs of axes, grids. */
  private void addMeeting() {
    int[] group = new int[levels.size() + uprights.size()];
    for (int i = 0; i < group.length; i++) {
      group[i] = i;
    }
    for (int i = 0; i < levels.size(); i++) {
      for (int j = 0; j < uprights.size(); j++) {
        if (levels.get(i).meets(uprights.get(j), MEETING)) {
          group[root(group, i)] = root(group, levels.size() + j);
        }
      }
    }
    for (int g = 0; g < group.length; g++) {
      if (group[g] == g) {
        List<Rule> across = members(levels, 0, group, g);
        List<Rule> up = members(uprights, levels.size(), group, g);
        if (!across.isEmpty() && !up.isEmpty()) {
          addSpanned(across, up);
        }
      }
    }
  }

  private static List<Rule> members(List<Rule> rules, int offset, int[] group, int wanted) {
    List<Rule> members = new ArrayList<>();
    for (int i = 0; i < rules.size(); i++) {
      if (root(group, offset + i) == wanted) {
        members.add(rules.get(i));
      }
    }
    return members;
  }

  private static int root(int[] group, int i) {
    int r = i;
    while (group[r] != r) {
      group[r] = group[group[r]];
      r = group[r];
    }
    return r;
  }

  private void addSpanned(List<Rule> across, List<Rule> up) {
    double left = middle(spanning(across).stream().map(Rule::from).toList());
    double right = middle(spanning(across).stream().map(Rule::to).toList());
    double top = middle(spanning(up).stream().map(Rule::from).toList());
    double bottom = middle(spanning(up).stream().map(Rule::to).toList());
    add(new Box(left, top, right - left, bottom - top));
  }

  private static List<Rule> spanning(List<Rule> rules) {
    double longest = rules.get(0).length();
    return rules.stream().filter(rule -> rule.length() >= SPANNING * longest).toList();
  }

  private static double middle(List<Double> values) {
    return values.stream().sorted().toList().get(values.size() / 2);
  }

  /** Level lines of one extent that no upright line meets. */
  private void addLevelGrids() {
    List<Rule> left = new ArrayList<>(levels);
    left.removeIf(level -> uprights.stream().anyMatch(upright -> level.meets(upright, MEETING)));
    while (!left.isEmpty()) {
      Rule first = left.get(0);
      List<Rule> same =
          left.stream()
              .filter(
                  rule ->
                      Math.abs(rule.from() - first.from()) < MEETING
                          && Math.abs(rule.to() - first.to()) < MEETING)
              .toList();
      left.removeAll(same);
      if (same.size() >= GRID) {
        double top = same.stream().mapToDouble(Rule::at).min().orElseThrow();
        double bottom = same.stream().mapToDouble(Rule::at).max().orElseThrow();
        add(new Box(first.from(), top, first.length(), bottom - top));
      }
    }
  }

  /** Axes that carry ticks but do not meet; the area reaches as far as the curves in it. */
  private void addSeparateAxes() {
    List<Rule> bottoms = withTicks(levels);
    List<Rule> lefts = withTicks(uprights);
    for (Rule bottom : bottoms) {
      for (Rule left : lefts) {
        double apart = bottom.from() - left.at();
        double below = bottom.at() - left.to();
        boolean corner =
            apart > -MEETING
                && apart < bottom.length() / 2
                && below > -MEETING
                && below < left.length() / 2;
        if (corner) {
          add(reached(left, bottom));
        }
      }
    }
  }

  private Box reached(Rule left, Rule bottom) {
    double right = bottom.to();
    double top = left.from();
    Box axes = new Box(left.at(), top, right - left.at(), bottom.at() - top);
    Box wide =
        new Box(axes.x(), axes.y() - axes.height() / 4, axes.width() * 1.25, axes.height() * 1.25);
    for (Stroke line : ink.lines()) {
      if (line.box().width() > axes.width() / 4 && Geometry.contains(wide, line.box())) {
        right = Math.max(right, line.box().right());
        top = Math.min(top, line.box().y());
      }
    }
    return new Box(left.at(), top, right - left.at(), bottom.at() - top);
  }

  private List<Rule> withTicks(List<Rule> axes) {
    List<Rule> ticks = ink.rules().stream().filter(rule -> rule.length() <= LONGEST_TICK).toList();
    List<Rule> kept = new ArrayList<>();
    for (Rule axis : axes) {
      long count =
          ticks.stream()
              .filter(
                  tick ->
                      tick.level() != axis.level()
                          && tick.look().rgb() == axis.look().rgb()
                          && tick.meets(axis, Geometry.SAME_PLACE))
              .limit(TICKS)
              .count();
      if (count >= TICKS) {
        kept.add(axis);
      }
    }
    return kept;
  }
}
