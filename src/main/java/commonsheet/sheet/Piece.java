package commonsheet.sheet;

/**
 * A word in the making, in coordinates in which it reads left to right and y grows downwards.
 *
 * @param left where it begins
 * @param right where it ends
 * @param base where its base line is
 * @param light of its ink, 0 black to 1 white
 * @param glyphs how many characters were drawn for it
 * @param gapBefore whether a space was drawn before it
 * @param gapAfter whether a space was drawn after it
 */
record Piece(
    String text,
    double left,
    double right,
    double base,
    double size,
    boolean bold,
    double light,
    boolean recognised,
    int raised,
    int glyphs,
    boolean gapBefore,
    boolean gapAfter) {

  /** This piece and one that goes on to its right, as one. */
  Piece join(Piece next) {
    return new Piece(
        text + next.text,
        left,
        Math.max(right, next.right),
        base,
        Math.max(size, next.size),
        glyphs >= next.glyphs ? bold : next.bold,
        light,
        recognised && next.recognised,
        raised,
        glyphs + next.glyphs,
        gapBefore,
        next.gapAfter);
  }

  Piece withRaised(int how) {
    return new Piece(
        text, left, right, base, size, bold, light, recognised, how, glyphs, gapBefore, gapAfter);
  }

  Piece withText(String other) {
    return new Piece(
        other,
        left,
        right,
        base,
        size,
        bold,
        light,
        recognised,
        raised,
        glyphs,
        gapBefore,
        gapAfter);
  }

  Piece withGapAfter() {
    return new Piece(
        text, left, right, base, size, bold, light, recognised, raised, glyphs, gapBefore, true);
  }

  int firstCharacter() {
    return text.codePointAt(0);
  }

  int lastCharacter() {
    return text.codePointBefore(text.length());
  }

  boolean isSameSize(Piece other) {
    return Math.abs(size - other.size) <= 0.15 * Math.max(size, other.size);
  }
}
