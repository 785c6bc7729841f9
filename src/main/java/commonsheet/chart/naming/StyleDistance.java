package commonsheet.chart.naming;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.InkStyle.Dash;
import commonsheet.chart.plot.InkStyle.Marker;

/** How unlike two lines look: 0 for the same, 1 for clearly another. */
final class StyleDistance {
  /** Colours this far apart, in hundredths of OKLab's lightness, are clearly two. */
  private static final double CLEAR = 15;

  private StyleDistance() {}

  static double between(InkStyle one, InkStyle other) {
    double distance = Math.min(1, colours(one.rgb(), other.rgb()) / CLEAR);
    distance += dashes(one.dash(), other.dash());
    distance += markers(one.marker(), other.marker());
    return Math.min(1, distance);
  }

  private static double dashes(Dash one, Dash other) {
    if (one == other) {
      return 0;
    }
    return one == Dash.SOLID || other == Dash.SOLID ? 0.35 : 0.25;
  }

  /** A sample can be too short to show a marker, and a finder can miss one. */
  private static double markers(Marker one, Marker other) {
    if (one == other) {
      return 0;
    }
    return one == Marker.NONE || other == Marker.NONE ? 0.2 : 0.35;
  }

  /**
   * Distance in OKLab (B. Ottosson, "A perceptual color space for image processing", 2020; the
   * coefficients are from there, from memory), in hundredths.
   */
  static double colours(int one, int other) {
    double[] a = lab(one);
    double[] b = lab(other);
    return 100 * Math.sqrt(square(a[0] - b[0]) + square(a[1] - b[1]) + square(a[2] - b[2]));
  }

  private static double[] lab(int rgb) {
    double red = linear(rgb >> 16 & 0xff);
    double green = linear(rgb >> 8 & 0xff);
    double blue = linear(rgb & 0xff);
    double l = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
    double m = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
    double s = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
    return new double[] {
      0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
      1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
      0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s
    };
  }

  /** The sRGB transfer function (IEC 61966-2-1). */
  private static double linear(int channel) {
    double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }

  private static double square(double x) {
    return x * x;
  }
}
