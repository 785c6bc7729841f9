package commonsheet.sheet.ocr;

import java.util.Arrays;
import java.util.BitSet;

/** Where the ink of a strip of text lies: its columns, its rows and the gaps between. */
final class StripInk {
  /** Share of the strip's contrast from which a pixel is ink. */
  private static final double INK = 0.4;

  /** Thickness of a ruling beside a line of text, at most, as a share of the text's height. */
  private static final double RULING = 0.2;

  /** Contrast below which a strip holds no ink, of 255. */
  private static final int FAINT = 24;

  private final BitSet columns = new BitSet();
  private final int top;
  private final int bottom;

  private StripInk(boolean[][] ink, int width) {
    BitSet rows = new BitSet();
    for (int row = 0; row < ink.length; row++) {
      for (int column = 0; column < width; column++) {
        if (ink[row][column]) {
          columns.set(column);
          rows.set(row);
        }
      }
    }
    int[] text = withoutRulings(rows);
    this.top = rows.isEmpty() ? 0 : text[0];
    this.bottom = rows.isEmpty() ? ink.length : text[1];
  }

  /**
   * First row and the row after the last of what is written: a ruling above or below lies apart and
   * is thin beside it.
   */
  private static int[] withoutRulings(BitSet rows) {
    int first = Math.max(0, rows.nextSetBit(0));
    int end = rows.length();
    int highest = 0;
    for (int row = first; row >= 0 && row < end; row = rows.nextSetBit(rows.nextClearBit(row))) {
      highest = Math.max(highest, rows.nextClearBit(row) - row);
    }
    double thin = RULING * highest;
    while (rows.nextClearBit(first) - first < thin) {
      first = rows.nextSetBit(rows.nextClearBit(first));
    }
    while (end - rows.previousClearBit(end - 1) - 1 < thin) {
      end = rows.previousSetBit(rows.previousClearBit(end - 1)) + 1;
    }
    return new int[] {first, end};
  }

  static StripInk of(Pixels strip) {
    int[] lightness = new int[strip.width() * strip.height()];
    for (int row = 0; row < strip.height(); row++) {
      for (int column = 0; column < strip.width(); column++) {
        lightness[row * strip.width() + column] = strip.lightness(column, row);
      }
    }
    int[] sorted = lightness.clone();
    Arrays.sort(sorted);
    int ground = sorted[sorted.length / 2];
    int darkest = sorted[sorted.length / 50];
    int lightest = sorted[sorted.length - 1 - sorted.length / 50];
    int ink = ground - darkest >= lightest - ground ? darkest : lightest;
    boolean[][] marks = new boolean[strip.height()][strip.width()];
    if (Math.abs(ink - ground) >= FAINT) {
      double limit = ground + INK * (ink - ground);
      for (int row = 0; row < strip.height(); row++) {
        for (int column = 0; column < strip.width(); column++) {
          int light = lightness[row * strip.width() + column];
          marks[row][column] = ink < ground ? light < limit : light > limit;
        }
      }
    }
    return new StripInk(marks, strip.width());
  }

  /** First row with ink. */
  int top() {
    return top;
  }

  /** The row after the last one with ink. */
  int bottom() {
    return bottom;
  }

  /** First column with ink at or after one; -1 if there is none. */
  int next(int column) {
    return columns.nextSetBit(Math.max(0, column));
  }

  /** The column after the last ink before one; 0 if there is none. */
  int endBefore(int column) {
    return columns.previousSetBit(column - 1) + 1;
  }

  /** Columns without ink between two others. */
  record Gap(int from, int to) {
    int width() {
      return to - from;
    }

    double middle() {
      return (from + to) / 2.0;
    }
  }

  /** The widest gap that begins and ends between two columns; an empty one if there is none. */
  Gap widestGap(double from, double to) {
    Gap widest = new Gap((int) ((from + to) / 2), (int) ((from + to) / 2));
    int column = columns.nextClearBit(Math.max(0, (int) from));
    while (column < to) {
      int end = columns.nextSetBit(column);
      if (end < 0) {
        break;
      }
      int start = endBefore(column + 1);
      if (end - start > widest.width()) {
        widest = new Gap(start, end);
      }
      column = columns.nextClearBit(end);
    }
    return widest;
  }
}
