package commonsheet.chart.bitmap;

/** How light the pixels of a picture are, 0 to 255. */
final class Shade {
  final int width;
  final int height;
  final int[] light;

  Shade(int width, int height, int[] light) {
    this.width = width;
    this.height = height;
    this.light = light;
  }

  /** Luma of ITU-R BT.601, in which JPEG keeps lightness. */
  static int of(int rgb) {
    return (299 * (rgb >> 16 & 0xFF) + 587 * (rgb >> 8 & 0xFF) + 114 * (rgb & 0xFF) + 500) / 1000;
  }

  int at(int x, int y) {
    return light[y * width + x];
  }

  /** The picture mirrored about its diagonal, so that what stood upright lies level. */
  Shade transposed() {
    int[] out = new int[light.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        out[x * height + y] = light[y * width + x];
      }
    }
    return new Shade(height, width, out);
  }

  /** The picture made smaller by a whole step, squares averaged. */
  Shade reduced(int step) {
    if (step == 1) {
      return this;
    }
    int columns = Math.max(1, width / step);
    int rows = Math.max(1, height / step);
    int[] out = new int[columns * rows];
    for (int y = 0; y < rows * step && y < height; y++) {
      for (int x = 0; x < columns * step && x < width; x++) {
        out[y / step * columns + x / step] += light[y * width + x];
      }
    }
    for (int i = 0; i < out.length; i++) {
      out[i] /= step * step;
    }
    return new Shade(columns, rows, out);
  }
}
