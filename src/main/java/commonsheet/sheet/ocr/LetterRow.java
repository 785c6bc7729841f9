package commonsheet.sheet.ocr;

import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * A level row of letters: where its ink begins and ends, and which marks can go on with it.
 *
 * @param box what it covers, its room included
 * @param top of its higher letters
 * @param bottom of its higher letters
 */
record LetterRow(Box box, double top, double bottom) {
  /** Lowest and highest letter, widest one or two that touch, in heights of the ink. */
  private static final double LOWEST = 0.6;

  private static final double HIGHEST = 1.5;

  private static final double WIDEST = 2;

  /** How far a letter may stand off the line, in heights of the ink, and at least in pixels. */
  private static final double OFF = 0.12;

  private static final double OFF_PIXELS = 1;

  /** How far letters with a tail and brackets reach over the line. */
  private static final double OVER = 0.35;

  /** How much lower small letters are, in heights of the ink. */
  private static final double SMALL = 0.45;

  /** Gap over which a row goes on, in heights of its ink: a space and a little. */
  private static final double GAP = 0.65;

  /** Room left beside the ink of a letter, in heights of the ink. */
  private static final double ROOM = 0.25;

  /** Lowest mark that tells where a row is, as a share of the height of its box. */
  private static final double TELLING = 0.3;

  /** The row in a box, told by the marks in it; null where none tells it. */
  static LetterRow of(Box box, List<Box> marks) {
    List<Box> inside = new ArrayList<>();
    double highest = 0;
    for (Box mark : marks) {
      if (box.contains(mark.centreX(), mark.centreY()) && mark.height() > TELLING * box.height()) {
        inside.add(mark);
        highest = Math.max(highest, mark.height());
      }
    }
    double limit = 0.85 * highest;
    double[] tops = inside.stream().filter(m -> m.height() >= limit).mapToDouble(Box::y).toArray();
    double[] bottoms =
        inside.stream().filter(m -> m.height() >= limit).mapToDouble(Box::bottom).toArray();
    return inside.isEmpty() ? null : new LetterRow(box, middle(tops), middle(bottoms));
  }

  private static double middle(double[] values) {
    java.util.Arrays.sort(values);
    return values[values.length / 2];
  }

  double height() {
    return bottom - top;
  }

  /** Whether a mark has the size and the place on the line of a letter. */
  boolean fits(Box mark) {
    double h = height();
    double off = Math.max(OFF_PIXELS, OFF * h);
    double above = top - mark.y();
    double below = mark.bottom() - bottom;
    boolean onLine = above > -SMALL * h && below > -off && below < OVER * h;
    boolean onMirroredLine = below > -SMALL * h && above > -off && above < OVER * h;
    return isSized(mark, h) && above < OVER * h && (onLine || onMirroredLine);
  }

  /** Whether a mark has the size of a letter in a row of some height. */
  static boolean isSized(Box mark, double height) {
    return mark.height() >= LOWEST * height
        && mark.height() <= HIGHEST * height
        && mark.width() <= WIDEST * height;
  }

  /** The row with the letters that go on at its ends. */
  LetterRow extended(List<Box> marks) {
    double left = box.right();
    double right = box.x();
    for (Box mark : marks) {
      if (box.contains(mark.centreX(), mark.centreY()) && mark.height() <= HIGHEST * height()) {
        left = Math.min(left, mark.x());
        right = Math.max(right, mark.right());
      }
    }
    Box ink = new Box(left, box.y(), Math.max(0, right - left), box.height());
    Box grown = ink;
    for (Box longer = null; longer != grown; ) {
      grown = longer == null ? grown : longer;
      longer = grown;
      for (Box mark : marks) {
        longer = fits(mark) ? with(longer, mark) : longer;
      }
    }
    double room = ROOM * height();
    double from = grown.x() < ink.x() ? Math.min(box.x(), grown.x() - room) : box.x();
    double to =
        grown.right() > ink.right() ? Math.max(box.right(), grown.right() + room) : box.right();
    return new LetterRow(new Box(from, box.y(), to - from, box.height()), top, bottom);
  }

  /** Ink and a mark beside it; the ink itself where the mark is within it or too far. */
  private Box with(Box ink, Box mark) {
    double gap = GAP * height();
    double left = mark.right() >= ink.x() - gap ? Math.min(ink.x(), mark.x()) : ink.x();
    double right =
        mark.x() <= ink.right() + gap ? Math.max(ink.right(), mark.right()) : ink.right();
    boolean same = left == ink.x() && right == ink.right();
    return same ? ink : new Box(left, ink.y(), right - left, ink.height());
  }
}
