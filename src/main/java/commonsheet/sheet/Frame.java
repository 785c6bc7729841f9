package commonsheet.sheet;

import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Where the page's own coordinates (y upwards, origin anywhere) lie on the page as displayed (y
 * downwards from the top left of the crop box, turned by the page's rotation and, for content set
 * sideways, once more).
 *
 * <p>A point (x, y) is displayed at (xx·x + xy·y + x0, yx·x + yy·y + y0).
 *
 * @param width of the page as displayed, in points
 * @param height of the page as displayed, in points
 */
record Frame(
    double xx, double xy, double x0, double yx, double yy, double y0, double width, double height) {

  static Frame of(PDPage page) {
    PDRectangle crop = page.getCropBox();
    double w = crop.getWidth();
    double h = crop.getHeight();
    Frame upright = new Frame(1, 0, -crop.getLowerLeftX(), 0, -1, crop.getLowerLeftY() + h, w, h);
    return upright.turned(page.getRotation());
  }

  /** This frame turned clockwise by a multiple of 90 degrees. */
  Frame turned(int degrees) {
    return switch (Math.floorMod(degrees, 360)) {
      case 90 -> new Frame(-yx, -yy, height - y0, xx, xy, x0, height, width);
      case 180 -> new Frame(-xx, -xy, width - x0, -yx, -yy, height - y0, width, height);
      case 270 -> new Frame(yx, yy, y0, -xx, -xy, width - x0, height, width);
      default -> this;
    };
  }

  double x(double px, double py) {
    return xx * px + xy * py + x0;
  }

  double y(double px, double py) {
    return yx * px + yy * py + y0;
  }

  /** The displayed box of a box in the page's own coordinates. */
  Box place(Box own) {
    double ax = x(own.x(), own.y());
    double ay = y(own.x(), own.y());
    double bx = x(own.right(), own.bottom());
    double by = y(own.right(), own.bottom());
    return new Box(Math.min(ax, bx), Math.min(ay, by), Math.abs(ax - bx), Math.abs(ay - by));
  }

  /** The angle at which a glyph's base line is displayed, degrees counter-clockwise, 0 to 359. */
  int turnOf(Glyph glyph) {
    double dx = xx * glyph.advanceX() + xy * glyph.advanceY();
    double dy = yx * glyph.advanceX() + yy * glyph.advanceY();
    int angle = Math.floorMod((int) Math.round(Math.toDegrees(Math.atan2(-dy, dx))), 360);
    int quarter = (angle + 45) / 90 * 90;
    return Math.abs(angle - quarter) <= NEARLY_UPRIGHT ? quarter % 360 : angle;
  }

  /** Degrees by which a scanned page's words may slant and still be taken as set straight. */
  private static final int NEARLY_UPRIGHT = 4;
}
