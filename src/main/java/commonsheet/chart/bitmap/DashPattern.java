package commonsheet.chart.bitmap;

import commonsheet.chart.plot.InkStyle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Tells how a line is broken from where there is ink along it. */
final class DashPattern {
  /** Share of ink below which there is a gap. */
  private static final double GAP = 0.3;

  /** Gaps that a broken line has at least. */
  private static final int FEWEST_GAPS = 4;

  /** Longest dot and shortest long dash, in line widths. */
  private static final double DOT = 2.1;

  private static final double LONG = 9;

  /** Share of dots, and of dashes, in a line that has both. */
  private static final double MIXED = 0.2;

  private DashPattern() {}

  static InkStyle.Dash of(Strand strand, Layer layer, double lineWidth) {
    List<Integer> dashes = new ArrayList<>();
    int gaps = 0;
    int run = 0;
    boolean inGap = true;
    for (int i = 1; i < strand.length(); i++) {
      double dx = strand.x()[i] - strand.x()[i - 1];
      double dy = strand.y()[i] - strand.y()[i - 1];
      int steps = (int) Math.max(1, Math.round(Math.hypot(dx, dy)));
      for (int k = 0; k < steps; k++) {
        double x = strand.x()[i - 1] + dx * k / steps;
        double y = strand.y()[i - 1] + dy * k / steps;
        boolean empty = layer.share(x, y) < GAP && !isCovered(layer, x, y);
        if (!empty) {
          run++;
        } else if (!inGap) {
          dashes.add(run);
          run = 0;
          gaps++;
        }
        inGap = empty;
      }
    }
    return gaps < FEWEST_GAPS ? InkStyle.Dash.SOLID : kind(dashes, lineWidth);
  }

  private static boolean isCovered(Layer layer, double x, double y) {
    int i = (int) Math.round(y) * layer.width() + (int) Math.round(x);
    return i >= 0 && i < layer.covered().length && layer.covered()[i];
  }

  /** The pattern of dashes of some lengths in pixels. */
  static InkStyle.Dash kind(List<Integer> lengths, double lineWidth) {
    List<Integer> dashes = new ArrayList<>(lengths);
    Collections.sort(dashes);
    double dot = DOT * lineWidth + 0.5;
    double dots = dashes.stream().filter(d -> d <= dot).count();
    double share = dots / dashes.size();
    double usual = dashes.get(dashes.size() / 2);
    if (share > 1 - MIXED) {
      return InkStyle.Dash.DOTTED;
    }
    if (share > MIXED) {
      return InkStyle.Dash.DASH_DOTTED;
    }
    return usual > LONG * lineWidth ? InkStyle.Dash.LONG_DASHED : InkStyle.Dash.DASHED;
  }
}
