package commonsheet.sheet;

import java.util.List;

/**
 * What a page draws besides words.
 *
 * @param page from 1
 * @param width in points, as displayed
 * @param height in points, as displayed
 */
public record PageDrawing(
    int page, double width, double height, List<DrawnPath> paths, List<PlacedPicture> pictures) {
  public PageDrawing {
    paths = List.copyOf(paths);
    pictures = List.copyOf(pictures);
  }
}
