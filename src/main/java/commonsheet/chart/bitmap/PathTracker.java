package commonsheet.chart.bitmap;

import java.util.Arrays;

/**
 * Follows the one curve of an ink from its left end to the other by the cheapest way through the
 * ink (E. W. Dijkstra, "A note on two problems in connexion with graphs", Numerische Mathematik 1,
 * 1959; with the queue of R. B. Dial, Communications of the ACM 12(11), 1969). It is meant for
 * curves that markers or dashes break into too many pieces to be joined end to end.
 */
final class PathTracker {
  /** Cost of a step through full ink, over other ink, and over empty ground. */
  private static final int INK = 2;

  private static final int COVERED = 18;

  private static final int EMPTY = 34;

  /** Longest way over empty ground that is taken, as a share of the plot's width. */
  private static final double LONGEST_EMPTY = 0.05;

  /** Most it may go outside of the ink in one go, covered or not, as a share of the width. */
  private static final double LONGEST_UNSEEN = 0.15;

  private static final int[] DX = {1, -1, 0, 0, 1, 1, -1, -1};
  private static final int[] DY = {0, 0, 1, -1, 1, -1, 1, -1};

  private final Layer layer;
  private final int[] cost;
  private final int[] from;
  private final int[] gap;

  private PathTracker(Layer layer) {
    this.layer = layer;
    this.cost = new int[layer.share().length];
    this.from = new int[layer.share().length];
    this.gap = new int[layer.share().length];
  }

  /** The pixels of the curve from left to right; none if there is no ink. */
  static int[] follow(Layer layer) {
    int start = leftmost(layer);
    return start < 0 ? new int[0] : new PathTracker(layer).way(start);
  }

  private static boolean isInk(Layer layer, int i) {
    return layer.share()[i] >= 0.5;
  }

  /** The uppermost of the leftmost ink, but for single specks. */
  private static int leftmost(Layer layer) {
    int w = layer.width();
    for (int x = 1; x < w - 3; x++) {
      for (int y = 1; y < layer.height() - 1; y++) {
        int i = y * w + x;
        if (isInk(layer, i)
            && (isInk(layer, i + 1) || isInk(layer, i + 1 + w) || isInk(layer, i + w))) {
          return i;
        }
      }
    }
    return -1;
  }

  private int[] way(int start) {
    spread(start);
    int end = end(start);
    int length = 1;
    for (int i = end; i != start; i = from[i]) {
      length++;
    }
    int[] path = new int[length];
    int i = end;
    for (int k = length - 1; k >= 0; k--) {
      path[k] = i;
      i = from[i];
    }
    return path;
  }

  /** The farthest end of the ink: the rightmost that can be reached, the costliest way there. */
  private int end(int start) {
    int w = layer.width();
    int right = start % w;
    for (int i = 0; i < cost.length; i++) {
      if (cost[i] < Integer.MAX_VALUE && isInk(layer, i)) {
        right = Math.max(right, i % w);
      }
    }
    int near = right - Math.max(2, w / 40);
    int best = start;
    for (int i = 0; i < cost.length; i++) {
      if (cost[i] < Integer.MAX_VALUE && isInk(layer, i) && i % w >= near && cost[i] > cost[best]) {
        best = i;
      }
    }
    return best;
  }

  private void spread(int start) {
    Arrays.fill(cost, Integer.MAX_VALUE);
    int most = (int) Math.max(18, LONGEST_UNSEEN * layer.width());
    int covering = (int) Math.round(LONGEST_UNSEEN / LONGEST_EMPTY);
    int buckets = EMPTY * 2 + 2;
    int[][] queue = new int[buckets][64];
    int[] size = new int[buckets];
    cost[start] = 0;
    queue[0][size[0]++] = start;
    int waiting = 1;
    for (int level = 0; waiting > 0; level++) {
      int b = level % buckets;
      for (int k = 0; k < size[b]; k++) {
        int i = queue[b][k];
        waiting--;
        if (cost[i] != level) {
          continue;
        }
        int x = i % layer.width();
        int y = i / layer.width();
        if (x < 1 || y < 1 || x >= layer.width() - 1 || y >= layer.height() - 1) {
          continue;
        }
        for (int d = 0; d < 8; d++) {
          int j = i + DX[d] + DY[d] * layer.width();
          int step = step(j) * (d < 4 ? 5 : 7) / 5;
          int way = level + step;
          int unseen = isInk(layer, j) ? 0 : gap[i] + (layer.covered()[j] ? 1 : covering);
          if (way < cost[j] && unseen <= most) {
            cost[j] = way;
            from[j] = i;
            gap[j] = unseen;
            int n = way % buckets;
            if (size[n] == queue[n].length) {
              queue[n] = Arrays.copyOf(queue[n], 2 * size[n]);
            }
            queue[n][size[n]++] = j;
            waiting++;
          }
        }
      }
      size[b] = 0;
    }
  }

  private int step(int i) {
    double share = Math.min(1, layer.share()[i]);
    int ground = layer.covered()[i] ? COVERED : EMPTY;
    return (int) Math.round(INK + (1 - share) * (ground - INK));
  }
}
