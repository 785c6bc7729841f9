package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Divides the words of a page into regions in the order in which they are read: columns of text one after the other,
 * headings across them before and after. Columns of a table stay together: their lines stand level.
 */
final class ReadingOrder {
  /** Gap within a line that may be the gutter between columns, in em. */
  private static final double GUTTER = 1.2;

  /** Lines each column must have beside the other. */
  private static final int LEAST_LINES = 4;

  /** Share of lines level with one of the other side from which the sides are columns of a table. */
  private static final double LEVEL = 0.6;

  /** How far level lines may differ, as a share of the font size. */
  private static final double LEVEL_SLACK = 0.12;

  /** Words per line from which a column is running text, and how full its lines then are. */
  private static final double PROSE_WORDS = 4.5;

  private static final double PROSE_FILL = 0.7;

  /** Columns are cut no further than this many times one within the other. */
  private static final int DEEPEST = 12;

  private ReadingOrder() {}

  /** Regions of words in reading order. */
  static List<List<Word>> regions(List<Word> words) {
    List<List<Word>> out = new ArrayList<>();
    cut(LineBuilder.fragments(words, GUTTER), 0, out);
    return out;
  }

  /** Where two columns part: the right one begins at x; they stand side by side from top to bottom. */
  private record Gutter(double x, double top, double bottom) {
    double height() {
      return bottom - top;
    }

    boolean besides(Line fragment) {
      double y = fragment.box().centreY();
      return y >= top && y <= bottom;
    }
  }

  private static void cut(List<Line> fragments, int depth, List<List<Word>> out) {
    Gutter gutter = depth < DEEPEST ? widest(fragments) : null;
    if (gutter == null) {
      if (!fragments.isEmpty()) {
        out.add(fragments.stream().flatMap(f -> f.words().stream()).toList());
      }
      return;
    }
    List<Line> above = new ArrayList<>();
    List<Line> left = new ArrayList<>();
    List<Line> right = new ArrayList<>();
    List<Line> below = new ArrayList<>();
    for (Line f : fragments) {
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

  private static Gutter widest(List<Line> fragments) {
    if (fragments.size() < 2 * LEAST_LINES) {
      return null;
    }
    List<Line> byTop = new ArrayList<>(fragments);
    byTop.sort(Comparator.comparingDouble(f -> f.box().centreY()));
    Gutter best = null;
    List<Double> tried = new ArrayList<>();
    for (Line start : byTop) {
      double x = start.box().x();
      if (tried.stream().noneMatch(t -> Math.abs(t - x) < 1.5)) {
        tried.add(x);
        Gutter gutter = at(x, byTop, start.words().get(0).size());
        if (gutter != null && (best == null || gutter.height() > best.height() + 1)) {
          best = gutter;
        }
      }
    }
    return best;
  }

  /** The tallest gutter left of x, if it parts columns of text. */
  private static Gutter at(double x, List<Line> byTop, double size) {
    Gutter best = null;
    int from = 0;
    for (int i = 0; i <= byTop.size(); i++) {
      if (i == byTop.size() || blocks(byTop.get(i).box(), x, size)) {
        Gutter gutter = between(x, byTop.subList(from, i));
        if (gutter != null && (best == null || gutter.height() > best.height())) {
          best = gutter;
        }
        from = i + 1;
      }
    }
    return best;
  }

  private static boolean blocks(Box box, double x, double size) {
    return box.x() < x - 1.5 && box.right() > x - GUTTER * size;
  }

  private static Gutter between(double x, List<Line> fragments) {
    List<Line> left = fragments.stream().filter(f -> f.box().x() < x - 1.5).toList();
    List<Line> right = fragments.stream().filter(f -> f.box().x() >= x - 1.5).toList();
    if (left.size() < LEAST_LINES || right.size() < LEAST_LINES) {
      return null;
    }
    double top = Math.max(left.get(0).box().y(), right.get(0).box().y());
    double bottom = Math.min(last(left), last(right));
    Gutter gutter = new Gutter(x, top, bottom);
    List<Line> a = left.stream().filter(gutter::besides).toList();
    List<Line> b = right.stream().filter(gutter::besides).toList();
    if (a.size() < LEAST_LINES || b.size() < LEAST_LINES) {
      return null;
    }
    boolean prose = isProse(a) && isProse(b);
    return prose || levelShare(a, b) < LEVEL ? gutter : null;
  }

  private static double last(List<Line> fragments) {
    return fragments.stream().mapToDouble(f -> f.box().bottom()).max().orElseThrow();
  }

  private static boolean isProse(List<Line> column) {
    double words = column.stream().mapToInt(f -> f.words().size()).average().orElse(0);
    Box all = Box.around(column.stream().map(Line::box).toList());
    double fill =
        column.stream().mapToDouble(f -> f.box().width()).average().orElse(0) / all.width();
    return words >= PROSE_WORDS && fill >= PROSE_FILL;
  }

  /** Share of the sparser side's lines level with a line of the other, or midway between two of them. */
  private static double levelShare(List<Line> a, List<Line> b) {
    return a.size() <= b.size() ? share(a, b) : share(b, a);
  }

  private static double share(List<Line> few, List<Line> many) {
    double[] ys = many.stream().mapToDouble(f -> f.box().centreY()).sorted().toArray();
    int level = 0;
    for (Line line : few) {
      double y = line.box().centreY();
      double slack = LEVEL_SLACK * line.words().get(0).size();
      boolean found = false;
      for (int i = 0; i < ys.length && !found; i++) {
        boolean pair = i > 0 && ys[i] - ys[i - 1] < 2 * line.words().get(0).size();
        found =
            Math.abs(ys[i] - y) <= slack
                || (pair && Math.abs((ys[i] + ys[i - 1]) / 2 - y) <= slack);
      }
      level += found ? 1 : 0;
    }
    return (double) level / few.size();
  }
}
