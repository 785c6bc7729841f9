package commonsheet.sheet;

import java.awt.image.BufferedImage;

/**
 * A page, or a part of one, as pixels.
 *
 * @param page from 1
 * @param area which part of the page the picture shows, in points
 * @param image the pixels, upright
 */
public record PagePixels(int page, Box area, BufferedImage image) {
  /** Side of a pixel in points. */
  public double pixel() {
    return area.width() / image.getWidth();
  }

  /** The place on the page of a place in the picture; pixel (0, 0) has its middle at (0.5, 0.5). */
  public Point onPage(double column, double row) {
    return new Point(
        area.x() + column * area.width() / image.getWidth(),
        area.y() + row * area.height() / image.getHeight());
  }
}
