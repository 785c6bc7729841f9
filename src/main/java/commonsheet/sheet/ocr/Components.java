package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.List;

/** Finds the connected areas of a probability map, eight neighbours to a pixel. */
final class Components {
  private final ProbabilityMap map;
  private final float threshold;
  private final boolean[] seen;
  private int[] waiting = new int[1024];
  private int waits;

  private Components(ProbabilityMap map, float threshold) {
    this.map = map;
    this.threshold = threshold;
    this.seen = new boolean[map.values().length];
  }

  /**
   * An area of likely pixels.
   *
   * @param mean of their probabilities
   * @param outline corners of the first and last pixel of every row, which hold its convex hull
   */
  record Component(int pixels, double mean, List<Hull.Corner> outline) {}

  /** All areas of pixels above a threshold. */
  static List<Component> above(ProbabilityMap map, float threshold) {
    return new Components(map, threshold).find();
  }

  private List<Component> find() {
    List<Component> found = new ArrayList<>();
    for (int i = 0; i < seen.length; i++) {
      if (!seen[i] && map.values()[i] > threshold) {
        found.add(fill(i));
      }
    }
    return found;
  }

  private Component fill(int start) {
    RowSpans spans = new RowSpans();
    int count = 0;
    double sum = 0;
    push(start);
    while (waits > 0) {
      int at = waiting[--waits];
      int column = at % map.width();
      int row = at / map.width();
      count++;
      sum += map.values()[at];
      spans.add(column, row);
      for (int r = Math.max(0, row - 1); r <= Math.min(map.height() - 1, row + 1); r++) {
        for (int c = Math.max(0, column - 1); c <= Math.min(map.width() - 1, column + 1); c++) {
          int next = r * map.width() + c;
          if (!seen[next] && map.values()[next] > threshold) {
            push(next);
          }
        }
      }
    }
    return new Component(count, sum / count, spans.corners());
  }

  private void push(int at) {
    seen[at] = true;
    if (waits == waiting.length) {
      waiting = java.util.Arrays.copyOf(waiting, waits * 2);
    }
    waiting[waits++] = at;
  }
}
