package commonsheet.workbench.figure;

import commonsheet.chart.InkTracer;
import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.PlotInk;
import commonsheet.chart.reference.PlacedLine;
import java.util.List;
import java.util.Locale;

/**
 * A line as it was followed, for a person to accept or not.
 *
 * @param points in points of the page, from left to right
 * @param ink {@code paths} or {@code pixels}
 * @param errorX how far a point can be off across the page, in points
 * @param errorY the same down the page
 * @param sentence what was found
 */
record Proposal(
    List<List<Double>> points, String ink, double errorX, double errorY, String sentence) {
  static Proposal of(InkTracer.Found found) {
    PlacedLine line =
        new PlacedLine(found.trace().points(), found.trace().errorX(), found.trace().errorY())
            .thinned();
    boolean paths = found.ink() == PlotInk.PATHS;
    String dash =
        found.trace().style().dash() == InkStyle.Dash.SOLID
            ? "A line"
            : "A "
                + found.trace().style().dash().name().toLowerCase(Locale.ROOT).replace('_', '-')
                + " line";
    return new Proposal(
        line.points().stream().map(p -> List.of(p.x(), p.y())).toList(),
        paths ? "paths" : "pixels",
        line.errorX(),
        line.errorY(),
        dash
            + " was followed in the page's "
            + (paths ? "paths" : "pixels")
            + ": "
            + line.points().size()
            + " points. Take it if it lies on the ink from end to end.");
  }
}
