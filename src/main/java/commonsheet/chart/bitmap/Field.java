package commonsheet.chart.bitmap;

/**
 * The pixels of one plot, as differences from its ground. Pixel (0, 0) is (left, top) of the
 * picture.
 */
final class Field {
  /** Pixels around the frame that belong to the field. */
  private static final int MARGIN = 3;

  /** Colours are counted in steps of 2^SHIFT. */
  private static final int SHIFT = 3;

  final int left;
  final int top;
  final int width;
  final int height;

  /** Colour of the ground. */
  final int ground;

  /** Share of the pixels that are of the colour of the ground. */
  final double groundShare;

  final float[] light;
  final float[] red;
  final float[] blue;
  final float[] strength;

  private final int[] rgb;

  Field(Raster raster, Area area) {
    left = Math.max(0, (int) Math.round(area.left()) - MARGIN);
    top = Math.max(0, (int) Math.round(area.top()) - MARGIN);
    width = Math.min(raster.width - 1, (int) Math.round(area.right()) + MARGIN) - left + 1;
    height = Math.min(raster.height - 1, (int) Math.round(area.bottom()) + MARGIN) - top + 1;
    rgb = new int[width * height];
    for (int y = 0; y < height; y++) {
      System.arraycopy(raster.rgb, (y + top) * raster.width + left, rgb, y * width, width);
    }
    int[] counts = count(rgb);
    int mode = 0;
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > counts[mode]) {
        mode = i;
      }
    }
    ground = mean(mode);
    light = new float[rgb.length];
    red = new float[rgb.length];
    blue = new float[rgb.length];
    strength = new float[rgb.length];
    groundShare = measure();
  }

  private static int[] count(int[] rgb) {
    int bits = 8 - SHIFT;
    int[] counts = new int[1 << 3 * bits];
    for (int pixel : rgb) {
      counts[bin(pixel)]++;
    }
    return counts;
  }

  private static int bin(int pixel) {
    int bits = 8 - SHIFT;
    return (pixel >> 16 + SHIFT & (1 << bits) - 1) << 2 * bits
        | (pixel >> 8 + SHIFT & (1 << bits) - 1) << bits
        | pixel >> SHIFT & (1 << bits) - 1;
  }

  private int mean(int mode) {
    long r = 0;
    long g = 0;
    long b = 0;
    int n = 0;
    for (int pixel : rgb) {
      if (bin(pixel) == mode) {
        r += pixel >> 16 & 0xFF;
        g += pixel >> 8 & 0xFF;
        b += pixel & 0xFF;
        n++;
      }
    }
    n = Math.max(1, n);
    return (int) (r / n) << 16 | (int) (g / n) << 8 | (int) (b / n);
  }

  private double measure() {
    int near = 0;
    for (int i = 0; i < rgb.length; i++) {
      Tone tone = Tone.between(rgb[i], ground);
      light[i] = (float) tone.light();
      red[i] = (float) tone.red();
      blue[i] = (float) tone.blue();
      strength[i] = (float) tone.strength();
      if (strength[i] < 12) {
        near++;
      }
    }
    return (double) near / Math.max(1, rgb.length);
  }

  Tone tone(int i) {
    return new Tone(light[i], red[i], blue[i]);
  }

  boolean isGrey(int i) {
    double colour = Math.hypot(red[i], blue[i]);
    return colour < 9 || colour < 0.22 * strength[i];
  }

  int size() {
    return rgb.length;
  }
}
