package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts a skeleton where lines meet and lists the pieces in between. */
final class Chains {
  private final boolean[] on;
  private final int width;
  private final int height;

  private Chains(boolean[] skeleton, int width, int height) {
    this.on = skeleton.clone();
    this.width = width;
    this.height = height;
  }

  /** The pieces of a skeleton, as indices of pixels in order. */
  static List<int[]> of(boolean[] skeleton, int width, int height) {
    Chains chains = new Chains(skeleton, width, height);
    chains.cut();
    return chains.follow();
  }

  /** Takes out the places where three lines or more meet, and their neighbours. */
  private void cut() {
    List<Integer> meetings = new ArrayList<>();
    for (int y = 1; y < height - 1; y++) {
      for (int x = 1; x < width - 1; x++) {
        int i = y * width + x;
        if (on[i] && branches(i) >= 3) {
          meetings.add(i);
        }
      }
    }
    for (int i : meetings) {
      for (int dy = -1; dy <= 1; dy++) {
        for (int dx = -1; dx <= 1; dx++) {
          on[i + dy * width + dx] = false;
        }
      }
    }
  }

  /** Separate lines that leave a pixel. */
  private int branches(int i) {
    boolean[] ring = {
      on[i - width], on[i - width + 1], on[i + 1], on[i + width + 1],
      on[i + width], on[i + width - 1], on[i - 1], on[i - width - 1]
    };
    int changes = 0;
    for (int k = 0; k < 8; k++) {
      if (!ring[k] && ring[(k + 1) % 8]) {
        changes++;
      }
    }
    return changes;
  }

  private List<int[]> follow() {
    List<int[]> out = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      for (int y = 1; y < height - 1; y++) {
        for (int x = 1; x < width - 1; x++) {
          int i = y * width + x;
          if (on[i] && (pass == 1 || neighbours(i) <= 1)) {
            out.add(walk(i));
          }
        }
      }
    }
    return out;
  }

  private int neighbours(int i) {
    int n = 0;
    for (int k = 0; k < 8; k++) {
      if (on[i + offset(k)]) {
        n++;
      }
    }
    return n;
  }

  /** Sides first, so that a staircase is followed step by step. */
  private int offset(int k) {
    return switch (k) {
      case 0 -> 1;
      case 1 -> -1;
      case 2 -> width;
      case 3 -> -width;
      case 4 -> width + 1;
      case 5 -> width - 1;
      case 6 -> -width + 1;
      default -> -width - 1;
    };
  }

  private int[] walk(int start) {
    int[] path = new int[64];
    int length = 0;
    int i = start;
    while (i >= 0) {
      if (length == path.length) {
        path = Arrays.copyOf(path, 2 * length);
      }
      path[length++] = i;
      on[i] = false;
      int next = -1;
      for (int k = 0; k < 8 && next < 0; k++) {
        int j = i + offset(k);
        if (on[j] && j % width > 0 && j % width < width - 1) {
          next = j;
        }
      }
      i = next;
    }
    return Arrays.copyOf(path, length);
  }
}
