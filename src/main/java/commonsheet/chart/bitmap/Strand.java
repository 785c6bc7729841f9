package commonsheet.chart.bitmap;

/**
 * A line put together from pieces: its pixels in order.
 *
 * @param x columns
 * @param y rows
 * @param bridged whether the line was not seen between the point before and this one
 * @param tone what its ink looks like
 * @param doubt how nearly a joint could have gone another way, 0 for not at all, 1 for evenly
 */
record Strand(double[] x, double[] y, boolean[] bridged, Tone tone, double doubt) {
  int length() {
    return x.length;
  }

  double minX() {
    return min(x);
  }

  double maxX() {
    return max(x);
  }

  double minY() {
    return min(y);
  }

  double maxY() {
    return max(y);
  }

  double spanX() {
    return maxX() - minX();
  }

  double spanY() {
    return maxY() - minY();
  }

  private static double min(double[] values) {
    double least = Double.MAX_VALUE;
    for (double v : values) {
      least = Math.min(least, v);
    }
    return least;
  }

  private static double max(double[] values) {
    double most = -Double.MAX_VALUE;
    for (double v : values) {
      most = Math.max(most, v);
    }
    return most;
  }
}
