package commonsheet.sheet;

/**
 * Where a page shows a picture, and how fine it is.
 *
 * @param box as displayed
 * @param columns pixels across, as stored
 * @param rows pixels down, as stored
 * @param order place in the order of painting, counted together with the paths
 */
public record PlacedPicture(Box box, int columns, int rows, int order) {}
