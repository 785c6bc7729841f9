package commonsheet.chart.plot;

import commonsheet.sheet.Point;
import java.util.List;

/**
 * The middle of one drawn line, followed from end to end.
 *
 * @param points in the order of drawing or following, which for most curves is left to right
 * @param style how it looks
 * @param errorX how far a point can lie from the true middle of the line across the page, in points
 * @param errorY the same down the page
 * @param doubts why it may not be one curve, one sentence each; empty when nothing speaks against
 */
public record Trace(
    List<Point> points, InkStyle style, double errorX, double errorY, List<String> doubts) {
  public Trace {
    points = List.copyOf(points);
    doubts = List.copyOf(doubts);
  }
}
