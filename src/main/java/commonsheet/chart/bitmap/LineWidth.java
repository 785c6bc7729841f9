package commonsheet.chart.bitmap;

/** How thick the lines in some ink are. */
final class LineWidth {
  private static final int MOST = 40;

  /** Thickness in line widths of what is no line, and the most of it there may be. */
  private static final double BLOB = 1.9;

  private static final double MOST_BLOBS = 0.5;

  private LineWidth() {}

  /**
   * The usual thickness in pixels: the middle one, along the lines, of the shorter way through the
   * ink. Markers are thicker, but there is more line between them.
   *
   * @param skeleton the middles of the lines
   */
  static double of(boolean[] ink, boolean[] skeleton, int width, int height) {
    int[] counts = new int[MOST + 1];
    int total = 0;
    for (int i = 0; i < skeleton.length; i++) {
      if (skeleton[i]) {
        int x = i % width;
        int across = run(ink, i, 1, x, width - 1 - x);
        int y = i / width;
        int down = run(ink, i, width, y, height - 1 - y);
        counts[Math.min(across, down)]++;
        total++;
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

  /**
   * A skeleton without what lies in thick ink: markers, and places where lines run into one
   * another. What goes on beyond is told by where lines lead, not by the form of a marker.
   */
  static boolean[] withoutBlobs(boolean[] ink, boolean[] skeleton, int width, double lineWidth) {
    boolean[] lines = skeleton.clone();
    int height = skeleton.length / width;
    int all = 0;
    int thick = 0;
    for (int i = 0; i < skeleton.length; i++) {
      if (skeleton[i]) {
        int x = i % width;
        int y = i / width;
        int across = run(ink, i, 1, x, width - 1 - x);
        int down = run(ink, i, width, y, height - 1 - y);
        all++;
        if (Math.min(across, down) > BLOB * lineWidth + 1) {
          thick++;
          lines[i] = false;
        }
      }
    }
    return thick > MOST_BLOBS * all ? skeleton : lines;
  }

  /** Pixels of ink in a row through one of them, at most {@link #MOST}. */
  private static int run(boolean[] ink, int i, int step, int before, int after) {
    int length = 1;
    for (int k = 1; k <= before && length < MOST && ink[i - k * step]; k++) {
      length++;
    }
    for (int k = 1; k <= after && length < MOST && ink[i + k * step]; k++) {
      length++;
    }
    return length;
  }
}
