package commonsheet.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * By how much a scanned page is turned: the angle at which its ink gathers best on level lines (the
 * projection profile of Postl, "Detection of linear oblique structures and skew scan in digitized
 * documents", ICPR 1986).
 */
final class Skew {
  /** Largest angle looked for, and the step, in degrees; sheets are laid on a scanner by hand. */
  private static final double LARGEST = 3;

  private static final double STEP = 0.05;

  /** Angle below which a page counts as straight, in degrees. */
  private static final double STRAIGHT = 0.08;

  /** Every so many pixels one is looked at, along a row. */
  private static final int SPARSE = 3;

  private Skew() {}

  /** The angle in degrees by which the picture's lines fall to the right. */
  static double of(InkMask ink) {
    int[] columns = new int[ink.width() * ink.height() / SPARSE + 1];
    int[] rows = new int[columns.length];
    int n = 0;
    for (int row = 0; row < ink.height(); row++) {
      for (int column = row % SPARSE; column < ink.width(); column += SPARSE) {
        // The lower edge of ink: base lines and rulings, and not the inside of dark areas.
        if (ink.at(column, row) && !ink.at(column, row + 1)) {
          columns[n] = column;
          rows[n++] = row;
        }
      }
    }
    double best = 0;
    double most = gathered(columns, rows, n, 0, ink.height());
    for (double angle = -LARGEST; angle <= LARGEST; angle += STEP) {
      double gathered = gathered(columns, rows, n, angle, ink.height());
      if (gathered > most) {
        most = gathered;
        best = angle;
      }
    }
    return Math.abs(best) < STRAIGHT ? 0 : best;
  }

  private static double gathered(int[] columns, int[] rows, int n, double angle, int height) {
    double slope = Math.tan(Math.toRadians(angle));
    int[] lines = new int[3 * height];
    for (int i = 0; i < n; i++) {
      int line = (int) Math.round(rows[i] - columns[i] * slope) + height;
      if (line >= 0 && line < lines.length) {
        lines[line]++;
      }
    }
    return Arrays.stream(lines).mapToDouble(count -> (double) count * count).sum();
  }

  /** A picture turned back by such an angle around its middle, on white. */
  static BufferedImage straightened(BufferedImage image, double angle) {
    BufferedImage out =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = out.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, out.getWidth(), out.getHeight());
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.rotate(Math.toRadians(-angle), out.getWidth() / 2.0, out.getHeight() / 2.0);
    graphics.drawImage(image, 0, 0, null);
    graphics.dispose();
    return out;
  }
}
