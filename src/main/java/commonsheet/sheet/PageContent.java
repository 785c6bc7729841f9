package commonsheet.sheet;

import java.util.List;

/**
 * What is known of a page before lines and tables are made of it. Words recognised from pictures
 * enter here, beside or instead of written ones; everything after takes words from anywhere.
 *
 * @param width in points, as displayed
 * @param height in points, as displayed
 * @param body upright words
 * @param aside turned words and watermarks, which stand on no line
 * @param rulings drawn lines along the axes, merged
 * @param curves boxes of slanted and curved strokes
 * @param pictures where words may be drawn that are not written
 * @param figures what can be a chart: pictures as large as one, and all slanted and curved lines
 *     together if they are
 */
record PageContent(
    int number,
    double width,
    double height,
    List<Word> body,
    List<Word> aside,
    Rulings rulings,
    List<Box> curves,
    PictureRegions pictures,
    List<Box> figures) {
  /** What the page offers before anything is recognised on it. */
  PageKind kind() {
    return pictures.kind(body.size() + aside.size());
  }
}
