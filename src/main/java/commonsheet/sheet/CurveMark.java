package commonsheet.sheet;

import java.util.List;

/**
 * A curve to be drawn on the picture of a page.
 *
 * @param points its course in points from the top left of the page as displayed; empty for a curve
 *     whose places on the page are not known, which is only named
 * @param id short name that is written at the curve, such as {@code c1}
 * @param name what the list of curves says of it
 * @param unsure whether it is drawn broken and with a question mark
 */
public record CurveMark(List<Point> points, String id, String name, boolean unsure) {
  public CurveMark {
    points = List.copyOf(points);
  }
}
