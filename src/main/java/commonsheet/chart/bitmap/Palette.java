package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The inks of a plot, found by themselves: the pieces of line are grouped by the direction in which
 * they differ from the ground, averaged along each piece so that noise and blurred edges cancel.
 * Greys of every strength are one ink.
 */
final class Palette {
  /** Strength from which a pixel counts as ink. */
  static final double INK = 26;

  /** Length in pixels that the dots of a dotted line count for at least. */
  private static final int DOT = 3;

  /** Cosine of the angle between inks that are told apart, 12 degrees. */
  private static final double ALIKE = 0.978;

  /** Angle of hue within which pieces are of one ink, in degrees. */
  private static final double SAME_HUE = 14;

  /** Length of line that an ink must have, as a share of the plot's width. */
  private static final double LEAST = 0.06;

  /** Share of a stronger ink's length below which a mixture of two is taken for their edge. */
  private static final double EDGE_SHARE = 0.35;

  private Palette() {}

  /** The inks of a plot: coloured ones by length of line, then the grey one if there is any. */
  static List<Tone> of(Field field, boolean[] ink) {
    boolean[] lines = Skeleton.of(ink, field.width, field.height);
    List<Group> groups = new ArrayList<>();
    Group grey = new Group();
    List<Chain> chains = new ArrayList<>();
    for (int[] pixels : Chains.of(lines, field.width, field.height)) {
      chains.add(new Chain(pixels, tone(field, pixels)));
    }
    chains.sort(Comparator.comparingInt(c -> -c.length()));
    for (Chain chain : chains) {
      if (chain.tone().isGrey()) {
        grey.add(chain);
      } else {
        place(groups, chain);
      }
    }
    List<Tone> inks = new ArrayList<>();
    double least = Math.max(12, LEAST * field.width);
    groups.removeIf(g -> g.length < least);
    groups.sort(Comparator.comparingDouble(g -> -g.length));
    for (Group group : groups) {
      if (!isEdge(group, groups)) {
        inks.add(group.ink());
      }
    }
    if (grey.length >= least) {
      inks.add(grey.ink());
    }
    return inks;
  }

  /** The average of a piece of line at its strongest. */
  static Tone tone(Field field, int[] pixels) {
    Tone sum = new Tone(0, 0, 0);
    for (int i : pixels) {
      sum = sum.plus(field.tone(strongest(field, i)), 1);
    }
    return sum.times(1.0 / pixels.length);
  }

  private static int strongest(Field field, int i) {
    int best = i;
    int w = field.width;
    for (int k : new int[] {i - 1, i + 1, i - w, i + w}) {
      if (k >= 0 && k < field.size() && field.strength[k] > field.strength[best]) {
        best = k;
      }
    }
    return best;
  }

  private static void place(List<Group> groups, Chain chain) {
    Group best = null;
    double likeness = ALIKE;
    for (Group group : groups) {
      double l = group.sum.likeness(chain.tone());
      if (l > likeness && group.sum.hueAngle(chain.tone()) < SAME_HUE) {
        best = group;
        likeness = l;
      }
    }
    if (best == null) {
      best = new Group();
      groups.add(best);
    }
    best.add(chain);
  }

  /** Whether an ink is but the blurred edge between two that lie side by side. */
  private static boolean isEdge(Group group, List<Group> groups) {
    for (Group a : groups) {
      for (Group b : groups) {
        if (a == group || b == group || a == b) {
          continue;
        }
        if (group.length < EDGE_SHARE * Math.min(a.length, b.length)
            && isBetween(group.ink(), a.ink(), b.ink())) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isBetween(Tone middle, Tone a, Tone b) {
    double x = b.light() - a.light();
    double y = b.red() - a.red();
    double z = b.blue() - a.blue();
    double along =
        (middle.light() - a.light()) * x
            + (middle.red() - a.red()) * y
            + (middle.blue() - a.blue()) * z;
    double share = along / Math.max(1e-9, x * x + y * y + z * z);
    if (share < 0.1 || share > 0.9) {
      return false;
    }
    Tone mixed = a.times(1 - share).plus(b, share);
    return mixed.plus(middle, -1).strength() < 0.15 * middle.strength();
  }

  /** Pieces of line of one ink. */
  private static final class Group {
    private final List<Chain> chains = new ArrayList<>();
    private Tone sum = new Tone(0, 0, 0);
    private double length;

    void add(Chain chain) {
      chains.add(chain);
      double weight = Math.max(DOT, chain.length());
      sum = sum.plus(chain.tone(), weight);
      length += weight;
    }

    /** The ink where it lies thickest: thin pieces are weakened by their edges. */
    Tone ink() {
      List<Chain> sorted = new ArrayList<>(chains);
      sorted.sort(Comparator.comparingDouble(c -> c.tone().strength()));
      double seen = 0;
      for (Chain chain : sorted) {
        seen += Math.max(DOT, chain.length());
        if (seen >= 0.7 * length) {
          double mean = sum.strength() / Math.max(1, length);
          return sum.times(chain.tone().strength() / Math.max(1e-9, mean) / length);
        }
      }
      return sum.times(1 / Math.max(1, length));
    }
  }
}
