package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Joins pieces of line end to end: over crossings, under what is drawn over them, over the gaps of
 * dashes. Short gaps are closed first, so that what is put together shows its direction better for
 * the wider ones; of several ways on the straightest over the least empty ground is taken.
 */
final class Linker {
  /** Cost of a pixel of empty ground, and of one where other ink lies, in a gap. */
  private static final double EMPTY = 0.5;

  private static final double COVERED = 0.1;

  /** Cost of turning by a radian, squared, at either end of a gap; per pixel of the gap. */
  private static final double TURN = 30;

  private static final double TURN_PER_PIXEL = 2;

  /** Sharpest turn at a joint over a short gap, and over a long one, in radians. */
  private static final double SHARPEST = 0.9;

  private static final double SHARPEST_FAR = 0.5;

  /** Sharpest turn over empty ground, where nothing hides a bend. */
  private static final double SHARPEST_EMPTY = 0.45;

  /** Sharpest corner of a curve in radians, and pixels of line on both sides of it. */
  private static final double SHARPEST_CORNER = 1.75;

  private static final double CORNER_LINE = 14;

  /** Length of the level line at a corner, as a share of the plot's width. */
  private static final double LEVEL_LINE = 0.1;

  /** Rounds of joining over gaps of one size; each can double the length of a row of dots. */
  private static final int ROUNDS = 8;

  private final Layer layer;
  private final List<Chain> pieces;
  private final double lineWidth;
  private final int[] partner;
  private final double[] rivalry;
  private final double[] taken;
  private final int[] whole;
  private final double[] bearings;

  /** Pixels that a piece must have to be joined now: first what is plainly a line. */
  private double shortest;

  private double sharpestEmpty = SHARPEST_EMPTY;

  /** Whether long lines may be joined at corners, as where a constant current begins to fall. */
  private boolean corners;

  private Linker(Layer layer, List<Chain> pieces, double lineWidth) {
    this.layer = layer;
    this.pieces = pieces;
    this.lineWidth = lineWidth;
    this.partner = new int[2 * pieces.size()];
    this.rivalry = new double[2 * pieces.size()];
    this.taken = new double[2 * pieces.size()];
    this.whole = new int[pieces.size()];
    this.bearings = new Bearings(pieces, layer.width(), lineWidth).angles();
    Arrays.fill(partner, -1);
    for (int i = 0; i < whole.length; i++) {
      whole[i] = i;
    }
  }

  /**
   * The lines that pieces make up.
   *
   * @param lineWidth in pixels
   */
  static List<Strand> join(Layer layer, List<Chain> pieces, double lineWidth) {
    Linker linker = new Linker(layer, pieces, lineWidth);
    double w = lineWidth;
    double across = layer.width();
    linker.shortest = 3 * w + 4;
    linker.passes(5 * w + 8, 1.5);
    linker.shortest = 0;
    linker.passes(w + 2.5, w + 2.5);
    linker.passes(1.5 * w + 3.5, 1.5 * w + 3.5);
    linker.passes(2 * w + 4, 2 * w + 4);
    linker.passes(4 * w + 8, 4 * w + 6);
    linker.passes(Math.max(6 * w + 10, 0.03 * across), Math.max(6 * w, 0.025 * across));
    linker.passes(Math.max(8 * w + 12, 0.08 * across), Math.max(6 * w, 0.025 * across));
    linker.passes(0.25 * across, 4 * w + 4);
    linker.sharpestEmpty = SHARPEST;
    linker.passes(4 * w + 8, 4 * w + 6);
    linker.corners = true;
    linker.passes(3 * w + 6, 3 * w + 6);
    return linker.strands();
  }

  private record Link(int a, int b, double cost) {}

  /** Joins what can be joined over gaps of some size, until nothing more is. */
  private void passes(double longestGap, double mostEmpty) {
    int rounds = 0;
    while (pass(longestGap, mostEmpty) && rounds < ROUNDS) {
      rounds++;
    }
  }

  private boolean pass(double longestGap, double mostEmpty) {
    List<int[]> free = freeEnds();
    List<Link> links = new ArrayList<>();
    double[][] ends = new double[partner.length][];
    for (int[] e : free) {
      ends[e[0]] = end(e[0]);
    }
    free.sort(Comparator.comparingInt(e -> e[1]));
    for (int i = 0; i < free.size(); i++) {
      int a = free.get(i)[0];
      for (int k = i + 1; k < free.size(); k++) {
        if (free.get(k)[1] - free.get(i)[1] > longestGap) {
          break;
        }
        int b = free.get(k)[0];
        if (root(a / 2) != root(b / 2)) {
          double cost = cost(ends[a], ends[b], longestGap, mostEmpty);
          if (cost < Double.MAX_VALUE) {
            links.add(new Link(a, b, cost + colours(a, b)));
          }
        }
      }
    }
    links.sort(Comparator.comparingDouble(Link::cost));
    boolean[] stale = new boolean[partner.length];
    boolean joined = false;
    for (Link link : links) {
      if (stale[link.a] || stale[link.b]) {
        continue;
      }
      if (partner[link.a] >= 0 || partner[link.b] >= 0) {
        note(link);
      } else if (root(link.a / 2) != root(link.b / 2)) {
        partner[link.a] = link.b;
        partner[link.b] = link.a;
        taken[link.a] = link.cost;
        taken[link.b] = link.cost;
        whole[root(link.a / 2)] = root(link.b / 2);
        joined = true;
        stale(stale, ends, link.a);
        stale(stale, ends, link.b);
      }
    }
    return joined;
  }

  /**
   * A dot takes its direction from what it was joined to, so its other end waits for the next
   * round.
   */
  private static void stale(boolean[] stale, double[][] ends, int end) {
    if (!known(ends[end])) {
      stale[end ^ 1] = true;
    }
  }

  /** Remembers how near a link that was not taken came to the one that was. */
  private void note(Link link) {
    for (int end : new int[] {link.a, link.b}) {
      if (partner[end] >= 0) {
        rivalry[end] = Math.max(rivalry[end], (taken[end] + 1) / (link.cost + 1));
      }
    }
  }

  private int root(int piece) {
    int i = piece;
    while (whole[i] != i) {
      i = whole[i];
    }
    return i;
  }

  private double colours(int a, int b) {
    Tone one = pieces.get(a / 2).tone();
    Tone other = pieces.get(b / 2).tone();
    double difference = one.plus(other, -1).strength();
    return 0.08 * Math.max(0, difference - 12);
  }

  /** Ends of pieces that are not joined yet, with their column. */
  private List<int[]> freeEnds() {
    List<int[]> free = new ArrayList<>();
    for (int e = 0; e < partner.length; e++) {
      int[] pixels = pieces.get(e / 2).pixels();
      if (partner[e] < 0 && pixels.length >= shortest) {
        int pixel = e % 2 == 0 ? pixels[0] : pixels[pixels.length - 1];
        free.add(new int[] {e, pixel % layer.width()});
      }
    }
    return free;
  }

  /**
   * Where an end lies and where it points: x, y, direction outward (0, 0 if too short to tell), the
   * length it was told from, and which end it is.
   */
  private double[] end(int e) {
    int want = want();
    double[] xs = new double[want];
    double[] ys = new double[want];
    int n = 0;
    int at = e;
    while (n < want) {
      int[] pixels = pieces.get(at / 2).pixels();
      for (int k = 0; k < pixels.length && n < want; k++) {
        int pixel = at % 2 == 0 ? pixels[k] : pixels[pixels.length - 1 - k];
        xs[n] = pixel % layer.width();
        ys[n] = pixel / layer.width();
        n++;
      }
      int other = at ^ 1;
      if (partner[other] < 0) {
        break;
      }
      at = partner[other];
    }
    double[] direction = direction(xs, ys, n);
    double reach = Math.hypot(xs[0] - xs[n - 1], ys[0] - ys[n - 1]);
    if (Bearings.isDot(reach, lineWidth)) {
      direction = dotDirection(e);
    }
    if (isDot(e / 2)) {
      int[] pixels = pieces.get(e / 2).pixels();
      int middle = pixels[pixels.length / 2];
      xs[0] = middle % layer.width();
      ys[0] = middle / layer.width();
    }
    return new double[] {xs[0], ys[0], direction[0], direction[1], n, e};
  }

  private boolean isDot(int piece) {
    int[] pixels = pieces.get(piece).pixels();
    int last = pixels[pixels.length - 1];
    double dx = pixels[0] % layer.width() - last % layer.width();
    double dy = pixels[0] / layer.width() - last / layer.width();
    return Bearings.isDot(Math.hypot(dx, dy), lineWidth);
  }

  /**
   * The direction of a dot's line, outward at one of its two ends: at which one does not matter as
   * long as they are opposite.
   */
  private double[] dotDirection(int e) {
    double angle = bearings[e / 2];
    if (Double.isNaN(angle)) {
      return new double[2];
    }
    double sign = e % 2 == 0 ? -1 : 1;
    return new double[] {sign * Math.cos(angle), sign * Math.sin(angle)};
  }

  /** Direction of the main axis of some points, pointing to the first of them. */
  private static double[] direction(double[] xs, double[] ys, int n) {
    double reach = Math.hypot(xs[0] - xs[n - 1], ys[0] - ys[n - 1]);
    if (reach < 2) {
      return new double[2];
    }
    double mx = 0;
    double my = 0;
    for (int i = 0; i < n; i++) {
      mx += xs[i] / n;
      my += ys[i] / n;
    }
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int i = 0; i < n; i++) {
      xx += (xs[i] - mx) * (xs[i] - mx);
      xy += (xs[i] - mx) * (ys[i] - my);
      yy += (ys[i] - my) * (ys[i] - my);
    }
    double angle = 0.5 * Math.atan2(2 * xy, xx - yy);
    double ux = Math.cos(angle);
    double uy = Math.sin(angle);
    double sign = ux * (xs[0] - mx) + uy * (ys[0] - my) < 0 ? -1 : 1;
    return new double[] {sign * ux, sign * uy};
  }

  private double cost(double[] a, double[] b, double longestGap, double mostEmpty) {
    double gx = b[0] - a[0];
    double gy = b[1] - a[1];
    double gap = Math.hypot(gx, gy);
    if (gap > longestGap) {
      return Double.MAX_VALUE;
    }
    boolean near = gap <= 2 * lineWidth + 4;
    double sharpest = near ? SHARPEST : SHARPEST_FAR;
    double turn1 = turn(a[2], a[3], gx, gy);
    double turn2 = turn(b[2], b[3], -gx, -gy);
    if (gap < lineWidth + 2.5 && known(a) && known(b)) {
      // too near for the way between them to have a direction of its own
      double whole = turn(a[2], a[3], -b[2], -b[3]);
      turn1 = whole / 2 + 0.25 * Math.min(1.2, turn1);
      turn2 = whole / 2 + 0.25 * Math.min(1.2, turn2);
      sharpest = whole > SHARPEST ? 0 : 1.1;
    }
    if ((turn1 > sharpest || turn2 > sharpest) && !isCorner(a, b)) {
      return Double.MAX_VALUE;
    }
    double empty = empty(a, gx, gy, gap);
    if (empty > mostEmpty
        || empty > 2 && Math.max(turn1, turn2) > sharpestEmpty && !isCorner(a, b)) {
      return Double.MAX_VALUE;
    }
    if (!near && (!known(a) || !known(b)) && gap > 5 * lineWidth + 6) {
      return Double.MAX_VALUE;
    }
    return EMPTY * empty
        + COVERED * (gap - empty)
        + (TURN + TURN_PER_PIXEL * gap) * (turn1 * turn1 + turn2 * turn2);
  }

  /** Whether two long lines can meet in a corner without going back across the plot. */
  private boolean isCorner(double[] a, double[] b) {
    if (!corners || !isLevel(a) && !isLevel(b)) {
      return false;
    }
    double long1 = a[4];
    double long2 = b[4];
    double enough = Math.min(want(), CORNER_LINE);
    return known(a)
        && known(b)
        && Math.min(long1, long2) >= enough
        && a[2] * -b[2] > -0.05
        && turn(a[2], a[3], -b[2], -b[3]) < SHARPEST_CORNER;
  }

  /** Whether an end belongs to a long level line. */
  private boolean isLevel(double[] end) {
    int[] pixels = pieces.get((int) end[5] / 2).pixels();
    int first = pixels[0] / layer.width();
    int last = pixels[pixels.length - 1] / layer.width();
    return pixels.length > LEVEL_LINE * layer.width() && Math.abs(first - last) <= 2;
  }

  /** Points from which the direction of an end is told. */
  private int want() {
    return (int) Math.round(4 * lineWidth + 8);
  }

  private static boolean known(double[] end) {
    return end[2] != 0 || end[3] != 0;
  }

  private static double turn(double ux, double uy, double gx, double gy) {
    double length = Math.hypot(gx, gy) * Math.hypot(ux, uy);
    if (length < 1e-9) {
      return 0.15;
    }
    return Math.acos(Math.max(-1, Math.min(1, (ux * gx + uy * gy) / length)));
  }

  /** Pixels of empty ground between two ends. */
  private double empty(double[] a, double gx, double gy, double gap) {
    int steps = (int) Math.ceil(gap);
    int empty = 0;
    for (int k = 1; k < steps; k++) {
      int x = (int) Math.round(a[0] + gx * k / steps);
      int y = (int) Math.round(a[1] + gy * k / steps);
      int i = y * layer.width() + x;
      if (!layer.covered()[i] && layer.share()[i] < 0.3) {
        empty++;
      }
    }
    return empty;
  }

  private List<Strand> strands() {
    List<Strand> out = new ArrayList<>();
    boolean[] done = new boolean[pieces.size()];
    for (int e = 0; e < partner.length; e++) {
      if (!done[e / 2] && partner[e] < 0) {
        out.add(strand(e, done));
      }
    }
    return out;
  }

  private Strand strand(int start, boolean[] done) {
    List<Integer> entries = new ArrayList<>();
    int total = 0;
    double doubt = 0;
    Tone sum = new Tone(0, 0, 0);
    for (int at = start; at >= 0; at = partner[at ^ 1]) {
      entries.add(at);
      done[at / 2] = true;
      Chain piece = pieces.get(at / 2);
      total += isDot(at / 2) && partner[at] >= 0 ? 1 : piece.length();
      sum = sum.plus(piece.tone(), piece.length());
      doubt = Math.max(doubt, Math.max(rivalry[at], rivalry[at ^ 1]));
    }
    double[] xs = new double[total];
    double[] ys = new double[total];
    boolean[] bridged = new boolean[total];
    int n = 0;
    for (int at : entries) {
      int[] pixels = pieces.get(at / 2).pixels();
      bridged[n] = n > 0;
      boolean dot = isDot(at / 2) && partner[at] >= 0;
      for (int k = dot ? pixels.length / 2 : 0;
          k < (dot ? pixels.length / 2 + 1 : pixels.length);
          k++) {
        int pixel = at % 2 == 0 ? pixels[k] : pixels[pixels.length - 1 - k];
        xs[n] = pixel % layer.width();
        ys[n] = pixel / layer.width();
        n++;
      }
    }
    return new Strand(xs, ys, bridged, sum.times(1.0 / total), doubt);
  }
}
