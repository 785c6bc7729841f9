package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a plot that lie level: sides of the frame and grid lines, solid, dashed or dotted.
 * For those that stand upright the picture is looked at transposed.
 */
final class Rules {
  /** Difference in lightness of a grid line from what is above and below it. */
  private static final int CONTRAST = 7;

  /** Parts of the plot's width in which a grid line must show, and how many of them. */
  private static final int PARTS = 16;

  private static final int PARTS_SHOWN = 13;

  /** Share of its pixels that a grid line must show; a dotted one has gaps wider than its dots. */
  private static final double SHOWN = 0.13;

  /** Of a level line, the share that must show for it to be a side of the frame. */
  private static final double SIDE_SHOWN = 0.25;

  /** Difference between the colours of a pixel beyond which it is not grey. */
  private static final int COLOURED = 40;

  private final Raster raster;
  private final Shade shade;
  private final Area area;
  private final int x0;
  private final int x1;

  Rules(View view, Area area) {
    this.raster = view.raster();
    this.shade = view.shade();
    this.area = area;
    this.x0 = Math.max(0, (int) Math.round(area.left()) + 2);
    this.x1 = Math.min(shade.width - 1, (int) Math.round(area.right()) - 2);
  }

  /** The level lines, from the top down. */
  List<Rule> find() {
    int y0 = Math.max(1, (int) Math.floor(area.top()) - 3);
    int y1 = Math.min(shade.height - 2, (int) Math.ceil(area.bottom()) + 3);
    int reach = reach();
    double[] strength = new double[y1 - y0 + 1];
    double[] shown = new double[y1 - y0 + 1];
    boolean[] across = new boolean[y1 - y0 + 1];
    for (int y = y0; y <= y1; y++) {
      measure(y, reach, y - y0, strength, shown, across);
    }
    List<Rule> rules = new ArrayList<>();
    for (int i = 0; i < shown.length; i++) {
      if (isPeak(shown, strength, i)) {
        double share = isSide(i + y0) ? SIDE_SHOWN : SHOWN;
        if (shown[i] >= share && (across[i] || isSide(i + y0))) {
          rules.add(rule(i + y0, reach));
        }
      }
    }
    return distinct(rules);
  }

  private boolean isSide(int y) {
    double near = 3;
    return Math.abs(y - area.top()) <= near || Math.abs(y - area.bottom()) <= near;
  }

  /** How far above and below a line its surroundings are looked at. */
  private int reach() {
    return Math.max(3, (int) Math.round(Math.min(area.width(), area.height()) / 70));
  }

  private void measure(
      int y, int reach, int i, double[] strength, double[] shown, boolean[] across) {
    int[] parts = new int[PARTS];
    int count = 0;
    long sum = 0;
    int width = x1 - x0 + 1;
    for (int x = x0; x <= x1; x++) {
      int difference = difference(x, y, reach);
      if (difference != 0 && isGrey(raster.at(x, y))) {
        count++;
        sum += Math.abs(difference);
        parts[(x - x0) * PARTS / width]++;
      }
    }
    int partsShown = 0;
    for (int part : parts) {
      if (part > 0) {
        partsShown++;
      }
    }
    strength[i] = (double) sum / Math.max(1, width);
    shown[i] = (double) count / Math.max(1, width);
    across[i] = partsShown >= PARTS_SHOWN && parts[0] > 0 && parts[PARTS - 1] > 0;
  }

  /** How much darker (positive) or lighter a pixel is than both its surroundings; 0 if neither. */
  private int difference(int x, int y, int reach) {
    int here = shade.at(x, y);
    int above = shade.at(x, Math.max(0, y - reach));
    int below = shade.at(x, Math.min(shade.height - 1, y + reach));
    int darker = Math.min(above - here, below - here);
    if (darker > CONTRAST) {
      return darker;
    }
    int lighter = Math.min(here - above, here - below);
    return lighter > CONTRAST ? -lighter : 0;
  }

  static boolean isGrey(int rgb) {
    int red = rgb >> 16 & 0xFF;
    int green = rgb >> 8 & 0xFF;
    int blue = rgb & 0xFF;
    return Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue)) < COLOURED;
  }

  private static boolean isPeak(double[] shown, double[] strength, int i) {
    for (int k = Math.max(0, i - 3); k <= Math.min(shown.length - 1, i + 3); k++) {
      if (strength[k] > strength[i] || strength[k] == strength[i] && k < i) {
        return false;
      }
    }
    return shown[i] > 0;
  }

  /** The exact place and thickness of a line from how dark the rows around it are on the whole. */
  private Rule rule(int y, int reach) {
    int from = Math.max(0, y - reach);
    int to = Math.min(shade.height - 1, y + reach);
    double[] dark = new double[to - from + 1];
    long red = 0;
    long green = 0;
    long blue = 0;
    int count = 0;
    for (int x = x0; x <= x1; x++) {
      int difference = difference(x, y, reach);
      if (difference == 0 || !isGrey(raster.at(x, y))) {
        continue;
      }
      count++;
      int rgb = raster.at(x, y);
      red += rgb >> 16 & 0xFF;
      green += rgb >> 8 & 0xFF;
      blue += rgb & 0xFF;
      int base = (shade.at(x, from) + shade.at(x, to)) / 2;
      for (int k = 0; k < dark.length; k++) {
        dark[k] += difference > 0 ? base - shade.at(x, from + k) : shade.at(x, from + k) - base;
      }
    }
    double most = 0;
    for (double d : dark) {
      most = Math.max(most, d);
    }
    double sum = 0;
    double moment = 0;
    int peak = y - from;
    for (int step = -1; step <= 1; step += 2) {
      for (int k = step < 0 ? peak : peak + 1; k >= 0 && k < dark.length; k += step) {
        double d = dark[k] - 0.08 * most;
        if (d <= 0) {
          break;
        }
        sum += d;
        moment += d * (from + k);
      }
    }
    int n = Math.max(1, count);
    int rgb = (int) (red / n) << 16 | (int) (green / n) << 8 | (int) (blue / n);
    return new Rule(sum > 0 ? moment / sum : y, sum / Math.max(1e-9, most), rgb);
  }

  private static List<Rule> distinct(List<Rule> rules) {
    List<Rule> out = new ArrayList<>();
    for (Rule rule : rules) {
      Rule last = out.isEmpty() ? null : out.get(out.size() - 1);
      if (last == null || rule.at() - last.at() > 2.5) {
        out.add(rule);
      }
    }
    return out;
  }
}
