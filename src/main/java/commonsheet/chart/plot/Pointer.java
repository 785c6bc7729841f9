package commonsheet.chart.plot;

import commonsheet.sheet.Point;

/**
 * A straight line that can lead from a label to a curve.
 *
 * @param from the end without an arrowhead, or either end
 * @param to the end with an arrowhead, or the other
 * @param arrow whether an arrowhead tells which is which
 * @param rgb colour, 0xRRGGBB
 */
public record Pointer(Point from, Point to, boolean arrow, int rgb) {}
