package commonsheet.chart.bitmap;

/**
 * How much of one ink each pixel of a field has.
 *
 * @param ink what the ink looks like
 * @param share 0 to 1 for each pixel, beyond 1 where it lies thicker than usual
 * @param covered where other ink lies, under which this one may go on
 */
record Layer(Tone ink, int width, int height, float[] share, boolean[] covered) {
  double share(double x, double y) {
    int x0 = (int) Math.floor(x);
    int y0 = (int) Math.floor(y);
    if (x0 < 0 || y0 < 0 || x0 >= width - 1 || y0 >= height - 1) {
      return 0;
    }
    double fx = x - x0;
    double fy = y - y0;
    int i = y0 * width + x0;
    double upper = share[i] * (1 - fx) + share[i + 1] * fx;
    double lower = share[i + width] * (1 - fx) + share[i + width + 1] * fx;
    return upper * (1 - fy) + lower * fy;
  }
}
