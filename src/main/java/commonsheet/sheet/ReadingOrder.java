package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Divides the words of a page into regions in the order in which they are read: columns of text one
 * after the other, headings across them before and after. Columns of a table stay together: their
 * lines stand level.
 */
final class ReadingOrder {
  /** Gap within a line that may be the gutter between columns, in em. */
  private static final double GUTTER = 1.2;

  /** Narrowest gutter between columns, in em. */
  private static final double LEAST_GUTTER = 0.8;

  /** Lines each column must have beside the other. */
  private static final int LEAST_LINES = 4;

  /**
   * Share of lines level with one of the other side from which the sides are columns of a table.
   */
  private static final double LEVEL = 0.6;

  /** Words per line from which a column is running text, and how full its lines then are. */
  private static final double PROSE_WORDS = 4.5;

  private static final double PROSE_FILL = 0.7;

  /** Columns are cut no further than this many times one within the other. */
  private static final int DEEPEST = 12;

  private ReadingOrder() {}

  /**
   * Regions of words in reading order. Within, fragments always come ordered from top to bottom.
   *
   * @param frames upright rulings that belong to no table: frames of the page, rules between
   *     columns
   */
  static List<List<Word>> regions(List<Word> words, List<Ruling> frames) {
    List<List<Word>> out = new ArrayList<>();
    List<Fragment> fragments =
        LineBuilder.fragments(words, GUTTER).stream()
            .map(Fragment::of)
            .sorted(Comparator.comparingDouble(f -> f.box().centreY()))
            .toList();
    cutAtFrames(fragments, frames, 0, out);
    return out;
  }

  /** Share of a region's fragments that must stand beside a rule for it to part columns. */
  private static final double LEAST_BESIDE = 0.7;

  /**
   * Parts what stands on either side of a rule, unless the rule runs between the columns of a
   * table.
   */
  private static void cutAtFrames(
      List<Fragment> fragments, List<Ruling> frames, int from, List<List<Word>> out) {
    for (int i = from; i < frames.size(); i++) {
      Ruling rule = frames.get(i);
      Gutter gutter = new Gutter(rule.at(), rule.from(), rule.to(), rule.length());
      List<Fragment> beside = fragments.stream().filter(gutter::besides).toList();
      List<Fragment> left = beside.stream().filter(f -> f.box().right() <= rule.at() + 1).toList();
      List<Fragment> right = beside.stream().filter(f -> f.box().x() >= rule.at() - 1).toList();
      if (beside.size() >= LEAST_BESIDE * fragments.size()
          && !left.isEmpty()
          && !right.isEmpty()
          && left.size() + right.size() == beside.size()
          && (isFrameMark(left) || isFrameMark(right) || LevelLines.share(left, right) < LEVEL)) {
        List<Fragment> above =
            fragments.stream().filter(f -> f.box().centreY() < gutter.top()).toList();
        List<Fragment> below =
            fragments.stream().filter(f -> f.box().centreY() > gutter.bottom()).toList();
        cutAtFrames(above, frames, i + 1, out);
        cutAtFrames(left, frames, i + 1, out);
        cutAtFrames(right, frames, i + 1, out);
        cutAtFrames(below, frames, i + 1, out);
        return;
      }
    }
    cut(fragments, 0, out);
  }

  /** Whether a side holds nothing but the letters and digits along the frame of a drawing. */
  private static boolean isFrameMark(List<Fragment> side) {
    return side.stream().allMatch(f -> f.line().text().length() <= 2);
  }

  /**
   * Where two columns part: the right one begins at x.
   *
   * @param top where the first of the two begins
   * @param bottom where the last of the two ends
   * @param shared height along which both stand side by side
   */
  private record Gutter(double x, double top, double bottom, double shared) {

    boolean besides(Fragment fragment) {
      double y = fragment.box().centreY();
      return y >= top && y <= bottom;
    }
  }

  private static void cut(List<Fragment> fragments, int depth, List<List<Word>> out) {
    Gutter gutter = depth < DEEPEST ? widest(fragments) : null;
    if (gutter == null) {
      if (!fragments.isEmpty()) {
        out.add(fragments.stream().flatMap(f -> f.line().words().stream()).toList());
      }
      return;
    }
    List<Fragment> above = new ArrayList<>();
    List<Fragment> left = new ArrayList<>();
    List<Fragment> right = new ArrayList<>();
    List<Fragment> below = new ArrayList<>();
    for (Fragment f : fragments) {
      if (gutter.besides(f)) {
        (f.box().x() < gutter.x() - 1 ? left : right).add(f);
      } else {
        (f.box().centreY() < gutter.top() ? above : below).add(f);
      }
    }
    cut(above, depth + 1, out);
    cut(left, depth + 1, out);
    cut(right, depth + 1, out);
    cut(below, depth + 1, out);
  }

  private static Gutter widest(List<Fragment> fragments) {
    if (fragments.size() < 2 * LEAST_LINES) {
      return null;
    }
    double size =
        fragments.stream().mapToDouble(Fragment::size).sorted().toArray()[fragments.size() / 2];
    Gutter best = null;
    List<Double> tried = new ArrayList<>();
    for (Fragment start : fragments) {
      double x = start.box().x();
      if (tried.stream().noneMatch(t -> Math.abs(t - x) < 1.5)) {
        tried.add(x);
        Gutter gutter = at(x, fragments, size);
        if (gutter != null && (best == null || gutter.shared() > best.shared() + 1)) {
          best = gutter;
        }
      }
    }
    return best;
  }

  /**
   * The tallest gutter left of x, if it parts columns of text; widths go by the usual font size.
   */
  private static Gutter at(double x, List<Fragment> byTop, double size) {
    Gutter best = null;
    int from = 0;
    for (int i = 0; i <= byTop.size(); i++) {
      if (i == byTop.size() || blocks(byTop.get(i).box(), x, size)) {
        Gutter gutter = between(x, byTop.subList(from, i));
        if (gutter != null && (best == null || gutter.shared() > best.shared())) {
          best = gutter;
        }
        from = i + 1;
      }
    }
    return best;
  }

  private static boolean blocks(Box box, double x, double size) {
    return box.x() < x - 1.5 && box.right() > x - LEAST_GUTTER * size;
  }

  /** The gutter between two blocking fragments; a column may begin above or end below the other. */
  private static Gutter between(double x, List<Fragment> fragments) {
    List<Fragment> left = fragments.stream().filter(f -> f.box().x() < x - 1.5).toList();
    List<Fragment> right = fragments.stream().filter(f -> f.box().x() >= x - 1.5).toList();
    if (left.size() < LEAST_LINES || right.size() < LEAST_LINES) {
      return null;
    }
    double top = Math.max(left.get(0).box().y(), right.get(0).box().y());
    double bottom = Math.min(last(left), last(right));
    Gutter gutter = new Gutter(x, top, bottom, bottom - top);
    List<Fragment> a = left.stream().filter(gutter::besides).toList();
    List<Fragment> b = right.stream().filter(gutter::besides).toList();
    if (a.size() < LEAST_LINES || b.size() < LEAST_LINES) {
      return null;
    }
    boolean parts = (isProse(a) && isProse(b)) || LevelLines.share(a, b) < LEVEL;
    Box all = Box.around(fragments.stream().map(Fragment::box).toList());
    return parts ? new Gutter(x, all.y(), all.bottom(), bottom - top) : null;
  }

  private static double last(List<Fragment> fragments) {
    return fragments.stream().mapToDouble(f -> f.box().bottom()).max().orElseThrow();
  }

  private static boolean isProse(List<Fragment> column) {
    double words = column.stream().mapToInt(f -> f.line().words().size()).average().orElse(0);
    Box all = Box.around(column.stream().map(Fragment::box).toList());
    double fill =
        column.stream().mapToDouble(f -> f.box().width()).average().orElse(0) / all.width();
    return words >= PROSE_WORDS && fill >= PROSE_FILL;
  }
}
