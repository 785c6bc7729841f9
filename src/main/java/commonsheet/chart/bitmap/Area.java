package commonsheet.chart.bitmap;

/**
 * A rectangle of pixels; the sides are the middles of the lines along it, where there are lines.
 */
record Area(double left, double top, double right, double bottom) {
  double width() {
    return right - left;
  }

  double height() {
    return bottom - top;
  }

  boolean contains(double x, double y) {
    return x >= left && x <= right && y >= top && y <= bottom;
  }

  /** How much of this one lies within another, 0 to 1. */
  double shareWithin(Area other) {
    double w = Math.min(right, other.right) - Math.max(left, other.left);
    double h = Math.min(bottom, other.bottom) - Math.max(top, other.top);
    return w <= 0 || h <= 0 ? 0 : w * h / Math.max(1e-9, width() * height());
  }

  Area grown(double by) {
    return new Area(left - by, top - by, right + by, bottom + by);
  }
}
