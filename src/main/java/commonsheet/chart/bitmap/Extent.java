package commonsheet.chart.bitmap;

/**
 * How far an ink goes across and down a plot.
 *
 * @param width in pixels
 * @param height in pixels
 * @param single share of the columns in which it lies in one place only
 */
record Extent(int width, int height, double single) {
  /** Share of the columns with one place of ink from which it is one curve. */
  private static final double ONE_CURVE = 0.9;

  /** Ink in a column at most this many line widths apart is in one place. */
  private static final double SAME_PLACE = 4;

  static Extent of(boolean[] ink, int columns, int rows, double lineWidth) {
    int left = columns;
    int right = -1;
    int top = rows;
    int bottom = -1;
    int used = 0;
    int single = 0;
    double apart = SAME_PLACE * lineWidth + 4;
    for (int x = 0; x < columns; x++) {
      int last = -1;
      int places = 0;
      for (int y = 0; y < rows; y++) {
        if (ink[y * columns + x]) {
          if (last < 0 || y - last > apart) {
            places++;
          }
          last = y;
          top = Math.min(top, y);
          bottom = Math.max(bottom, y);
        }
      }
      if (places > 0) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        used++;
        single += places == 1 ? 1 : 0;
      }
    }
    return new Extent(
        Math.max(0, right - left + 1),
        Math.max(0, bottom - top + 1),
        (double) single / Math.max(1, used));
  }

  boolean isOneCurve() {
    return single >= ONE_CURVE;
  }
}
