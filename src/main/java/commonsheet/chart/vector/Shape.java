package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.List;
import java.util.stream.Stream;

/**
 * Something small and compact: a marker, an arrowhead, or a letter drawn as an outline.
 *
 * @param runs its lines, or the outlines of its areas
 * @param hollow whether only its line is drawn
 * @param order place in the order of painting
 */
record Shape(List<List<Point>> runs, Box box, boolean hollow, int rgb, int order) {
  /** Largest side in points; markers in sheets are 2 to 8 points wide. */
  static final double LARGEST = 14;

  Point centre() {
    return Geometry.centre(box);
  }

  /** This shape and one drawn over it; a white ground takes the colour of its line. */
  Shape and(Shape other) {
    List<List<Point>> all = Stream.concat(runs.stream(), other.runs.stream()).toList();
    boolean whiteGround = rgb != other.rgb;
    return new Shape(
        all, box.union(other.box), whiteGround || (hollow && other.hollow), other.rgb, order);
  }
}
