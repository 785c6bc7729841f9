package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Connected pixels of one kind. */
final class Spots {
  private Spots() {}

  /** The boxes around the connected pixels of a kind, from the middle of their outermost pixels. */
  static List<Area> of(byte[] kinds, byte kind, int width, int height) {
    List<Area> out = new ArrayList<>();
    boolean[] seen = new boolean[kinds.length];
    int[] stack = new int[256];
    for (int start = 0; start < kinds.length; start++) {
      if (seen[start] || kinds[start] != kind) {
        continue;
      }
      int depth = 0;
      stack[depth++] = start;
      seen[start] = true;
      int left = width;
      int right = 0;
      int top = height;
      int bottom = 0;
      while (depth > 0) {
        int i = stack[--depth];
        int x = i % width;
        int y = i / width;
        left = Math.min(left, x);
        right = Math.max(right, x);
        top = Math.min(top, y);
        bottom = Math.max(bottom, y);
        for (int dy = -1; dy <= 1; dy++) {
          for (int dx = -1; dx <= 1; dx++) {
            int nx = x + dx;
            int ny = y + dy;
            int j = ny * width + nx;
            if (nx >= 0 && ny >= 0 && nx < width && ny < height && !seen[j] && kinds[j] == kind) {
              seen[j] = true;
              if (depth == stack.length) {
                stack = Arrays.copyOf(stack, 2 * depth);
              }
              stack[depth++] = j;
            }
          }
        }
      }
      out.add(new Area(left, top, right, bottom));
    }
    return out;
  }
}
