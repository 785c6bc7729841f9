package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The tick marks along an upright side of a plot, inside or outside of it. For those along a level
 * side the picture is looked at transposed.
 */
final class Ticks {
  /** Difference in lightness of a tick from the plot. */
  private static final int CONTRAST = 30;

  /** Shortest tick in pixels, and longest as a share of the side across. */
  private static final int SHORTEST = 2;

  private static final double LONGEST = 0.05;

  /** Least distance of ticks in pixels. */
  private static final double CLOSEST = 4;

  /** How far a step may be from the usual one, as a share of it or in pixels. */
  private static final double EVEN = 0.06;

  private static final double EVEN_PIXELS = 1.1;

  /** Share of the steps that must be even: a curve or a letter may stand among the ticks. */
  private static final double MOSTLY = 0.7;

  private final Raster raster;
  private final Shade shade;
  private final Area area;

  Ticks(View view, Area area) {
    this.raster = view.raster();
    this.shade = view.shade();
    this.area = area;
  }

  /**
   * Where ticks begin at a side.
   *
   * @param side the upright line they stand at
   * @param outward -1 to look left of it, 1 to look right of it
   */
  List<Tick> along(Rule side, int outward) {
    int start =
        outward < 0
            ? (int) Math.floor(side.at() - side.thickness() / 2 - 0.7)
            : (int) Math.ceil(side.at() + side.thickness() / 2 + 0.7);
    int most = (int) Math.max(6, LONGEST * area.width());
    int y0 = Math.max(0, (int) Math.round(area.top()) - 3);
    int y1 = Math.min(shade.height - 1, (int) Math.round(area.bottom()) + 3);
    int[] reach = new int[y1 - y0 + 1];
    for (int y = y0; y <= y1; y++) {
      int length = 0;
      while (length <= most && isDark(start + outward * length, y, y0, y1)) {
        length++;
      }
      reach[y - y0] = length;
    }
    return group(reach, y0, start, outward, most, side.thickness());
  }

  /** Whether a pixel is darker than what lies within a few pixels above or below it. */
  private boolean isDark(int x, int y, int y0, int y1) {
    if (x < 0 || x >= shade.width || !Rules.isGrey(raster.at(x, y))) {
      return false;
    }
    int above = shade.at(x, Math.max(0, Math.max(y - 6, y0 - 6)));
    int below = shade.at(x, Math.min(shade.height - 1, Math.min(y + 6, y1 + 6)));
    return Math.max(above, below) - shade.at(x, y) > CONTRAST;
  }

  private List<Tick> group(
      int[] reach, int y0, int start, int outward, int most, double sideThickness) {
    double thickest = Math.max(3, 1.6 * sideThickness + 2);
    List<Tick> ticks = new ArrayList<>();
    for (int i = 0; i < reach.length; i++) {
      if (reach[i] < SHORTEST) {
        continue;
      }
      int first = i;
      int longest = 0;
      while (i < reach.length && reach[i] >= SHORTEST) {
        longest = Math.max(longest, reach[i]);
        i++;
      }
      int last = i - 1;
      if (last - first + 1 <= thickest && longest <= most) {
        ticks.add(new Tick(centre(first + y0, last + y0, start, outward, longest), longest));
      }
    }
    return regular(ticks);
  }

  private double centre(int first, int last, int start, int outward, int length) {
    double sum = 0;
    double moment = 0;
    int from = Math.max(0, first - 2);
    int to = Math.min(shade.height - 1, last + 2);
    for (int k = 0; k < Math.max(1, length - 1); k++) {
      int x = start + outward * k;
      if (x < 0 || x >= shade.width) {
        continue;
      }
      int base = Math.max(shade.at(x, from), shade.at(x, to));
      for (int y = from; y <= to; y++) {
        int dark = base - shade.at(x, y);
        if (dark > CONTRAST / 3) {
          sum += dark;
          moment += (double) dark * y;
        }
      }
    }
    return sum > 0 ? moment / sum : (first + last) / 2.0;
  }

  /** Those of one length that stand at even distances, as letters beside an axis do not. */
  private static List<Tick> regular(List<Tick> ticks) {
    List<Tick> out = new ArrayList<>();
    for (Tick tick : ticks) {
      List<Tick> alike =
          ticks.stream().filter(t -> Math.abs(t.length() - tick.length()) <= 1).toList();
      if (alike.size() >= 3 && areEven(alike.stream().map(Tick::at).toList())) {
        out.add(tick);
      }
    }
    return out;
  }

  /** Whether most steps from mark to mark are the same, or small multiples of it. */
  static boolean areEven(List<Double> places) {
    double[] steps = new double[places.size() - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = places.get(i + 1) - places.get(i);
    }
    double[] sorted = steps.clone();
    Arrays.sort(sorted);
    double usual = sorted[sorted.length / 2];
    if (usual < CLOSEST) {
      return false;
    }
    int even = 0;
    for (double step : steps) {
      double times = Math.max(1, Math.rint(step / usual));
      if (Math.abs(step - times * usual) <= Math.max(EVEN_PIXELS, EVEN * usual)) {
        even++;
      }
    }
    return even >= MOSTLY * steps.length;
  }

  /** A tick mark: where along its side, and how long. */
  record Tick(double at, int length) {}
}
