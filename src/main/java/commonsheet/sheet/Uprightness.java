package commonsheet.sheet;

import java.util.List;

/** Tells from the words recognised on a picture how it has to be turned to be read. */
final class Uprightness {
  /** Characters on their side below which a page is left as it is: titles of axes, dimensions. */
  private static final int FEWEST = 24;

  /** How many times more characters must stand on their side than level for the page to be so. */
  private static final double CLEARLY = 1.5;

  /**
   * Mean confidence of a page's characters below which it may stand on its head. The scans of our
   * fixtures have 0.93 and more, the same upside down 0.43 to 0.82.
   */
  private static final double UPRIGHT = 0.85;

  private Uprightness() {}

  /**
   * Quarter turns clockwise by which words on their side come to stand level; 0 for few of them.
   */
  static int quarters(List<Word> words) {
    int level = characters(words, 0);
    int upwards = characters(words, 90);
    int downwards = characters(words, 270);
    if (upwards + downwards < Math.max(FEWEST, CLEARLY * level)) {
      return 0;
    }
    return upwards >= downwards ? 1 : 3;
  }

  /** Whether words are so unsure that they may be those of a page upside down. */
  static boolean mayBeUpsideDown(List<Word> words) {
    return sureCharacters(words) < UPRIGHT * words.stream().mapToInt(w -> w.text().length()).sum();
  }

  /** How many characters were read, each counted by its confidence. */
  static double sureCharacters(List<Word> words) {
    return words.stream().mapToDouble(w -> w.text().length() * w.confidence()).sum();
  }

  private static int characters(List<Word> words, int turn) {
    return words.stream().filter(w -> w.turn() == turn).mapToInt(w -> w.text().length()).sum();
  }
}
