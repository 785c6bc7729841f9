package commonsheet.chart.vector;

import commonsheet.sheet.Box;
import java.util.List;

/**
 * What a page draws, by what it can be in a plot.
 *
 * @param lines strokes that do not lie along an axis of the page as a whole
 * @param rules straight lines along an axis of the page
 * @param boxes rectangles drawn as one closed line
 * @param shapes markers, arrowheads, letters as outlines
 * @param patches painted areas
 */
record PageInk(
    List<Stroke> lines,
    List<Rule> rules,
    List<Box> boxes,
    List<Shape> shapes,
    List<Patch> patches) {}
