package commonsheet.sheet;

/**
 * Where a line of text, or a part of one, stands on a page.
 *
 * @param ink around what is printed, in points
 * @param turn direction of reading as {@link Word#turn} has it: 0, 90, 180 or 270
 */
public record TextPlace(Box ink, int turn) {}
