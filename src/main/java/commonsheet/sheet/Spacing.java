package commonsheet.sheet;

/**
 * How far apart two characters may stand and still belong to one word, as shares of the font size
 * (em).
 *
 * <p>A drawn space is 0.22 to 0.33 em wide in text fonts, about 0.15 em where a line is squeezed to
 * fit; kerning and rounding leave gaps of up to some 0.1 em within words.
 */
final class Spacing {
  /** Between letters, digits and signs. */
  static final double WITHIN_WORD = 0.17;

  /** Between ideographs, which justified lines pull apart. */
  static final double BETWEEN_IDEOGRAPHS = 0.5;

  /** Between an ideograph and a letter or digit, where the least visible gap separates. */
  static final double AT_SCRIPT_CHANGE = 0.1;

  /**
   * With a space drawn in between: less than this and the space was taken back by moving the pen.
   */
  static final double DRAWN_SPACE = 0.08;

  /** How far a character may reach back over the one before it (kerning, italics). */
  static final double OVERLAP = 0.35;

  private Spacing() {}

  /** The widest gap within a word between two characters, in em. */
  static double limit(int before, int after, boolean spaceDrawn) {
    if (spaceDrawn) {
      return DRAWN_SPACE;
    }
    boolean first = Characters.isIdeographic(before);
    boolean second = Characters.isIdeographic(after);
    if (first && second) {
      return BETWEEN_IDEOGRAPHS;
    }
    return first || second ? AT_SCRIPT_CHANGE : WITHIN_WORD;
  }
}
