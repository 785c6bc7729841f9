package commonsheet.chart.bitmap;

import commonsheet.chart.plot.InkStyle;

/** Tells a legend's sample with a marker on it: a level line, and in its middle something thick. */
final class MarkedSample {
  /** Length of a sample in its heights at least, and of the line on either side, as a share. */
  private static final double LEAST_LENGTH = 1.7;

  private static final double SIDES = 0.15;

  /** Height of a marker in line widths and pixels at least and at most. */
  private static final double LEAST_WIDTHS = 1.6;

  private static final double MOST_WIDTHS = 10;

  private static final double PIXELS = 2;

  /** How far the middle of a marker may be from that of its sample, as a share of the length. */
  private static final double OFF_MIDDLE = 0.15;

  private MarkedSample() {}

  /** Largest height of a sample with a marker, in pixels. */
  static double highest(double lineWidth) {
    return MOST_WIDTHS * lineWidth + PIXELS;
  }

  /**
   * The marker of a sample; {@link InkStyle.Marker#NONE} where a piece of ink is no such sample.
   *
   * @param owner which ink each pixel is of
   * @param kind the ink of the piece
   * @param width of the picture that owner describes
   */
  static InkStyle.Marker of(byte[] owner, byte kind, int width, Area piece, double lineWidth) {
    int left = (int) piece.left();
    int length = (int) piece.right() - left + 1;
    int top = (int) piece.top();
    int height = (int) piece.bottom() - top + 1;
    if (length < LEAST_LENGTH * height
        || height < LEAST_WIDTHS * lineWidth + PIXELS
        || height > highest(lineWidth)) {
      return InkStyle.Marker.NONE;
    }
    double thin = lineWidth + PIXELS;
    int first = -1;
    int last = -1;
    double area = 0;
    double moment = 0;
    for (int x = 0; x < length; x++) {
      int count = 0;
      double sum = 0;
      for (int y = 0; y < height; y++) {
        if (owner[(top + y) * width + left + x] == kind) {
          count++;
          sum += y;
        }
      }
      boolean side = x < SIDES * length || x >= (1 - SIDES) * length;
      if (count == 0 || side && count > thin) {
        return InkStyle.Marker.NONE;
      }
      if (count > thin) {
        first = first < 0 ? x : first;
        last = x;
        area += count;
        moment += sum;
      }
    }
    double middle = (first + last) / 2.0;
    if (first < 0 || Math.abs(middle - (length - 1) / 2.0) > OFF_MIDDLE * length) {
      return InkStyle.Marker.NONE;
    }
    double lean = (moment / area - (height - 1) / 2.0) / height;
    return Markers.kind(area / ((double) (last - first + 1) * height), lean);
  }
}
