package commonsheet.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds letters printed a second time nearly where they stand, which is how some programs make
 * bold.
 */
final class DoublePrints {
  /** Share of the font size two prints of one letter may lie apart. */
  private static final double APART = 0.13;

  /** Points two prints of the largest letters may lie apart. */
  private static final double FARTHEST = 8;

  /** Share of the font size by which the two may differ in size. */
  private static final double SAME_SIZE = 0.2;

  /** Side of the squares by which letters are looked up, in points. */
  private static final double SQUARE = 4;

  private final Map<Long, List<Integer>> places = new HashMap<>();

  /**
   * The index of the letter of which this is a second print, or -1; then it is noted as the next
   * one.
   */
  int firstOf(Glyph glyph, List<Glyph> glyphs) {
    double near = Math.min(FARTHEST, glyph.size() * APART);
    long top = square(glyph.y() + near);
    long right = square(glyph.x() + near);
    for (long row = square(glyph.y() - near); row <= top; row++) {
      for (long column = square(glyph.x() - near); column <= right; column++) {
        for (int i : places.getOrDefault(key(glyph, column, row), List.of())) {
          if (isSame(glyphs.get(i), glyph, near)) {
            return i;
          }
        }
      }
    }
    places
        .computeIfAbsent(key(glyph, square(glyph.x()), square(glyph.y())), p -> new ArrayList<>(1))
        .add(glyphs.size());
    return -1;
  }

  private static boolean isSame(Glyph first, Glyph second, double near) {
    return first.text().equals(second.text())
        && Math.hypot(first.x() - second.x(), first.y() - second.y()) <= near
        && Math.abs(first.size() - second.size()) < SAME_SIZE * second.size();
  }

  private static long square(double at) {
    return (long) Math.floor(at / SQUARE);
  }

  /** A number for a letter and a square; rare clashes are told apart by {@link #isSame}. */
  private static long key(Glyph glyph, long column, long row) {
    return ((column & 0xFFFFF) << 40)
        | ((row & 0xFFFFF) << 20)
        | (glyph.text().hashCode() & 0xFFFFF);
  }
}
