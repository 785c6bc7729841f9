package commonsheet.chart.bitmap;

/** How thick the lines in some ink are. */
final class LineWidth {
  private static final int MOST = 40;

  private LineWidth() {}

  /** The usual thickness in pixels: the middle one of all pixels' shorter way through the ink. */
  static double of(boolean[] ink, int width, int height) {
    int[] down = new int[ink.length];
    for (int x = 0; x < width; x++) {
      int start = 0;
      for (int y = 0; y <= height; y++) {
        if (y == height || !ink[y * width + x]) {
          for (int k = start; k < y; k++) {
            down[k * width + x] = y - start;
          }
          start = y + 1;
        }
      }
    }
    int[] counts = new int[MOST + 1];
    int total = 0;
    for (int y = 0; y < height; y++) {
      int start = 0;
      for (int x = 0; x <= width; x++) {
        if (x == width || !ink[y * width + x]) {
          for (int k = start; k < x; k++) {
            counts[Math.min(MOST, Math.min(x - start, down[y * width + k]))]++;
            total++;
          }
          start = x + 1;
        }
      }
    }
    int seen = 0;
    for (int i = 0; i <= MOST; i++) {
      seen += counts[i];
      if (2 * seen >= total && total > 0) {
        return Math.max(1, i);
      }
    }
    return 1;
  }
}
