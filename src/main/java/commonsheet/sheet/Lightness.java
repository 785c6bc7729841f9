package commonsheet.sheet;

import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;

/**
 * How light a colour is, 0 black to 1 white. Enough to tell ink from paper, so colour profiles are
 * left aside: they would load much and change little.
 */
final class Lightness {
  /** From here on a colour cannot be told from white paper. */
  static final double PAPER = 0.96;

  /** What a pattern, a picture or an unknown colour space counts as. */
  static final double UNKNOWN = 0.5;

  private Lightness() {}

  static double of(PDColor color) {
    if (color == null || color.isPattern() || color.getColorSpace() == null) {
      return UNKNOWN;
    }
    float[] c = color.getComponents();
    PDColorSpace space = color.getColorSpace();
    return switch (space.getName()) {
      case "Indexed", "Lab", "Pattern" -> UNKNOWN;
      case "Separation", "DeviceN" -> 1 - largest(c);
      default ->
          switch (c.length) {
            case 1 -> c[0];
            case 3 -> 0.3 * c[0] + 0.59 * c[1] + 0.11 * c[2];
            case 4 -> (1 - c[3]) * (1 - 0.3 * c[0] - 0.59 * c[1] - 0.11 * c[2]);
            default -> UNKNOWN;
          };
    };
  }

  private static double largest(float[] parts) {
    float most = 0;
    for (float part : parts) {
      most = Math.max(most, part);
    }
    return most;
  }
}
