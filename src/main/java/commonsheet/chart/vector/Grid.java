package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The straight lines along the axes in and at a plot.
 *
 * @param uprights x of tick marks, grid lines and sides, ascending
 * @param levels y of tick marks, grid lines and sides, ascending
 * @param straightCurves lines across the plot that look like no grid line
 * @param loose short lines in or near the plot that touch neither its sides nor a grid
 */
record Grid(
    List<Double> uprights, List<Double> levels, List<Stroke> straightCurves, List<Rule> loose) {
  /** Share of the plot a grid line spans, label boxes on it left out. */
  private static final double SPANNING = 0.6;

  /** Longest tick mark in points. */
  private static final double LONGEST_TICK = 12;

  /** How far in points from the plot a tick mark may begin: some axes stand off. */
  private static final double STANDING_OFF = 8;

  /** Points within which two marks are one. */
  private static final double SAME = 0.4;

  /** Share of the plot's width from which a level line can be a curve. */
  private static final double CURVE = 0.3;

  /** How far in points from a small plot its legend can stand. */
  private static final double FARTHEST = 100;

  static Grid of(List<Rule> rules, List<Stroke> lines, Box frame) {
    List<Rule> near = rules.stream().filter(rule -> isNear(rule, frame)).toList();
    List<Double> uprights = new ArrayList<>(List.of(frame.x(), frame.right()));
    List<Double> levels = new ArrayList<>(List.of(frame.y(), frame.bottom()));
    List<Rule> loose = new ArrayList<>();
    List<Rule> spanning = new ArrayList<>();
    Map<Look, Integer> looks = looksOfGrid(near, frame);
    for (Rule rule : near) {
      boolean grid = isGridLine(rule, frame);
      if (isPartOfCurve(rule, lines, frame)) {
        spanning.add(rule);
      } else if (grid && isCurve(rule, frame, looks)) {
        spanning.add(rule);
      } else if (grid || isTick(rule, frame)) {
        (rule.level() ? levels : uprights).add(rule.at());
      } else if (isCurve(rule, frame, looks)) {
        spanning.add(rule);
      } else {
        loose.add(rule);
      }
    }
    List<Stroke> curves =
        spanning.stream()
            .map(rule -> Stroke.of(List.of(rule.start(), rule.end()), rule.look(), rule.order()))
            .toList();
    return new Grid(
        different(uprights, frame.x(), frame.right()),
        different(levels, frame.y(), frame.bottom()),
        curves,
        loose);
  }

  private static boolean isNear(Rule rule, Box frame) {
    double reach = Math.max(FARTHEST, frame.width() / 2);
    return Geometry.touch(rule.box(), Geometry.grown(frame, reach));
  }

  private static boolean isGridLine(Rule rule, Box frame) {
    double from = rule.level() ? frame.x() : frame.y();
    double to = rule.level() ? frame.right() : frame.bottom();
    double low = rule.level() ? frame.y() : frame.x();
    double high = rule.level() ? frame.bottom() : frame.right();
    double shared = Math.min(to, rule.to()) - Math.max(from, rule.from());
    boolean in = rule.at() > low - 1 && rule.at() < high + 1;
    boolean ends = Math.abs(rule.from() - from) < 1.5 || Math.abs(rule.to() - to) < 1.5;
    return in && (shared > SPANNING * (to - from) || (ends && shared > LONGEST_TICK));
  }

  private static Map<Look, Integer> looksOfGrid(List<Rule> rules, Box frame) {
    Map<Look, Integer> looks = new HashMap<>();
    for (Rule rule : rules) {
      if (isGridLine(rule, frame)) {
        looks.merge(rule.look(), 1, Integer::sum);
      }
    }
    return looks;
  }

  /** Whether a level line is coloured as no other line of the grid is. */
  private static boolean isCurve(Rule rule, Box frame, Map<Look, Integer> looks) {
    boolean inside = rule.at() > frame.y() + 1 && rule.at() < frame.bottom() - 1;
    return rule.level()
        && inside
        && rule.length() >= CURVE * frame.width()
        && rule.from() > frame.x() - 2
        && rule.to() < frame.right() + 2
        && !Look.isGrey(rule.look().rgb())
        && looks.getOrDefault(rule.look(), 0) <= 1;
  }

  /** Whether a level line in the plot ends where a line that looks the same goes on. */
  private static boolean isPartOfCurve(Rule rule, List<Stroke> lines, Box frame) {
    boolean inside =
        rule.at() > frame.y() + 1
            && rule.at() < frame.bottom() - 1
            && rule.from() > frame.x() - 2
            && rule.to() < frame.right() + 2;
    if (!rule.level() || !inside || rule.length() < LONGEST_TICK) {
      return false;
    }
    for (Stroke line : lines) {
      boolean alike =
          line.look().rgb() == rule.look().rgb()
              && line.look().dash().isEmpty() == rule.look().dash().isEmpty()
              && Math.abs(line.look().width() - rule.look().width()) <= SAME;
      double reach = rule.look().dash().isEmpty() ? TOUCHING : GAP;
      if (alike && (ends(line, rule.start(), reach) || ends(line, rule.end(), reach))) {
        return true;
      }
    }
    return false;
  }

  private static boolean ends(Stroke line, Point at, double within) {
    return line.first().distance(at) <= within || line.last().distance(at) <= within;
  }

  /** Points within which a level piece and the rest of its curve touch, or leave a gap. */
  private static final double TOUCHING = 0.15;

  private static final double GAP = 6;

  private static boolean isTick(Rule rule, Box frame) {
    if (rule.length() > LONGEST_TICK) {
      return false;
    }
    double low = rule.level() ? frame.y() : frame.x();
    double high = rule.level() ? frame.bottom() : frame.right();
    double near = rule.level() ? frame.x() : frame.y();
    double far = rule.level() ? frame.right() : frame.bottom();
    return rule.at() > low - 1
        && rule.at() < high + 1
        && (touches(rule, near, -1) || touches(rule, far, 1));
  }

  /** Whether a short line touches a side, or stands off from it outside. */
  private static boolean touches(Rule rule, double side, int outward) {
    double inner = outward > 0 ? rule.from() - side : side - rule.to();
    double outer = outward > 0 ? rule.to() - side : side - rule.from();
    return (inner <= SAME && outer >= -SAME) || (inner >= 0 && inner <= STANDING_OFF);
  }

  private static List<Double> different(List<Double> places, double low, double high) {
    places.sort(Comparator.naturalOrder());
    List<Double> kept = new ArrayList<>();
    for (double place : places) {
      if (place < low - 1 || place > high + 1) {
        continue;
      }
      if (kept.isEmpty() || place - kept.get(kept.size() - 1) > SAME) {
        kept.add(place);
      }
    }
    return kept;
  }
}
