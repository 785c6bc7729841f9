package commonsheet.sheet;

/** Bézier curves as straight pieces. */
final class Flattening {
  /** Points by which a straight piece may leave the curve; print is a hundred times coarser. */
  static final double TOLERANCE = 0.01;

  /** Most pieces of one curve: enough for one across the largest page allowed. */
  private static final int MOST_PIECES = 2000;

  private Flattening() {}

  /** Adds the cubic curve from the end of a path over two control points to (x3, y3). */
  static void curveTo(
      Subpath to, double x1, double y1, double x2, double y2, double x3, double y3) {
    double x0 = to.lastX();
    double y0 = to.lastY();
    double bend =
        Math.max(
            Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2),
            Math.hypot(x1 - 2 * x2 + x3, y1 - 2 * y2 + y3));
    // n equal parts leave a cubic by at most 3/4 · bend / n² (second derivative at most 6 · bend).
    int pieces = (int) Math.ceil(Math.sqrt(0.75 * bend / TOLERANCE));
    int parts = Math.max(1, Math.min(MOST_PIECES, pieces));
    for (int i = 1; i < parts; i++) {
      double t = (double) i / parts;
      double s = 1 - t;
      double a = s * s * s;
      double b = 3 * s * s * t;
      double c = 3 * s * t * t;
      double d = t * t * t;
      to.lineTo(a * x0 + b * x1 + c * x2 + d * x3, a * y0 + b * y1 + c * y2 + d * y3);
    }
    to.lineTo(x3, y3);
  }
}
