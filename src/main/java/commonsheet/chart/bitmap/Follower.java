package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;

/** Finds the lines in one ink. */
final class Follower {
  /** Share of ink from which a pixel belongs to a line. */
  private static final double LINE = 0.4;

  /** Share of the ink's extent that a line must go for it to be followed. */
  private static final double REACHED = 0.93;

  /** Share of a whole curve that must lie in its ink. */
  private static final double SEEN = 0.5;

  /** Pieces beyond which ink is no curves but a text or a drawing; eight dotted ones have 800. */
  private static final int MOST_PIECES = 2000;

  private final Layer layer;
  private final Field field;
  private final boolean[] ink;
  private final boolean[] skeleton;
  private final double lineWidth;

  Follower(Field field, Layer layer) {
    this.field = field;
    this.layer = layer;
    this.ink = new boolean[layer.share().length];
    for (int i = 0; i < ink.length; i++) {
      ink[i] = layer.share()[i] >= LINE;
    }
    this.skeleton = Skeleton.of(ink, layer.width(), layer.height());
    this.lineWidth = LineWidth.of(ink, skeleton, layer.width(), layer.height());
  }

  /** The lines, through the middle of the ink. */
  List<Strand> strands() {
    List<Chain> pieces = pieces();
    if (pieces.size() > MOST_PIECES) {
      return List.of();
    }
    List<Strand> joined = Linker.join(layer, pieces, lineWidth);
    Extent extent = Extent.of(ink, layer.width(), layer.height(), lineWidth);
    if (!layer.ink().isGrey() && extent.isOneCurve() && !reach(joined, extent)) {
      Strand whole = whole();
      if (whole.spanX() > longest(joined) && seen(whole) >= SEEN) {
        joined = List.of(whole);
      }
    }
    Centre centre = new Centre(layer, lineWidth);
    return joined.stream().map(centre::of).toList();
  }

  private List<Chain> pieces() {
    List<Chain> pieces = new ArrayList<>();
    boolean[] lines = LineWidth.withoutBlobs(ink, skeleton, layer.width(), lineWidth);
    for (int[] whole : Chains.of(lines, layer.width(), layer.height())) {
      for (int[] pixels : Folds.cut(whole, layer.width(), lineWidth + 4)) {
        pieces.add(new Chain(pixels, Palette.tone(field, pixels)));
      }
    }
    return pieces;
  }

  /** Whether one of the lines goes nearly all the way across the ink, and down it. */
  private static boolean reach(List<Strand> strands, Extent extent) {
    return strands.stream()
        .anyMatch(
            s ->
                s.spanX() >= REACHED * extent.width() - 3
                    && s.spanY() >= REACHED * extent.height() - 3);
  }

  private static double longest(List<Strand> strands) {
    return strands.stream().mapToDouble(Strand::spanX).max().orElse(0);
  }

  private double seen(Strand strand) {
    int seen = 0;
    for (int i = 0; i < strand.length(); i++) {
      if (ink[(int) strand.y()[i] * layer.width() + (int) strand.x()[i]]) {
        seen++;
      }
    }
    return (double) seen / Math.max(1, strand.length());
  }

  /** The one curve of this ink, followed as a whole. */
  private Strand whole() {
    int[] path = PathTracker.follow(layer);
    double[] x = new double[path.length];
    double[] y = new double[path.length];
    for (int i = 0; i < path.length; i++) {
      x[i] = path[i] % layer.width();
      y[i] = path[i] / layer.width();
    }
    return new Strand(x, y, new boolean[path.length], layer.ink(), 0);
  }

  /** The usual thickness of the lines in pixels. */
  double lineWidth() {
    return lineWidth;
  }
}
