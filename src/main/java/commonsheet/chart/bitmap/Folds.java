package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts pieces of line where they turn back: a curve of a chart goes on across the plot. */
final class Folds {
  private Folds() {}

  /**
   * The parts of a piece between the places where it turns back.
   *
   * @param least how far it must go back to count, in pixels
   */
  static List<int[]> cut(int[] pixels, int width, double least) {
    List<int[]> out = new ArrayList<>();
    int start = 0;
    int lowest = 0;
    int highest = 0;
    int heading = 0;
    for (int i = 0; i < pixels.length; i++) {
      int x = pixels[i] % width;
      if (x < pixels[lowest] % width) {
        lowest = i;
      }
      if (x > pixels[highest] % width) {
        highest = i;
      }
      int turned = -1;
      if (heading >= 0 && pixels[highest] % width - x >= least) {
        turned = heading > 0 ? highest : -1;
        heading = -1;
        lowest = i;
      } else if (heading <= 0 && x - pixels[lowest] % width >= least) {
        turned = heading < 0 ? lowest : -1;
        heading = 1;
        highest = i;
      }
      if (turned > start) {
        out.add(Arrays.copyOfRange(pixels, start, turned));
        start = turned;
      }
    }
    out.add(Arrays.copyOfRange(pixels, start, pixels.length));
    return out;
  }
}
