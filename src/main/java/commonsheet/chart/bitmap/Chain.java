package commonsheet.chart.bitmap;

/**
 * Pixels of a line one after the other, without a branch.
 *
 * @param pixels their indices in the field, from one end to the other
 * @param tone what the ink there looks like
 */
record Chain(int[] pixels, Tone tone) {
  int length() {
    return pixels.length;
  }
}
