package commonsheet.sheet;

import java.util.List;

/** Reads the words of a picture. */
public interface Recogniser {
  /**
   * The words of a picture, level ones and ones that stand on their side, with boxes on the page
   * and the confidence of each.
   */
  List<Word> words(PagePixels picture);
}
