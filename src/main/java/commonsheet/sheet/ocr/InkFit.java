package commonsheet.sheet.ocr;

import commonsheet.sheet.Box;
import java.util.Arrays;

/**
 * Fits the box of a single character to its ink. The network that finds lines was trained on words:
 * of a lone digit it often sees a part only.
 */
final class InkFit {
  /** A box longer or higher than this, in its other side, holds more than a character or two. */
  private static final double SHORT = 2.2;

  /** How far around the box its ink is looked for, in the box's larger side. */
  private static final double AROUND = 0.6;

  /**
   * Room left beside the ink and above and below it, in its height. Of digits of 5.5 points alone,
   * 79 of 80 are read so; with more room above, a 0 becomes the letter.
   */
  private static final double BESIDE = 0.25;

  private static final double ABOVE = 0.05;

  /** Contrast below which there is no ink, of 255. */
  private static final int FAINT = 24;

  private final Pixels picture;
  private final int left;
  private final int top;
  private final int width;
  private final int height;
  private final boolean[] ink;

  private InkFit(Pixels picture, TurnedBox box) {
    double reach = AROUND * Math.max(box.length(), box.height());
    this.picture = picture;
    this.left = (int) Math.max(0, box.x() - box.length() / 2 - reach);
    this.top = (int) Math.max(0, box.y() - box.height() / 2 - reach);
    int right = (int) Math.min(picture.width(), box.x() + box.length() / 2 + reach);
    int bottom = (int) Math.min(picture.height(), box.y() + box.height() / 2 + reach);
    this.width = Math.max(0, right - left);
    this.height = Math.max(0, bottom - top);
    this.ink = ink();
  }

  /** The box fitted to the ink that lies in it, or as it is if it holds none or more than one. */
  static TurnedBox fitted(Pixels picture, TurnedBox box) {
    boolean isShort =
        box.angle() == 0
            && box.length() < SHORT * box.height()
            && box.height() < SHORT * box.length();
    return isShort ? new InkFit(picture, box).fit(box) : box;
  }

  private boolean[] ink() {
    int[] lightness = new int[width * height];
    for (int i = 0; i < lightness.length; i++) {
      lightness[i] = picture.lightness(left + i % width, top + i / width);
    }
    int[] sorted = lightness.clone();
    Arrays.sort(sorted);
    boolean[] marks = new boolean[lightness.length];
    if (marks.length == 0) {
      return marks;
    }
    int ground = sorted[sorted.length / 2];
    boolean dark = ground - sorted[0] >= sorted[sorted.length - 1] - ground;
    int strongest = dark ? sorted[0] : sorted[sorted.length - 1];
    if (Math.abs(strongest - ground) >= FAINT) {
      int limit = (strongest + ground) / 2;
      for (int i = 0; i < marks.length; i++) {
        marks[i] = dark ? lightness[i] < limit : lightness[i] > limit;
      }
    }
    return marks;
  }

  private TurnedBox fit(TurnedBox box) {
    Box found = null;
    for (int i = 0; i < ink.length; i++) {
      boolean within =
          Math.abs(left + i % width + 0.5 - box.x()) < box.length() / 2
              && Math.abs(top + i / width + 0.5 - box.y()) < box.height() / 2;
      if (ink[i] && within) {
        Box piece = takePiece(i);
        if (!reachesEdge(piece)) {
          found = found == null ? piece : found.union(piece);
        }
      }
    }
    if (found == null || found.width() > found.height()) {
      return box;
    }
    double beside = BESIDE * found.height();
    double above = ABOVE * found.height();
    return TurnedBox.level(
        left + found.x() - beside,
        top + found.y() - above,
        found.width() + 2 * beside,
        found.height() + 2 * above);
  }

  /** Takes a connected piece of ink away and tells its extent in the window. */
  private Box takePiece(int start) {
    int[] waiting = new int[ink.length];
    int waits = 0;
    int[] extent = {width, height, -1, -1};
    ink[start] = false;
    waiting[waits++] = start;
    while (waits > 0) {
      int at = waiting[--waits];
      int column = at % width;
      int row = at / width;
      extent[0] = Math.min(extent[0], column);
      extent[1] = Math.min(extent[1], row);
      extent[2] = Math.max(extent[2], column);
      extent[3] = Math.max(extent[3], row);
      for (int r = Math.max(0, row - 1); r <= Math.min(height - 1, row + 1); r++) {
        for (int c = Math.max(0, column - 1); c <= Math.min(width - 1, column + 1); c++) {
          if (ink[r * width + c]) {
            ink[r * width + c] = false;
            waiting[waits++] = r * width + c;
          }
        }
      }
    }
    return new Box(extent[0], extent[1], extent[2] - extent[0] + 1, extent[3] - extent[1] + 1);
  }

  /** A piece that goes on outside the window is a drawn line. */
  private boolean reachesEdge(Box piece) {
    return piece.x() == 0 || piece.y() == 0 || piece.right() == width || piece.bottom() == height;
  }
}
