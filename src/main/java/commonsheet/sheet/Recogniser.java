package commonsheet.sheet;

import java.util.List;

/** Reads the words of a picture. */
public interface Recogniser {
  /**
   * The words of a picture, level ones and ones that stand on their side, with boxes on the page
   * and the confidence of each.
   *
   * @throws RecogniserException if pictures cannot be read on this machine
   */
  List<Word> words(PagePixels picture);

  /**
   * The words of a drawing such as a chart, where single words stand among lines; more is done to
   * find them than on a page of text.
   *
   * @throws RecogniserException if pictures cannot be read on this machine
   */
  default List<Word> wordsOfDrawing(PagePixels picture) {
    return words(picture);
  }

  /**
   * The words at places that are known to hold some. A recogniser that cannot do this for less
   * reads the whole picture.
   *
   * @param places of lines or parts of lines; those outside the picture are left out
   * @throws RecogniserException if pictures cannot be read on this machine
   */
  default List<Word> words(PagePixels picture, List<TextPlace> places) {
    return words(picture);
  }
}
