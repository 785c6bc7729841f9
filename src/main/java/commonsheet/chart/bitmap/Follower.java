package commonsheet.chart.bitmap;

import java.util.ArrayList;
import java.util.List;

/** Finds the lines in one ink. */
final class Follower {
  /** Share of ink from which a pixel belongs to a line. */
  private static final double LINE = 0.4;

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
    List<Chain> pieces = new ArrayList<>();
    boolean[] lines = LineWidth.withoutBlobs(ink, skeleton, layer.width(), lineWidth);
    for (int[] whole : Chains.of(lines, layer.width(), layer.height())) {
      for (int[] pixels : Folds.cut(whole, layer.width(), lineWidth + 4)) {
        pieces.add(new Chain(pixels, Palette.tone(field, pixels)));
      }
    }
    List<Strand> out = new ArrayList<>();
    Centre centre = new Centre(layer, lineWidth);
    for (Strand strand : Linker.join(layer, pieces, lineWidth)) {
      out.add(centre.of(strand));
    }
    return out;
  }

  /** The usual thickness of the lines in pixels. */
  double lineWidth() {
    return lineWidth;
  }
}
