package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Proposes plot areas: lines that touch each other belong together, and the long ones of them that
 * stand outermost are axes or a frame. Boxes laid over a frame do not move it, since their sides do
 * not begin at an axis.
 */
final class Frames {
  /** Length of a side against the longest line of its direction. */
  private static final double LONG_UPRIGHT = 0.6;

  private static final double LONG_LEVEL = 0.7;

  /** How much further than the outermost line across it an axis goes on; ticks go less far. */
  private static final double BEYOND = 0.08;

  /** The same to the left, where a tick and its label may touch the axis. */
  private static final double FAR_BEYOND = 0.12;

  private final List<Segment> levels;
  private final List<Segment> uprights;
  private final double touch;
  private final double shortest;

  private Frames(Lines lines) {
    this.levels = lines.levels();
    this.uprights = lines.uprights();
    this.touch = lines.touch();
    this.shortest = lines.shortest();
  }

  /** The plot areas there may be, smallest first, in pixels of the picture. */
  static List<Area> find(Lines lines) {
    List<Area> areas = new Frames(lines).areas();
    areas.sort(Comparator.comparingDouble(a -> a.width() * a.height()));
    return areas;
  }

  private List<Area> areas() {
    int count = levels.size() + uprights.size();
    int[] group = new int[count];
    for (int i = 0; i < count; i++) {
      group[i] = i;
    }
    for (int i = 0; i < levels.size(); i++) {
      for (int k = 0; k < uprights.size(); k++) {
        if (meet(levels.get(i), uprights.get(k))) {
          merge(group, i, levels.size() + k);
        }
      }
    }
    List<Area> out = new ArrayList<>();
    for (int root = 0; root < count; root++) {
      List<Segment> ownLevels = members(levels, group, 0, root);
      List<Segment> ownUprights = members(uprights, group, levels.size(), root);
      if (!ownLevels.isEmpty() && !ownUprights.isEmpty()) {
        Area area = outline(ownLevels, ownUprights);
        if (area.width() >= shortest && area.height() >= shortest) {
          out.add(area);
        }
      }
    }
    return out;
  }

  private boolean meet(Segment level, Segment upright) {
    return level.at() >= upright.from() - touch
        && level.at() <= upright.to() + touch
        && upright.at() >= level.from() - touch
        && upright.at() <= level.to() + touch;
  }

  private static void merge(int[] group, int a, int b) {
    int from = group[b];
    int to = group[a];
    for (int i = 0; i < group.length; i++) {
      if (group[i] == from) {
        group[i] = to;
      }
    }
  }

  private static List<Segment> members(List<Segment> all, int[] group, int offset, int root) {
    List<Segment> out = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (group[offset + i] == root) {
        out.add(all.get(i));
      }
    }
    return out;
  }

  private Area outline(List<Segment> levels, List<Segment> uprights) {
    List<Segment> tall = longest(uprights, LONG_UPRIGHT);
    double left = tall.stream().mapToDouble(Segment::at).min().orElseThrow();
    double right = tall.stream().mapToDouble(Segment::at).max().orElseThrow();
    List<Segment> wide = longest(levels, LONG_LEVEL);
    boolean oneSided = right - left < shortest;
    double begin = wide.stream().mapToDouble(Segment::from).min().orElseThrow();
    double end = wide.stream().mapToDouble(Segment::to).max().orElseThrow();
    if (oneSided) {
      boolean atLeft = Math.abs(left - begin) <= Math.abs(right - end);
      right = atLeft ? end : right;
      left = atLeft ? left : begin;
    }
    double near = Math.max(touch, 0.012 * (right - left));
    double top = Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    Segment lowest = null;
    for (Segment line : wide) {
      if (Math.abs(line.from() - left) <= near
          || Math.abs(line.to() - right) <= near
          || line.from() < left && line.to() > right) {
        top = Math.min(top, line.at());
        if (line.at() > bottom) {
          bottom = line.at();
          lowest = line;
        }
      }
    }
    double first = tall.stream().mapToDouble(Segment::at).min().orElseThrow();
    double last = tall.stream().mapToDouble(Segment::at).max().orElseThrow();
    List<Segment> sides =
        tall.stream().filter(u -> u.at() <= first + near || u.at() >= last - near).toList();
    double high = sides.stream().mapToDouble(Segment::from).min().orElseThrow();
    double low = sides.stream().mapToDouble(Segment::to).max().orElseThrow();
    if (lowest == null) {
      return new Area(left, high, right, low);
    }
    if (bottom - top < shortest) {
      boolean atBottom = low - bottom <= top - high;
      top = atBottom ? high : top;
      bottom = atBottom ? bottom : low;
    }
    // where the top or a side is covered or not drawn, the axes still tell how far it goes
    double width = right - left;
    double height = bottom - top;
    return new Area(
        left - lowest.from() > FAR_BEYOND * width ? lowest.from() : left,
        top - high > BEYOND * height ? high : top,
        lowest.to() - right > BEYOND * width ? lowest.to() : right,
        bottom);
  }

  private static List<Segment> longest(List<Segment> lines, double share) {
    double most = lines.stream().mapToDouble(Segment::length).max().orElseThrow();
    return lines.stream().filter(l -> l.length() >= share * most).toList();
  }
}
