package commonsheet.chart.bitmap;

import commonsheet.chart.plot.InkStyle;
import java.util.ArrayList;
import java.util.List;

/** Tells what stands along a line from the form of the places where its ink is thick. */
final class Markers {
  /** Thickness of a marker in line widths. */
  private static final double THICK = 1.9;

  /** Markers that a marked curve has at least, and the most of its length that they take. */
  private static final int FEWEST = 3;

  private static final double MOST = 0.6;

  /** Share of its box that a square, a circle and a diamond fill at least. */
  private static final double SQUARE = 0.9;

  private static final double CIRCLE = 0.7;

  private static final double DIAMOND = 0.4;

  /** How far the middle of a triangle's ink is from the middle of its height, as a share of it. */
  private static final double TRIANGLE = 0.07;

  private Markers() {}

  /** The marker of a curve. */
  static InkStyle.Marker along(Strand strand, Layer layer, double lineWidth) {
    List<double[]> found = new ArrayList<>();
    double thick = THICK * lineWidth + 1;
    int last = Integer.MIN_VALUE;
    int inThick = 0;
    for (int i = 0; i < strand.length(); i++) {
      int x = (int) Math.round(strand.x()[i]);
      int y = (int) Math.round(strand.y()[i]);
      if (Math.min(run(layer, x, y, 1, 0), run(layer, x, y, 0, 1)) > thick) {
        inThick++;
        if (x > last + thick) {
          double[] form = form(layer, x, y, thick);
          if (form.length > 0) {
            found.add(form);
          }
        }
        last = x;
      }
    }
    if (found.size() < FEWEST || inThick > MOST * strand.length()) {
      return InkStyle.Marker.NONE;
    }
    double[] fills = found.stream().mapToDouble(f -> f[0]).sorted().toArray();
    double[] leans = found.stream().mapToDouble(f -> f[1]).sorted().toArray();
    return kind(fills[fills.length / 2], leans[leans.length / 2]);
  }

  static InkStyle.Marker kind(double fill, double lean) {
    if (Math.abs(lean) > TRIANGLE && fill < SQUARE) {
      return lean > 0 ? InkStyle.Marker.TRIANGLE : InkStyle.Marker.TRIANGLE_DOWN;
    }
    if (fill > SQUARE) {
      return InkStyle.Marker.SQUARE;
    }
    if (fill > CIRCLE) {
      return InkStyle.Marker.CIRCLE;
    }
    return fill > DIAMOND ? InkStyle.Marker.DIAMOND : InkStyle.Marker.OTHER;
  }

  private static boolean isInk(Layer layer, int x, int y) {
    return x >= 0
        && y >= 0
        && x < layer.width()
        && y < layer.height()
        && layer.share()[y * layer.width() + x] >= 0.5;
  }

  private static int run(Layer layer, int x, int y, int dx, int dy) {
    if (!isInk(layer, x, y)) {
      return 0;
    }
    int length = 1;
    for (int sign = -1; sign <= 1; sign += 2) {
      for (int k = 1; k < 60 && isInk(layer, x + sign * k * dx, y + sign * k * dy); k++) {
        length++;
      }
    }
    return length;
  }

  /** How much of its box a marker fills, and how far down its ink leans; nothing for a smear. */
  private static double[] form(Layer layer, int x, int y, double thick) {
    int left = x;
    while (run(layer, left - 1, y, 0, 1) > thick * 0.8 && x - left < 60) {
      left--;
    }
    int right = x;
    while (run(layer, right + 1, y, 0, 1) > thick * 0.8 && right - x < 60) {
      right++;
    }
    int top = y;
    int bottom = y;
    int area = 0;
    double moment = 0;
    for (int column = left; column <= right; column++) {
      int up = y;
      while (isInk(layer, column, up - 1)) {
        up--;
      }
      int down = y;
      while (isInk(layer, column, down + 1)) {
        down++;
      }
      top = Math.min(top, up);
      bottom = Math.max(bottom, down);
      area += down - up + 1;
      moment += (down - up + 1) * (up + down) / 2.0;
    }
    double width = right - left + 1;
    double height = bottom - top + 1;
    if (width > 2.5 * height || height > 2.5 * width) {
      return new double[0];
    }
    double lean = (moment / area - (top + bottom) / 2.0) / height;
    return new double[] {area / (width * height), lean};
  }
}
