package commonsheet.chart.vector;

import commonsheet.sheet.Box;

/**
 * A painted area larger than a letter.
 *
 * @param rectangle whether it fills its box
 * @param order place in the order of painting
 */
record Patch(Box box, boolean rectangle, int rgb, int order) {}
