package commonsheet.chart.bitmap;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** The pixels of a picture as plain numbers, made smaller by whole steps where it is too large. */
final class Raster {
  /**
   * Longest side worked on. A plot of that size has two pixels to a thousandth of its scale; finer
   * pictures gain nothing.
   */
  static final int LONGEST = 1900;

  /** Most pixels worked on, which bounds time and memory (16 bytes a pixel in all). */
  private static final long MOST = 3_600_000;

  final int width;
  final int height;

  /** How many pixels of the picture make one here, along each side. */
  final int step;

  /** Row by row, 0xRRGGBB. */
  final int[] rgb;

  Raster(int width, int height, int step, int[] rgb) {
    this.width = width;
    this.height = height;
    this.step = step;
    this.rgb = rgb;
  }

  /** The pixels of a picture, averaged over squares where it is larger than is of use. */
  static Raster of(BufferedImage image) {
    int step = 1;
    while (Math.max(image.getWidth(), image.getHeight()) / step > LONGEST
        || (long) (image.getWidth() / step) * (image.getHeight() / step) > MOST) {
      step++;
    }
    int width = Math.max(1, image.getWidth() / step);
    int height = Math.max(1, image.getHeight() / step);
    int[] rgb = new int[width * height];
    BufferedImage strip = new BufferedImage(width * step, step, BufferedImage.TYPE_INT_RGB);
    int[] pixels = ((DataBufferInt) strip.getRaster().getDataBuffer()).getData();
    Graphics2D graphics = strip.createGraphics();
    for (int row = 0; row < height; row++) {
      graphics.drawImage(image, 0, -row * step, null);
      average(pixels, step, rgb, row * width, width);
    }
    graphics.dispose();
    return new Raster(width, height, step, rgb);
  }

  private static void average(int[] strip, int step, int[] out, int at, int width) {
    if (step == 1) {
      for (int i = 0; i < width; i++) {
        out[at + i] = strip[i] & 0xFFFFFF;
      }
      return;
    }
    int count = step * step;
    for (int i = 0; i < width; i++) {
      int red = 0;
      int green = 0;
      int blue = 0;
      for (int row = 0; row < step; row++) {
        for (int k = 0; k < step; k++) {
          int pixel = strip[row * width * step + i * step + k];
          red += pixel >> 16 & 0xFF;
          green += pixel >> 8 & 0xFF;
          blue += pixel & 0xFF;
        }
      }
      out[at + i] = red / count << 16 | green / count << 8 | blue / count;
    }
  }

  /** The picture mirrored about its diagonal, so that what stood upright lies level. */
  Raster transposed() {
    return new Raster(height, width, step, new Shade(width, height, rgb).transposed().light);
  }

  int at(int x, int y) {
    return rgb[y * width + x];
  }

  /** How light each pixel is. */
  Shade shade() {
    int[] light = new int[rgb.length];
    for (int i = 0; i < light.length; i++) {
      light[i] = Shade.of(rgb[i]);
    }
    return new Shade(width, height, light);
  }
}
