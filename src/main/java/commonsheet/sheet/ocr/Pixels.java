package commonsheet.sheet.ocr;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** A picture as rows of 24-bit colours. */
final class Pixels {
  /** Pixels a picture is worked on with at most; an A4 page at 600 dpi has 35 million. */
  private static final double LARGEST = 40e6;

  /** Rows drawn at once. */
  private static final int BAND = 512;

  private static final int WHITE = 0xFFFFFF;

  private final int width;
  private final int height;
  private final int[] colours;

  Pixels(int width, int height, int[] colours) {
    this.width = width;
    this.height = height;
    this.colours = colours;
  }

  /** Takes a picture, on white where it is transparent, made smaller if it is very large. */
  static Pixels of(BufferedImage image) {
    double shrink =
        Math.min(1, Math.sqrt(LARGEST / ((double) image.getWidth() * image.getHeight())));
    int width = Math.max(1, (int) (image.getWidth() * shrink));
    int height = Math.max(1, (int) (image.getHeight() * shrink));
    boolean asItIs = shrink == 1 && image.getType() == BufferedImage.TYPE_INT_RGB;
    return new Pixels(width, height, values(asItIs ? image : plain(image, width, height)));
  }

  /** Draws band by band, since the drawing of a picture takes a full copy of what it is given. */
  private static BufferedImage plain(BufferedImage image, int width, int height) {
    BufferedImage plain = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = plain.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    for (int top = 0; top < height; top += BAND) {
      int bottom = Math.min(height, top + BAND);
      int from = (int) ((long) top * image.getHeight() / height);
      int to = (int) ((long) bottom * image.getHeight() / height);
      BufferedImage band = image.getSubimage(0, from, image.getWidth(), to - from);
      graphics.drawImage(band, 0, top, width, bottom - top, Color.WHITE, null);
    }
    graphics.dispose();
    return plain;
  }

  private static int[] values(BufferedImage plain) {
    boolean whole =
        plain.getRaster().getSampleModelTranslateX() == 0
            && plain.getRaster().getDataBuffer().getSize() == plain.getWidth() * plain.getHeight();
    return whole
        ? ((DataBufferInt) plain.getRaster().getDataBuffer()).getData()
        : plain.getRGB(0, 0, plain.getWidth(), plain.getHeight(), null, 0, plain.getWidth());
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** The colour of a pixel, 0xRRGGBB. */
  int colour(int column, int row) {
    return colours[row * width + column] & WHITE;
  }

  int red(int column, int row) {
    return colours[row * width + column] >> 16 & 0xFF;
  }

  int green(int column, int row) {
    return colours[row * width + column] >> 8 & 0xFF;
  }

  int blue(int column, int row) {
    return colours[row * width + column] & 0xFF;
  }

  /** Lightness 0 to 255 by the weights of ITU-R BT.601. */
  int lightness(int column, int row) {
    return (299 * red(column, row) + 587 * green(column, row) + 114 * blue(column, row)) / 1000;
  }

  /** The colour that occurs most, to 16 steps of each channel; the mean of its pixels. */
  int commonest() {
    int[] counts = new int[1 << 12];
    for (int colour : colours) {
      counts[step(colour)]++;
    }
    int most = 0;
    for (int i = 1; i < counts.length; i++) {
      most = counts[i] > counts[most] ? i : most;
    }
    long[] sums = new long[3];
    for (int colour : colours) {
      if (step(colour) == most) {
        sums[0] += colour >> 16 & 0xFF;
        sums[1] += colour >> 8 & 0xFF;
        sums[2] += colour & 0xFF;
      }
    }
    int n = counts[most];
    return (int) (sums[0] / n) << 16 | (int) (sums[1] / n) << 8 | (int) (sums[2] / n);
  }

  private static int step(int colour) {
    return (colour >> 12 & 0xF00) | (colour >> 8 & 0xF0) | (colour >> 4 & 0xF);
  }

  /** Whether every pixel has the same colour. */
  boolean isPlain() {
    for (int colour : colours) {
      if ((colour & WHITE) != (colours[0] & WHITE)) {
        return false;
      }
    }
    return true;
  }

  /**
   * A part of the picture turned level and brought to a size. Each new pixel is the mean of as many
   * places as the part is made smaller by, so that thin strokes stay; outside the picture is white.
   */
  Pixels cut(TurnedBox box, int newWidth, int newHeight) {
    double stepAlong = box.length() / newWidth;
    double stepDown = box.height() / newHeight;
    int samples = (int) Math.ceil(Math.max(1, Math.max(stepAlong, stepDown)) - 0.25);
    int[] out = new int[newWidth * newHeight];
    for (int row = 0; row < newHeight; row++) {
      for (int column = 0; column < newWidth; column++) {
        out[row * newWidth + column] =
            mean(box, column * stepAlong, row * stepDown, stepAlong, stepDown, samples);
      }
    }
    return new Pixels(newWidth, newHeight, out);
  }

  private int mean(
      TurnedBox box, double along, double down, double stepAlong, double stepDown, int samples) {
    double red = 0;
    double green = 0;
    double blue = 0;
    for (int i = 0; i < samples; i++) {
      for (int j = 0; j < samples; j++) {
        double a = along + (j + 0.5) * stepAlong / samples;
        double d = down + (i + 0.5) * stepDown / samples;
        int colour = between(box.column(a, d) - 0.5, box.row(a, d) - 0.5);
        red += colour >> 16 & 0xFF;
        green += colour >> 8 & 0xFF;
        blue += colour & 0xFF;
      }
    }
    double n = (double) samples * samples;
    return (int) (red / n + 0.5) << 16 | (int) (green / n + 0.5) << 8 | (int) (blue / n + 0.5);
  }

  /** The colour between four pixels, by distance. */
  private int between(double column, double row) {
    int left = (int) Math.floor(column);
    int top = (int) Math.floor(row);
    int right = (int) ((column - left) * 256);
    int below = (int) ((row - top) * 256);
    int a = seen(left, top);
    int b = seen(left + 1, top);
    int c = seen(left, top + 1);
    int d = seen(left + 1, top + 1);
    if (a == b && b == c && c == d) {
      return a;
    }
    int mixed = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int upper = (a >> shift & 0xFF) * (256 - right) + (b >> shift & 0xFF) * right;
      int lower = (c >> shift & 0xFF) * (256 - right) + (d >> shift & 0xFF) * right;
      mixed |= (upper * (256 - below) + lower * below + (1 << 15)) >> 16 << shift;
    }
    return mixed;
  }

  private int seen(int column, int row) {
    boolean inside = column >= 0 && column < width && row >= 0 && row < height;
    return inside ? colours[row * width + column] & WHITE : WHITE;
  }
}
