package commonsheet.chart.bitmap;

import commonsheet.chart.plot.InkStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds short level pieces of line in and around a plot, of the colours of its curves, as a legend
 * has beside its words.
 */
final class Swatches {
  /** How far around the plot is looked, as a share of its size. */
  private static final double AROUND = 0.5;

  /** Length of a piece in line widths at least, in pixels at least, as a share of width at most. */
  private static final double SHORTEST_WIDTHS = 2.2;

  private static final double SHORTEST = 7;

  private static final double LONGEST = 0.3;

  /** How far apart dashes of one piece may be, as a share of the plot's width. */
  private static final double DASH_GAP = 0.02;

  private final Raster raster;
  private final Area plot;
  private final int ground;
  private final List<Tone> inks;

  Swatches(Raster raster, Area plot, int ground, List<Tone> inks) {
    this.raster = raster;
    this.plot = plot;
    this.ground = ground;
    this.inks = inks;
  }

  /**
   * A piece: where it lies in the picture, its ink, the lengths of its parts in pixels and what
   * stands on it.
   */
  record Swatch(Area area, Tone ink, List<Integer> parts, InkStyle.Marker marker) {
    Swatch {
      parts = List.copyOf(parts);
    }

    private static Swatch of(Area part, Tone ink) {
      return new Swatch(part, ink, List.of((int) part.width() + 1), InkStyle.Marker.NONE);
    }

    private Swatch with(Area part) {
      Area joined =
          new Area(
              area.left(),
              Math.min(area.top(), part.top()),
              Math.max(area.right(), part.right()),
              Math.max(area.bottom(), part.bottom()));
      List<Integer> more = new ArrayList<>(parts);
      more.add((int) part.width() + 1);
      return new Swatch(joined, ink, more, marker);
    }

    /** How the piece is broken. */
    InkStyle.Dash dash(double lineWidth) {
      return parts.size() == 1 ? InkStyle.Dash.SOLID : DashPattern.kind(parts, lineWidth);
    }
  }

  List<Swatch> find(double lineWidth) {
    int x0 = (int) Math.max(0, plot.left() - AROUND * plot.width());
    int x1 = (int) Math.min(raster.width - 1, plot.right() + AROUND * plot.width());
    int y0 = (int) Math.max(0, plot.top() - AROUND * plot.height());
    int y1 = (int) Math.min(raster.height - 1, plot.bottom() + AROUND * plot.height());
    int width = x1 - x0 + 1;
    int height = y1 - y0 + 1;
    byte[] owner = new byte[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        owner[y * width + x] = (byte) ink(raster.at(x + x0, y + y0));
      }
    }
    List<Swatch> out = new ArrayList<>();
    for (int k = 0; k < inks.size(); k++) {
      List<Area> parts = new ArrayList<>();
      for (Area part : Spots.of(owner, (byte) k, width, height)) {
        InkStyle.Marker marker = MarkedSample.of(owner, (byte) k, width, part, lineWidth);
        if (marker != InkStyle.Marker.NONE && part.width() <= LONGEST * plot.width()) {
          Area area =
              new Area(part.left() + x0, part.top() + y0, part.right() + x0, part.bottom() + y0);
          out.add(new Swatch(area, inks.get(k), List.of((int) part.width() + 1), marker));
        } else if (part.height() <= (inks.get(k).isGrey() ? lineWidth + 1 : 3 * lineWidth + 4)) {
          parts.add(
              new Area(part.left() + x0, part.top() + y0, part.right() + x0, part.bottom() + y0));
        }
      }
      out.addAll(pieces(parts, inks.get(k), lineWidth));
    }
    return out;
  }

  private int ink(int rgb) {
    Tone tone = Tone.between(rgb, ground);
    double strength = tone.strength();
    if (strength < Palette.INK) {
      return -1;
    }
    int best = -1;
    double likeness = 0.955;
    for (int k = 0; k < inks.size(); k++) {
      double l = tone.likeness(inks.get(k));
      if (l > likeness && strength > 0.45 * inks.get(k).strength()) {
        likeness = l;
        best = k;
      }
    }
    return best;
  }

  /** Joins dashes on one row and keeps what has the form of a piece of line. */
  private List<Swatch> pieces(List<Area> parts, Tone ink, double lineWidth) {
    double gap = Math.max(4, DASH_GAP * plot.width());
    List<Area> sorted = new ArrayList<>(parts);
    sorted.sort(Comparator.comparingDouble(Area::left));
    List<Swatch> open = new ArrayList<>();
    for (Area part : sorted) {
      Swatch before = null;
      for (Swatch other : open) {
        Area a = other.area();
        double middle = (part.top() + part.bottom()) / 2;
        if (part.left() - a.right() <= gap
            && part.left() >= a.left()
            && Math.abs(middle - (a.top() + a.bottom()) / 2) <= 1.5) {
          before = other;
        }
      }
      open.remove(before);
      open.add(before == null ? Swatch.of(part, ink) : before.with(part));
    }
    open.removeIf(s -> !isPiece(s.area(), lineWidth));
    return open;
  }

  private boolean isPiece(Area area, double lineWidth) {
    double length = area.width() + 1;
    double height = area.height() + 1;
    return length >= Math.max(SHORTEST, SHORTEST_WIDTHS * lineWidth)
        && length >= 2.2 * height
        && height <= 2 * lineWidth + 2
        && length <= Math.max(24, LONGEST * plot.width());
  }
}
