package commonsheet.sheet;

/**
 * How large a page is as displayed.
 *
 * @param page from 1
 * @param width in points
 * @param height in points
 */
public record PageSize(int page, double width, double height) {}
