package commonsheet.sheet;

import java.util.List;

/**
 * Whether what stands on two sides of a white gap stands level, as the cells of a table's rows do.
 * Cells centred on each other count: one line midway between two of the other side. Fragments come
 * ordered from top to bottom.
 */
final class LevelLines {
  /** How far level lines may differ, as a share of the font size. */
  private static final double SLACK = 0.12;

  /** Ratio of font sizes from which lines can be of one row. */
  private static final double SAME_PRINT = 0.82;

  /** How far two lines of one cell lie apart at most, in em. */
  private static final double PITCH = 2;

  private LevelLines() {}

  /** Share of the sparser side's lines that stand level with the other side. */
  static double share(List<Fragment> a, List<Fragment> b) {
    List<Fragment> few = a.size() <= b.size() ? a : b;
    List<Fragment> many = a.size() <= b.size() ? b : a;
    int level = 0;
    for (int i = 0; i < few.size(); i++) {
      boolean found =
          isLevel(few.get(i), many)
              || (i > 0 && isPairLevel(few.get(i - 1), few.get(i), many))
              || (i + 1 < few.size() && isPairLevel(few.get(i), few.get(i + 1), many));
      level += found ? 1 : 0;
    }
    return (double) level / few.size();
  }

  /** Whether a line stands level with one of the others, or centred on two of them. */
  private static boolean isLevel(Fragment line, List<Fragment> others) {
    double y = line.box().centreY();
    double near = PITCH * line.size();
    int i = firstFrom(others, y - near);
    for (; i < others.size() && others.get(i).box().centreY() < y + near; i++) {
      if (meet(line, line, others.get(i), others.get(i))
          || (i > 0 && meet(line, line, others.get(i - 1), others.get(i)))) {
        return true;
      }
    }
    return false;
  }

  /** Whether one of the others stands centred on two lines. */
  private static boolean isPairLevel(Fragment first, Fragment second, List<Fragment> others) {
    double y = (first.box().centreY() + second.box().centreY()) / 2;
    int i = firstFrom(others, y - first.size());
    for (; i < others.size() && others.get(i).box().centreY() < y + first.size(); i++) {
      if (meet(first, second, others.get(i), others.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** Whether the middles of two pairs of neighbouring lines of about the same print are level. */
  private static boolean meet(Fragment a, Fragment b, Fragment c, Fragment d) {
    double ratio = a.size() / c.size();
    double pitch =
        Math.max(b.box().centreY() - a.box().centreY(), d.box().centreY() - c.box().centreY());
    double middle = (a.box().centreY() + b.box().centreY()) / 2;
    double other = (c.box().centreY() + d.box().centreY()) / 2;
    return Math.abs(middle - other) <= SLACK * a.size()
        && pitch < PITCH * a.size()
        && ratio > SAME_PRINT
        && ratio < 1 / SAME_PRINT;
  }

  /** Index of the first fragment whose middle lies at y or below. */
  private static int firstFrom(List<Fragment> sorted, double y) {
    int low = 0;
    int high = sorted.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (sorted.get(middle).box().centreY() < y) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
