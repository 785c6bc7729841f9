package commonsheet.sheet;

import java.util.List;

/**
 * One path a page draws, as it can be seen: cut to its clip, curves resolved into straight pieces.
 *
 * @param runs its connected pieces, each of two points or more, in points from the top left of the
 *     page as displayed; a closed piece ends where it starts
 * @param filled whether the inside is painted instead of the line
 * @param rgb colour, 0xRRGGBB
 * @param width line width in points as displayed; 0 for a filled path
 * @param dash lengths of dashes and gaps in points as displayed; empty for a solid line
 * @param order place in the order of painting; a later path covers an earlier one
 */
public record DrawnPath(
    List<List<Point>> runs, boolean filled, int rgb, double width, List<Double> dash, int order) {
  public DrawnPath {
    runs = runs.stream().map(List::copyOf).toList();
    dash = List.copyOf(dash);
  }
}
