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
 * @param turned degrees clockwise by which the page was turned because the words of its picture
 *     stand on their side: 0, 90, 180 or 270
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
    List<Box> figures,
    int turned) {
  /** What the page offers before anything is recognised on it. */
  PageKind kind() {
    return pictures.kind(body.size() + aside.size());
  }

  /**
   * The page without its words, turned clockwise.
   *
   * @param quarters of a full turn, 0 to 3
   */
  PageContent turnedBy(int quarters) {
    QuarterTurn turn = new QuarterTurn(quarters, width, height);
    return new PageContent(
        number,
        turn.page().width(),
        turn.page().height(),
        List.of(),
        List.of(),
        turn.place(rulings),
        turn.place(curves),
        new PictureRegions(turn.place(pictures.boxes()), pictures.drawn()),
        turn.place(figures),
        (turned + 90 * quarters) % 360);
  }

  /** The page as if nothing were written on it. */
  PageContent withoutWords() {
    return with(List.of(), List.of(), rulings, curves);
  }

  PageContent with(
      List<Word> newBody, List<Word> newAside, Rulings newRulings, List<Box> newCurves) {
    return new PageContent(
        number, width, height, newBody, newAside, newRulings, newCurves, pictures, figures, turned);
  }
}
