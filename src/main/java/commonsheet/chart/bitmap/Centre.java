package commonsheet.chart.bitmap;

/**
 * Moves the points of a line from whole pixels to the middle of its ink, told from how the ink
 * fades across it.
 */
final class Centre {
  /** Points on either side that tell the direction of the line. */
  private static final int ALONG = 4;

  /** Steps across the line, in pixels. */
  private static final double STEP = 0.25;

  /** Share of ink below which the line has ended. */
  private static final double FAINT = 0.08;

  private final Layer layer;
  private final double reach;

  Centre(Layer layer, double lineWidth) {
    this.layer = layer;
    this.reach = lineWidth / 2 + 2.5;
  }

  /** The line through the middle of its ink. */
  Strand of(Strand strand) {
    int n = strand.length();
    double[] x = smooth(strand.x());
    double[] y = smooth(strand.y());
    double[] shift = new double[n];
    double[] nx = new double[n];
    double[] ny = new double[n];
    for (int i = 0; i < n; i++) {
      int a = Math.max(0, i - ALONG);
      int b = Math.min(n - 1, i + ALONG);
      double dx = x[b] - x[a];
      double dy = y[b] - y[a];
      double length = Math.max(1e-9, Math.hypot(dx, dy));
      nx[i] = -dy / length;
      ny[i] = dx / length;
      shift[i] = shift(x[i], y[i], nx[i], ny[i]);
    }
    for (int i = 0; i < n; i++) {
      x[i] += shift[i] * nx[i];
      y[i] += shift[i] * ny[i];
    }
    return new Strand(x, y, strand.bridged(), strand.tone(), strand.doubt());
  }

  /** How far across the line its middle lies. */
  private double shift(double x, double y, double nx, double ny) {
    double start = 0;
    double most = layer.share(x, y);
    for (double t = -1.5; t <= 1.5; t += STEP) {
      double share = layer.share(x + t * nx, y + t * ny);
      if (share > most + 1e-6) {
        most = share;
        start = t;
      }
    }
    if (most < FAINT) {
      return 0;
    }
    double sum = most;
    double moment = most * start;
    for (int side = -1; side <= 1; side += 2) {
      double before = most;
      for (double t = start + side * STEP; Math.abs(t) <= reach; t += side * STEP) {
        double share = layer.share(x + t * nx, y + t * ny);
        if (share < FAINT * most || share > before + 0.1 && before < 0.5 * most) {
          break;
        }
        sum += share;
        moment += share * t;
        before = share;
      }
    }
    double shift = moment / sum;
    return Math.abs(shift) > reach ? 0 : shift;
  }

  private static double[] smooth(double[] values) {
    double[] out = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      int reach = Math.min(2, Math.min(i, values.length - 1 - i));
      double sum = 0;
      for (int k = i - reach; k <= i + reach; k++) {
        sum += values[k];
      }
      out[i] = sum / (2 * reach + 1);
    }
    return out;
  }
}
