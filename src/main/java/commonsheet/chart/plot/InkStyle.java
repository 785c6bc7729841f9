package commonsheet.chart.plot;

/**
 * How a line looks, as far as it tells curves apart.
 *
 * @param rgb colour, 0xRRGGBB
 * @param dash how it is broken
 * @param marker what stands along it
 * @param width line width in points
 */
public record InkStyle(int rgb, Dash dash, Marker marker, double width) {
  /** How a line is broken. */
  public enum Dash {
    SOLID,
    DASHED,
    DOTTED,
    DASH_DOTTED,
    LONG_DASHED
  }

  /** What stands along a line at its points. */
  public enum Marker {
    NONE,
    CIRCLE,
    SQUARE,
    DIAMOND,
    TRIANGLE,
    TRIANGLE_DOWN,
    CROSS,
    PLUS,
    STAR,
    OTHER
  }
}
