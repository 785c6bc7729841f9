package commonsheet.sheet;

import java.util.List;

/**
 * A rectangle on a page: points (1/72 in) from the top left of the page as displayed, y downwards.
 */
public record Box(double x, double y, double width, double height) {
  public double right() {
    return x + width;
  }

  public double bottom() {
    return y + height;
  }

  public double centreX() {
    return x + width / 2;
  }

  public double centreY() {
    return y + height / 2;
  }

  /** The smallest box around this one and another. */
  public Box union(Box other) {
    double left = Math.min(x, other.x);
    double top = Math.min(y, other.y);
    return new Box(
        left,
        top,
        Math.max(right(), other.right()) - left,
        Math.max(bottom(), other.bottom()) - top);
  }

  /**
   * The smallest box around all of them.
   *
   * @throws IllegalArgumentException for none
   */
  public static Box around(List<Box> boxes) {
    if (boxes.isEmpty()) {
      throw new IllegalArgumentException("no box goes around nothing");
    }
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (Box box : boxes) {
      left = Math.min(left, box.x);
      top = Math.min(top, box.y);
      right = Math.max(right, box.right());
      bottom = Math.max(bottom, box.bottom());
    }
    return new Box(left, top, right - left, bottom - top);
  }

  /** How much of the vertical extent of the lower of the two boxes they share, 0 to 1. */
  public double sharedHeight(Box other) {
    double shared = Math.min(bottom(), other.bottom()) - Math.max(y, other.y);
    return Math.max(0, shared) / Math.max(1e-6, Math.min(height, other.height));
  }

  /** How much of the horizontal extent of the narrower of the two boxes they share, 0 to 1. */
  public double sharedWidth(Box other) {
    double shared = Math.min(right(), other.right()) - Math.max(x, other.x);
    return Math.max(0, shared) / Math.max(1e-6, Math.min(width, other.width));
  }

  public boolean contains(double px, double py) {
    return px >= x && px <= right() && py >= y && py <= bottom();
  }
}
