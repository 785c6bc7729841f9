package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * The columns of a block of lines set by alignment alone: stretches of x that words cover, parted
 * by white gaps that nearly no line crosses.
 *
 * @param lefts where each column begins
 * @param rights where each column ends
 */
record Columns(List<Double> lefts, List<Double> rights) {
  /** Narrowest white gap between columns, in em. */
  private static final double LEAST_GAP = 0.35;

  /**
   * Share of lines that may cross a gap: headings over several columns, labels that nearly touch a
   * value.
   */
  private static final double CROSSING = 0.08;

  /** Lines a column must have at least. */
  private static final int LEAST_LINES = 2;

  /** Finds the columns; the lines must not be none. */
  static Columns of(List<List<Line>> lines) {
    Box all = Box.around(lines.stream().flatMap(List::stream).map(Line::box).toList());
    int[] covered = new int[(int) Math.ceil(all.width()) + 1];
    double size = 0;
    for (List<Line> line : lines) {
      for (Line fragment : line) {
        int from = (int) Math.floor(fragment.box().x() - all.x());
        int to = (int) Math.ceil(fragment.box().right() - all.x());
        for (int x = from; x < Math.min(to, covered.length); x++) {
          covered[x]++;
        }
        size = Math.max(size, fragment.words().get(0).size());
      }
    }
    int most = (int) Math.floor(CROSSING * lines.size());
    List<Double> lefts = new ArrayList<>();
    List<Double> rights = new ArrayList<>();
    int x = 0;
    while (x < covered.length) {
      if (covered[x] > most) {
        int from = x;
        int peak = 0;
        while (x < covered.length && covered[x] > most) {
          peak = Math.max(peak, covered[x++]);
        }
        if (!lefts.isEmpty() && all.x() + from - rights.get(rights.size() - 1) < LEAST_GAP * size) {
          rights.set(rights.size() - 1, all.x() + x);
        } else if (peak >= LEAST_LINES) {
          lefts.add(all.x() + from);
          rights.add(all.x() + x);
        }
      }
      x++;
    }
    return new Columns(lefts, rights).withNumbersApart(lines, size);
  }

  /**
   * Parts columns of bare numbers (minimum, typical, maximum) that stand closer than other columns
   * do.
   */
  private Columns withNumbersApart(List<List<Line>> lines, double size) {
    List<Double> newLefts = new ArrayList<>();
    List<Double> newRights = new ArrayList<>();
    for (int c = 0; c < count(); c++) {
      newLefts.add(lefts.get(c));
      for (double[] strip : NumberColumns.strips(fragmentsIn(lines, c), LEAST_NUMBER_GAP * size)) {
        newRights.add(strip[0]);
        newLefts.add(strip[1]);
      }
      newRights.add(rights.get(c));
    }
    return new Columns(newLefts, newRights);
  }

  private List<Line> fragmentsIn(List<List<Line>> lines, int column) {
    return lines.stream()
        .flatMap(List::stream)
        .filter(
            f -> f.box().x() >= lefts.get(column) - 1 && f.box().right() <= rights.get(column) + 1)
        .toList();
  }

  /** Narrowest white gap between columns of bare numbers, in em: a space is no wider. */
  private static final double LEAST_NUMBER_GAP = 0.3;

  int count() {
    return lefts.size();
  }

  /** The column with which a box has most in common, or the nearest one. */
  int of(Box box) {
    int best = 0;
    double most = -Double.MAX_VALUE;
    for (int c = 0; c < count(); c++) {
      double shared = Math.min(box.right(), rights.get(c)) - Math.max(box.x(), lefts.get(c));
      if (shared > most) {
        most = shared;
        best = c;
      }
    }
    return best;
  }

  /**
   * Where a fragment that reaches over several columns can be cut: a gap between its words lies
   * between columns.
   */
  List<Line> cut(Line fragment) {
    List<Line> out = new ArrayList<>();
    int from = 0;
    for (int i = 1; i < fragment.words().size(); i++) {
      Box before = fragment.words().get(i - 1).box();
      Box after = fragment.words().get(i).box();
      if (of(before) != of(after)
          && after.x() > lefts.get(of(after)) - 2
          && before.right() <= lefts.get(of(after))) {
        out.add(new Line(fragment.words().subList(from, i)));
        from = i;
      }
    }
    out.add(new Line(fragment.words().subList(from, fragment.words().size())));
    return out;
  }

  /** How many columns a fragment covers, from the first one it covers on; at least 1. */
  int span(Line fragment, int first) {
    int last = first;
    double reach = fragment.box().right() - fragment.words().get(0).size();
    while (last + 1 < count() && lefts.get(last + 1) < reach) {
      last++;
    }
    return last - first + 1;
  }
}
