package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the lines that lead from words to curves by looking from the words: a straight line that
 * begins beside a word and ends where it meets another one. Found so, a leader can be taken out
 * before curves are followed, and no curve turns off into it.
 */
final class LabelLeaders {
  /** How far from a word its leader begins, in heights of the word. */
  private static final double BESIDE = 1.2;

  /** Shortest leader in heights of the word, and in pixels. */
  private static final double SHORTEST_HEIGHTS = 2;

  private static final double SHORTEST = 16;

  /** Pixels a leader may be interrupted, as by noise. */
  private static final int GAP = 2;

  /** Angles in which a leader is looked for, in a full turn; the best is then found finer. */
  private static final int DIRECTIONS = 360;

  private static final int FINER = 10;

  /** Angle within which a line beyond the end goes on, in radians. */
  private static final double ONWARD = 0.35;

  /** Angle within which a line at the end is the leader itself, in radians. */
  private static final double BACK = 0.6;

  /** Ends nearer than this, in pixels, are those of one leader. */
  private static final double SAME = 5;

  /** Longest leader, as a share of the plot's width and height together. */
  private static final double LONGEST = 0.75;

  private final Field field;
  private final boolean[] ink;
  private final boolean[] middles;
  private final double lineWidth;

  /**
   * @param ink what is neither ground nor ruling
   */
  LabelLeaders(Field field, boolean[] ink) {
    this.field = field;
    this.ink = ink;
    this.middles = Skeleton.of(ink, field.width, field.height);
    this.lineWidth = LineWidth.of(ink, middles, field.width, field.height);
  }

  /** A leader from its word to its curve, in pixels of the field, with its thickness. */
  record Leader(double x0, double y0, double x1, double y1, double thickness, Area word) {
    /** How far from its word it begins, in pixels. */
    double fromWord() {
      double dx = Math.max(0, Math.max(word.left() - x0, x0 - word.right()));
      double dy = Math.abs(y0 - (word.top() + word.bottom()) / 2);
      return Math.hypot(dx, dy);
    }

    double length() {
      return Math.hypot(x1 - x0, y1 - y0);
    }
  }

  /**
   * The leaders of words.
   *
   * @param words boxes of words in pixels of the field
   */
  List<Leader> of(List<Area> words) {
    List<Leader> all = new ArrayList<>();
    for (Area word : words) {
      all.addAll(of(word, words));
    }
    all.sort(Comparator.comparingDouble(Leader::fromWord).thenComparing(l -> -l.length()));
    List<Leader> found = new ArrayList<>();
    for (Leader leader : all) {
      if (found.stream().noneMatch(f -> f.word == leader.word || isSame(f, leader))) {
        found.add(leader);
      }
    }
    return found;
  }

  /** Whether two run along each other, so that they are one seen from two words. */
  private static boolean isSame(Leader one, Leader other) {
    double along = Math.hypot(one.x1 - other.x1, one.y1 - other.y1);
    double start = Math.hypot(one.x0 - other.x0, one.y0 - other.y0);
    return along < SAME && start < 2 * SAME;
  }

  /** All lines that may be the leader of a word. */
  private List<Leader> of(Area word, List<Area> words) {
    double reach = BESIDE * word.height();
    List<Leader> found = new ArrayList<>();
    for (int y = (int) (word.top() - reach); y <= word.bottom() + reach; y++) {
      for (int x = (int) (word.left() - reach); x <= word.right() + reach; x++) {
        if (isMiddle(x, y) && !isIn(words, x, y)) {
          Leader leader = from(x, y, word, reach);
          if (leader != null && !isIn(words, leader.x1, leader.y1)) {
            found.add(leader);
          }
        }
      }
    }
    return found;
  }

  private static boolean isIn(List<Area> words, double x, double y) {
    return words.stream().anyMatch(word -> word.grown(-1).contains(x, y));
  }

  private boolean isMiddle(int x, int y) {
    return x > 0
        && y > 0
        && x < field.width - 1
        && y < field.height - 1
        && middles[y * field.width + x];
  }

  /** The longest straight line from a place away from a word, if it is a leader. */
  private Leader from(int x, int y, Area word, double reach) {
    double longest = Math.max(SHORTEST, SHORTEST_HEIGHTS * word.height());
    double angle = Double.NaN;
    for (int d = 0; d < DIRECTIONS; d++) {
      double length = run(x, y, 2 * Math.PI * d / DIRECTIONS);
      if (length > longest) {
        longest = length;
        angle = 2 * Math.PI * d / DIRECTIONS;
      }
    }
    if (Double.isNaN(angle)) {
      return null;
    }
    double coarse = angle;
    for (int k = -FINER; k <= FINER; k++) {
      double finer = coarse + 2 * Math.PI * k / DIRECTIONS / FINER;
      double length = run(x, y, finer);
      if (length > longest) {
        longest = length;
        angle = finer;
      }
    }
    if (longest > LONGEST * (field.width + field.height) / 2) {
      return null;
    }
    double back = run(x, y, angle + Math.PI);
    double x0 = x - back * Math.cos(angle);
    double y0 = y - back * Math.sin(angle);
    double x1 = x + longest * Math.cos(angle);
    double y1 = y + longest * Math.sin(angle);
    boolean beside = word.grown(reach).contains(x0, y0);
    boolean away = !word.grown(reach).contains(x1, y1);
    return beside && away && isMeeting(x1, y1, angle)
        ? new Leader(x0, y0, x1, y1, thickness(x0, y0, x1, y1), word)
        : null;
  }

  /** How far ink goes straight on from a place. */
  private double run(int x, int y, double angle) {
    double dx = Math.cos(angle);
    double dy = Math.sin(angle);
    int last = 0;
    for (int t = 1; t - last <= GAP + 1; t++) {
      if (isInk(x + t * dx, y + t * dy)) {
        last = t;
      }
    }
    return last;
  }

  private boolean isInk(double x, double y) {
    int column = (int) Math.round(x);
    int row = (int) Math.round(y);
    return column >= 0
        && row >= 0
        && column < field.width
        && row < field.height
        && ink[row * field.width + column];
  }

  /** Whether a line that ends here ends on another, which leaves to two sides and not onward. */
  private boolean isMeeting(double x, double y, double angle) {
    double radius = 2 * lineWidth + 4;
    int steps = (int) Math.ceil(2 * Math.PI * radius * 1.5);
    int branches = 0;
    boolean before = false;
    boolean onward = false;
    for (int k = 0; k <= steps; k++) {
      double off = 2 * Math.PI * k / steps - Math.PI;
      boolean back = Math.abs(off) > Math.PI - BACK;
      boolean on =
          !back && isInk(x + radius * Math.cos(angle + off), y + radius * Math.sin(angle + off));
      onward |= on && Math.abs(off) < ONWARD;
      branches += on && !before ? 1 : 0;
      before = on;
    }
    return branches == 2 && !onward;
  }

  /** The usual thickness along a line: the middle one of the ways through the ink across it. */
  private double thickness(double x0, double y0, double x1, double y1) {
    double length = Math.hypot(x1 - x0, y1 - y0);
    double dx = (x1 - x0) / length;
    double dy = (y1 - y0) / length;
    int n = (int) length;
    int[] across = new int[n];
    for (int t = 0; t < n; t++) {
      across[t] = 1;
      for (int side = -1; side <= 1; side += 2) {
        for (int k = 1; k < 20; k++) {
          if (!isInk(x0 + t * dx - side * k * dy, y0 + t * dy + side * k * dx)) {
            break;
          }
          across[t]++;
        }
      }
    }
    Arrays.sort(across);
    return across[n / 2];
  }

  /**
   * Takes the ink of leaders away, but for their ends, which lie on the curve.
   *
   * @param ruled gets true where their ink lies
   * @param hidden gets true there too: a curve may go on under it
   */
  void takeOut(List<Leader> leaders, boolean[] ruled, boolean[] hidden) {
    for (Leader leader : leaders) {
      double length = leader.length();
      double dx = (leader.x1 - leader.x0) / length;
      double dy = (leader.y1 - leader.y0) / length;
      double to = length - lineWidth / 2 - 1;
      double half = leader.thickness / 2 + 0.8;
      for (double t = 0; t < to; t += 0.5) {
        for (double k = -half; k <= half; k += 0.5) {
          int x = (int) Math.round(leader.x0 + t * dx - k * dy);
          int y = (int) Math.round(leader.y0 + t * dy + k * dx);
          if (x >= 0 && y >= 0 && x < field.width && y < field.height) {
            ruled[y * field.width + x] = true;
            hidden[y * field.width + x] = true;
          }
        }
      }
    }
  }
}
