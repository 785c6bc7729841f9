package commonsheet.chart.bitmap;

/**
 * Thins ink to lines one pixel wide (Z. Guo and R. W. Hall, "Parallel thinning with
 * two-subiteration algorithms", Communications of the ACM 32(3), 1989, first algorithm).
 */
final class Skeleton {
  /** Rounds at most: ink thicker than twice that is no line. */
  private static final int ROUNDS = 60;

  private final boolean[] on;
  private final int width;
  private int[] alive;
  private int count;

  private Skeleton(boolean[] ink, int width, int height) {
    this.on = ink.clone();
    this.width = width;
    for (int x = 0; x < width; x++) {
      on[x] = false;
      on[(height - 1) * width + x] = false;
    }
    for (int y = 0; y < height; y++) {
      on[y * width] = false;
      on[y * width + width - 1] = false;
    }
    alive = new int[on.length];
    for (int i = 0; i < on.length; i++) {
      if (on[i]) {
        alive[count++] = i;
      }
    }
  }

  /** The lines left of some ink; pixels at the very edge are not looked at. */
  static boolean[] of(boolean[] ink, int width, int height) {
    if (width < 3 || height < 3) {
      return new boolean[ink.length];
    }
    Skeleton skeleton = new Skeleton(ink, width, height);
    int[] gone = new int[skeleton.count];
    boolean again = true;
    for (int round = 0; again && round < ROUNDS; round++) {
      again = skeleton.pass(0, gone);
      again |= skeleton.pass(1, gone);
    }
    return skeleton.on;
  }

  private boolean pass(int turn, int[] gone) {
    int removed = 0;
    for (int k = 0; k < count; k++) {
      if (isRemovable(alive[k], turn)) {
        gone[removed++] = alive[k];
      }
    }
    for (int k = 0; k < removed; k++) {
      on[gone[k]] = false;
    }
    int kept = 0;
    for (int k = 0; k < count; k++) {
      if (on[alive[k]]) {
        alive[kept++] = alive[k];
      }
    }
    count = kept;
    return removed > 0;
  }

  private boolean isRemovable(int i, int turn) {
    boolean p2 = on[i - width];
    boolean p3 = on[i - width + 1];
    boolean p4 = on[i + 1];
    boolean p5 = on[i + width + 1];
    boolean p6 = on[i + width];
    boolean p7 = on[i + width - 1];
    boolean p8 = on[i - 1];
    boolean p9 = on[i - width - 1];
    int crossings =
        one(!p2 && (p3 || p4))
            + one(!p4 && (p5 || p6))
            + one(!p6 && (p7 || p8))
            + one(!p8 && (p9 || p2));
    if (crossings != 1) {
      return false;
    }
    int first = one(p9 || p2) + one(p3 || p4) + one(p5 || p6) + one(p7 || p8);
    int second = one(p2 || p3) + one(p4 || p5) + one(p6 || p7) + one(p8 || p9);
    int neighbours = Math.min(first, second);
    if (neighbours < 2 || neighbours > 3) {
      return false;
    }
    return turn == 0 ? !((p6 || p7 || !p9) && p8) : !((p2 || p3 || !p5) && p4);
  }

  private static int one(boolean is) {
    return is ? 1 : 0;
  }
}
