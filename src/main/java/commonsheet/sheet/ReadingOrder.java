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

  /** Narrowest gutter between columns, in em. */
  private static final double LEAST_GUTTER = 0.8;

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
    return box.x() < x - 1.5 && box.right() > x - LEAST_GUTTER * size;
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
    int level = 0;
    for (int i = 0; i < few.size(); i++) {
      boolean alone = isLevel(few.get(i), many);
      boolean asPair =
          (i > 0 && isPairLevel(few.get(i - 1), few.get(i), many))
              || (i + 1 < few.size() && isPairLevel(few.get(i), few.get(i + 1), many));
      level += alone || asPair ? 1 : 0;
    }
    return (double) level / few.size();
  }

  /** Whether a line stands level with one of the others, or centred on two of them. */
  private static boolean isLevel(Line line, List<Line> others) {
    for (int i = 0; i < others.size(); i++) {
      if (meet(line, line, others.get(i), others.get(i))
          || (i > 0 && meet(line, line, others.get(i - 1), others.get(i)))) {
        return true;
      }
    }
    return false;
  }

  /** Whether one of the others stands centred on two lines. */
  private static boolean isPairLevel(Line first, Line second, List<Line> others) {
    return others.stream().anyMatch(o -> meet(first, second, o, o));
  }

  /** Whether the middles of two pairs of neighbouring lines of about the same size of print are level. */
  private static boolean meet(Line a, Line b, Line c, Line d) {
    double size = size(a);
    double ratio = size / size(c);
    double pitch = Math.max(b.box().centreY() - a.box().centreY(), d.box().centreY() - c.box().centreY());
    double middle = (a.box().centreY() + b.box().centreY()) / 2;
    double other = (c.box().centreY() + d.box().centreY()) / 2;
    return Math.abs(middle - other) <= LEVEL_SLACK * size
        && pitch < 2 * size
        && ratio > SAME_PRINT
        && ratio < 1 / SAME_PRINT;
  }

  private static double size(Line line) {
    return line.words().get(0).size();
  }

  /** Ratio of font sizes from which lines can be of one row. */
  private static final double SAME_PRINT = 0.82;
}
