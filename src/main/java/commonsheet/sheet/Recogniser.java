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
}
