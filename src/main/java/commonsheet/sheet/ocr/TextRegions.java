package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes boxes of lines of text from a map of their cores, as in Liao et al., "Real-time Scene Text
 * Detection with Differentiable Binarization", AAAI 2020: areas above a threshold, the smallest box
 * around each, grown by the share the cores were made smaller by in training.
 */
final class TextRegions {
  /** Probability from which a pixel belongs to a core, as the models were published with. */
  private static final float CORE = 0.3f;

  /** Mean probability of a core that is text. */
  private static final double TEXT = 0.5;

  /** Growth: area times this over perimeter, in pixels. */
  private static final double GROWTH = 1.6;

  /** Fewest pixels of a core, and its least height: half a stroke of the smallest print. */
  private static final int FEWEST_PIXELS = 6;

  private static final double LOWEST = 2;

  /** A level box is kept unless the smallest one has less than this share of its area. */
  private static final double WORTH_TURNING = 0.87;

  private TextRegions() {}

  /** Boxes in pixels of the map, each in the level or nearly level direction. */
  static List<TurnedBox> of(ProbabilityMap map) {
    List<TurnedBox> boxes = new ArrayList<>();
    for (Components.Component core : Components.above(map, CORE)) {
      if (core.pixels() < FEWEST_PIXELS || core.mean() < TEXT) {
        continue;
      }
      TurnedBox box = around(Hull.of(core.outline()));
      if (Math.min(box.height(), box.length()) >= LOWEST) {
        boxes.add(box.grown(box.area() * GROWTH / (2 * (box.length() + box.height()))));
      }
    }
    return boxes;
  }

  private static TurnedBox around(Hull hull) {
    TurnedBox level = hull.levelBox();
    TurnedBox smallest = hull.smallestBox();
    return smallest.area() < WORTH_TURNING * level.area() ? smallest : level;
  }
}
