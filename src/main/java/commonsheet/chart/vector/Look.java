package commonsheet.chart.vector;

import java.util.List;

/**
 * How a stroke looks as the file draws it: strokes of one curve look the same.
 *
 * @param rgb colour, 0xRRGGBB
 * @param width in points, in steps of a hundredth
 * @param dash lengths of dashes and gaps in points, in steps of a hundredth; empty for solid
 */
record Look(int rgb, double width, List<Double> dash) {
  /** From here on a colour cannot be told from white paper. */
  private static final double PAPER = 0.96;

  Look {
    width = rounded(width);
    dash = dash.stream().map(Look::rounded).toList();
  }

  private static double rounded(double points) {
    return Math.round(points * 100) / 100.0;
  }

  Look withDash(List<Double> other) {
    return new Look(rgb, width, other);
  }

  boolean isPaper() {
    return lightness(rgb) >= PAPER;
  }

  /** 0 black to 1 white. */
  static double lightness(int rgb) {
    int red = (rgb >> 16) & 0xFF;
    int green = (rgb >> 8) & 0xFF;
    int blue = rgb & 0xFF;
    return (0.3 * red + 0.59 * green + 0.11 * blue) / 255;
  }

  /** How far two colours lie apart, 0 to 1, by the part that differs most. */
  static double difference(int rgb, int other) {
    int most = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      most = Math.max(most, Math.abs(((rgb >> shift) & 0xFF) - ((other >> shift) & 0xFF)));
    }
    return most / 255.0;
  }

  /** Whether a colour is a shade of grey, black and white included. */
  static boolean isGrey(int rgb) {
    int red = (rgb >> 16) & 0xFF;
    int green = (rgb >> 8) & 0xFF;
    int blue = rgb & 0xFF;
    int most = Math.max(red, Math.max(green, blue));
    int least = Math.min(red, Math.min(green, blue));
    return most - least <= 20;
  }
}
