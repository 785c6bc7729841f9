package commonsheet.sheet.ocr;

import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * The separate marks of ink in a picture that are as small as letters: letters, digits, dots, but
 * also dashes and markers of curves. Frames, curves and what touches them are larger.
 */
final class LetterMarks {
  /** Contrast to the ground from which a pixel is ink, of 255: light grids have some 50. */
  private static final int INK = 70;

  private final int width;
  private final int height;
  private final boolean[] ink;
  private int[] waiting = new int[1024];

  private LetterMarks(Pixels picture) {
    this.width = picture.width();
    this.height = picture.height();
    this.ink = new boolean[width * height];
    int ground = lightness(picture.commonest());
    for (int i = 0; i < ink.length; i++) {
      ink[i] = Math.abs(picture.lightness(i % width, i / width) - ground) > INK;
    }
  }

  private static int lightness(int colour) {
    return (299 * (colour >> 16 & 0xFF) + 587 * (colour >> 8 & 0xFF) + 114 * (colour & 0xFF))
        / 1000;
  }

  /**
   * The boxes of the marks, in pixels.
   *
   * @param largest side of a mark
   */
  static List<Box> of(Pixels picture, double largest) {
    LetterMarks marks = new LetterMarks(picture);
    List<Box> found = new ArrayList<>();
    for (int i = 0; i < marks.ink.length; i++) {
      if (marks.ink[i]) {
        Box mark = marks.take(i);
        if (Math.max(mark.width(), mark.height()) <= largest) {
          found.add(mark);
        }
      }
    }
    return found;
  }

  /** Takes a connected piece of ink away and tells its extent. */
  private Box take(int start) {
    int waits = 0;
    int left = width;
    int top = height;
    int right = -1;
    int bottom = -1;
    ink[start] = false;
    waiting[waits++] = start;
    while (waits > 0) {
      int at = waiting[--waits];
      int column = at % width;
      int row = at / width;
      left = Math.min(left, column);
      right = Math.max(right, column);
      top = Math.min(top, row);
      bottom = Math.max(bottom, row);
      for (int r = Math.max(0, row - 1); r <= Math.min(height - 1, row + 1); r++) {
        for (int c = Math.max(0, column - 1); c <= Math.min(width - 1, column + 1); c++) {
          int next = r * width + c;
          if (ink[next]) {
            ink[next] = false;
            if (waits == waiting.length) {
              waiting = java.util.Arrays.copyOf(waiting, waits * 2);
            }
            waiting[waits++] = next;
          }
        }
      }
    }
    return new Box(left, top, right - left + 1, bottom - top + 1);
  }
}
