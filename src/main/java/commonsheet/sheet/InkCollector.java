package commonsheet.sheet;

import java.util.ArrayList;
import java.util.List;

/** Sorts what a page draws by what it can mean to a reader, and drops what cannot be seen. */
final class InkCollector {
  /**
   * Points up to which a filled shape or picture counts as a line; borders in sheets are 0.2 to 3
   * thick.
   */
  private static final double THICKEST_LINE = 3.2;

  /** How many times longer than thick a filled shape must be to count as a line. */
  private static final double SLENDER = 3;

  /**
   * Shortest line noted, in points: shorter ones are hatching, dots of a leader or parts of a
   * letter.
   */
  private static final double SHORTEST_LINE = 2;

  /** Largest side of a filled shape that can be a letter turned into an outline, in points. */
  private static final double LARGEST_LETTER = 36;

  /** Slanted pieces in one stroke from which it is a curve as a whole, its level parts included. */
  private static final int CURVE_PIECES = 6;

  /** Font sizes in points outside of which nothing can be read, or nothing fits on a page. */
  private static final double SMALLEST_PRINT = 0.5;

  private static final double LARGEST_PRINT = 1500;

  private record Backdrop(Box box, double light) {}

  private final List<Glyph> glyphs = new ArrayList<>();
  private final List<Box> strokes = new ArrayList<>();
  private final List<Box> fills = new ArrayList<>();
  private final List<Box> curves = new ArrayList<>();
  private final List<Box> images = new ArrayList<>();
  private final List<Box> outlines = new ArrayList<>();
  private final List<Backdrop> backdrops = new ArrayList<>();
  private final DoublePrints doublePrints = new DoublePrints();

  Ink ink() {
    return new Ink(glyphs, strokes, fills, curves, images, outlines);
  }

  void glyph(Glyph glyph, Box clip) {
    if (!(glyph.size() > SMALLEST_PRINT && glyph.size() < LARGEST_PRINT)) {
      return;
    }
    double x = glyph.x() + glyph.advanceX() / 2;
    double y = glyph.y() + glyph.advanceY() / 2;
    double slack = glyph.size() / 2;
    boolean outside =
        x < clip.x() - slack / 4
            || x > clip.right() + slack / 4
            || y < clip.y() - slack
            || y > clip.bottom() + slack;
    if (outside || (!glyph.hidden() && isInvisible(x, y, glyph.light()))) {
      return;
    }
    if (glyph.isSpace() || !isSecondPrint(glyph)) {
      glyphs.add(glyph);
    }
  }

  /**
   * Whether a letter lies where the same one was printed already; the first is then marked bold.
   */
  private boolean isSecondPrint(Glyph glyph) {
    int i = doublePrints.firstOf(glyph, glyphs);
    if (i >= 0) {
      Glyph first = glyphs.get(i);
      boolean visible = !first.hidden() || glyph.hidden();
      glyphs.set(i, visible ? bold(first, !first.hidden() && !glyph.hidden()) : glyph);
    }
    return i >= 0;
  }

  private static Glyph bold(Glyph g, boolean bold) {
    return new Glyph(
        g.text(),
        g.x(),
        g.y(),
        g.advanceX(),
        g.advanceY(),
        g.spacing(),
        g.size(),
        g.bold() || bold,
        g.light(),
        g.hidden());
  }

  void stroke(Subpath piece, double width, double light, Box clip) {
    int slanted = 0;
    for (int i = 1; i < piece.points(); i++) {
      slanted += isStraight(piece, i) ? 0 : 1;
    }
    if (slanted > 0) {
      Box open = intersect(piece.bounds(), clip);
      if (open != null) {
        curves.add(open);
      }
    }
    if (slanted >= CURVE_PIECES) {
      return;
    }
    for (int i = 1; i < piece.points(); i++) {
      if (isStraight(piece, i)) {
        straight(piece, i, width, light, clip);
      }
    }
  }

  private static boolean isStraight(Subpath piece, int i) {
    return Math.abs(piece.x(i) - piece.x(i - 1)) <= Subpath.STRAIGHT
        || Math.abs(piece.y(i) - piece.y(i - 1)) <= Subpath.STRAIGHT;
  }

  private void straight(Subpath piece, int i, double width, double light, Box clip) {
    double left = Math.min(piece.x(i), piece.x(i - 1));
    double low = Math.min(piece.y(i), piece.y(i - 1));
    double dx = Math.abs(piece.x(i) - piece.x(i - 1));
    double dy = Math.abs(piece.y(i) - piece.y(i - 1));
    if (width > 2 * THICKEST_LINE) {
      boolean level = dx > dy;
      Box bar =
          level
              ? new Box(left, low - width / 2, dx, width)
              : new Box(left - width / 2, low, width, dy);
      area(bar, light, clip);
      return;
    }
    Box line = dx > dy ? new Box(left, low + dy / 2, dx, 0) : new Box(left + dx / 2, low, 0, dy);
    line(line, light, clip);
  }

  void fill(Subpath piece, double light, Box clip) {
    if (piece.points() < 2) {
      return;
    }
    Box box = piece.bounds();
    double thin = Math.min(box.width(), box.height());
    double length = Math.max(box.width(), box.height());
    if (piece.isFourSided() && thin <= THICKEST_LINE && length >= SLENDER * thin) {
      boolean level = box.width() > box.height();
      line(
          level
              ? new Box(box.x(), box.centreY(), box.width(), 0)
              : new Box(box.centreX(), box.y(), 0, box.height()),
          light,
          clip);
    } else if (!piece.isCurved() && piece.isUpright()) {
      area(box, light, clip);
    } else {
      shape(box, light, clip);
    }
  }

  private void shape(Box box, double light, Box clip) {
    Box open = intersect(box, clip);
    if (open == null || isInvisible(open.centreX(), open.centreY(), light)) {
      return;
    }
    backdrops.add(new Backdrop(open, light));
    if (Math.max(open.width(), open.height()) <= LARGEST_LETTER) {
      outlines.add(open);
    } else {
      curves.add(open);
    }
  }

  private void area(Box box, double light, Box clip) {
    Box open = intersect(box, clip);
    if (open != null) {
      if (light < Lightness.PAPER) {
        fills.add(open);
      }
      backdrops.add(new Backdrop(open, light));
    }
  }

  private void line(Box line, double light, Box clip) {
    Box open = intersect(line, clip);
    if (open != null
        && Math.max(open.width(), open.height()) >= SHORTEST_LINE
        && !isInvisible(open.centreX(), open.centreY(), light)) {
      strokes.add(open);
    }
  }

  void shade(Box clip) {
    backdrops.add(new Backdrop(clip, Lightness.UNKNOWN));
  }

  void image(Box box, Box clip) {
    Box open = intersect(box, clip);
    if (open == null) {
      return;
    }
    double thin = Math.min(open.width(), open.height());
    double length = Math.max(open.width(), open.height());
    if (thin <= THICKEST_LINE && length >= SLENDER * thin && length >= SHORTEST_LINE) {
      boolean level = open.width() > open.height();
      strokes.add(
          level
              ? new Box(open.x(), open.centreY(), open.width(), 0)
              : new Box(open.centreX(), open.y(), 0, open.height()));
    } else {
      images.add(open);
      backdrops.add(new Backdrop(open, Lightness.UNKNOWN));
    }
  }

  /** Whether ink this light cannot be told from what lies behind it. */
  private boolean isInvisible(double x, double y, double light) {
    if (light < Lightness.PAPER) {
      return false;
    }
    for (int i = backdrops.size() - 1; i >= 0; i--) {
      if (backdrops.get(i).box().contains(x, y)) {
        return backdrops.get(i).light() >= Lightness.PAPER;
      }
    }
    return true;
  }

  /** What of a box lies within another, or null; a line without thickness keeps its length. */
  private static Box intersect(Box box, Box clip) {
    double left = Math.max(box.x(), clip.x());
    double low = Math.max(box.y(), clip.y());
    double right = Math.min(box.right(), clip.right());
    double high = Math.min(box.bottom(), clip.bottom());
    return right < left || high < low ? null : new Box(left, low, right - left, high - low);
  }
}
