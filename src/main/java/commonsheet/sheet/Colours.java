package commonsheet.sheet;

import java.io.IOException;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.common.function.PDFunction;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceN;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;

/**
 * Colours of any colour space as red, green and blue. Good enough to tell curves apart and to match
 * them with a legend, so colour profiles are left aside: they would load much and change little.
 */
final class Colours {
  /** What a pattern or an unknown colour space counts as. */
  private static final int UNKNOWN = 0x808080;

  private static final int PAPER = 0xFF;

  private PDColor last;
  private int lastRgb;

  /** A colour as 0xRRGGBB. */
  int rgb(PDColor color) {
    if (color != last || color == null) {
      lastRgb = convert(color);
      last = color;
    }
    return lastRgb;
  }

  /** How a colour of some opacity, 0 to 1, looks on white paper. */
  static int onPaper(int rgb, double opacity) {
    if (opacity >= 1) {
      return rgb;
    }
    int shown = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      double ink = (rgb >> shift) & 0xFF;
      shown |= (int) Math.round(PAPER + opacity * (ink - PAPER)) << shift;
    }
    return shown;
  }

  private static int convert(PDColor color) {
    if (color == null || color.isPattern() || color.getColorSpace() == null) {
      return UNKNOWN;
    }
    try {
      return convert(color.getComponents(), color.getColorSpace());
    } catch (IOException e) {
      // A colour space that is broken: the line is still there, in a colour nobody knows.
      return UNKNOWN;
    }
  }

  private static int convert(float[] c, PDColorSpace space) throws IOException {
    if (space instanceof PDSeparation separation) {
      return tinted(c, (COSArray) space.getCOSObject(), separation.getAlternateColorSpace());
    }
    if (space instanceof PDDeviceN mixed) {
      return tinted(c, (COSArray) space.getCOSObject(), mixed.getAlternateColorSpace());
    }
    String name = space.getName();
    if (name.equals("Lab") || name.equals("Indexed")) {
      float[] rgb = space.toRGB(c);
      return rgb == null ? UNKNOWN : pack(rgb[0], rgb[1], rgb[2]);
    }
    return switch (c.length) {
      case 1 -> pack(c[0], c[0], c[0]);
      case 3 -> pack(c[0], c[1], c[2]);
      case 4 -> pack((1 - c[0]) * (1 - c[3]), (1 - c[1]) * (1 - c[3]), (1 - c[2]) * (1 - c[3]));
      default -> UNKNOWN;
    };
  }

  /** An ink by its name: the file says with a function how it looks in a common colour space. */
  private static int tinted(float[] c, COSArray definition, PDColorSpace alternate)
      throws IOException {
    PDFunction tint = PDFunction.create(definition.getObject(3));
    float[] known = tint.eval(Arrays.copyOf(c, c.length));
    return convert(known, alternate);
  }

  private static int pack(double red, double green, double blue) {
    return part(red) << 16 | part(green) << 8 | part(blue);
  }

  private static int part(double share) {
    return (int) Math.round(255 * Math.max(0, Math.min(1, share)));
  }
}
