package commonsheet.sheet;

import java.awt.image.BufferedImage;
import java.util.BitSet;

/** Which pixels of a picture are clearly darker than its ground. */
final class InkMask {
  /** Lightness of ink, as a share of that of the ground. */
  private static final double INK = 0.75;

  private final int width;
  private final int height;
  private final BitSet ink;

  private InkMask(int width, int height, BitSet ink) {
    this.width = width;
    this.height = height;
    this.ink = ink;
  }

  static InkMask of(BufferedImage image) {
    int width = image.getWidth();
    int height = image.getHeight();
    byte[] light = new byte[width * height];
    int[] counts = new int[256];
    int[] row = new int[width];
    for (int y = 0; y < height; y++) {
      image.getRGB(0, y, width, 1, row, 0, width);
      for (int x = 0; x < width; x++) {
        int value = ((row[x] >> 16 & 0xFF) + 2 * (row[x] >> 8 & 0xFF) + (row[x] & 0xFF)) / 4;
        light[y * width + x] = (byte) value;
        counts[value]++;
      }
    }
    int ground = 255;
    for (int value = 0; value < counts.length; value++) {
      ground = counts[value] > counts[ground] ? value : ground;
    }
    BitSet ink = new BitSet(width * height);
    for (int i = 0; i < light.length; i++) {
      if ((light[i] & 0xFF) < INK * ground) {
        ink.set(i);
      }
    }
    return new InkMask(width, height, ink);
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Whether a pixel is ink; there is none outside the picture. */
  boolean at(int column, int row) {
    return column >= 0
        && column < width
        && row >= 0
        && row < height
        && ink.get(row * width + column);
  }
}
