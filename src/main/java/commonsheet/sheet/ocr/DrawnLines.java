package commonsheet.sheet.ocr;

import java.util.Arrays;

/**
 * Takes level drawn lines out of a strip of text: frames and the samples of a legend, which would
 * be read as a minus. What has another colour than the line stays, so that a minus that touches a
 * sample is not lost with it.
 */
final class DrawnLines {
  /** Shortest line in strip heights: longer than the bar of any letter. */
  private static final double SHORTEST = 0.9;

  /** Share of its contrast to the ground by which the colour of a line may vary. */
  private static final double UNEVEN = 0.2;

  /** Least contrast of a line, of 255. */
  private static final int FAINT = 16;

  /** Blurred end of a line, in strip heights. */
  private static final double END = 0.06;

  /**
   * Distance above and below the middle of a line at which its ground shows, in strip heights,
   * along at least a share of its length. Strokes of blurred print have more print beside them.
   */
  private static final double BESIDE = 0.15;

  private static final double CLEAR_SHARE = 0.8;

  private final Pixels strip;
  private final int ground;
  private final boolean[][] line;

  private DrawnLines(Pixels strip) {
    this.strip = strip;
    this.ground = strip.commonest();
    this.line = new boolean[strip.height()][strip.width()];
  }

  /** The strip with those lines in the colour of its ground. */
  static Pixels without(Pixels strip) {
    DrawnLines drawn = new DrawnLines(strip);
    for (int row = 0; row < strip.height(); row++) {
      drawn.mark(row);
    }
    return drawn.cleared();
  }

  /** Marks runs of one colour along a row. */
  private void mark(int row) {
    int from = 0;
    for (int column = 1; column <= strip.width(); column++) {
      int contrast = distance(strip.colour(from, row), ground);
      boolean ends =
          column == strip.width()
              || distance(strip.colour(column, row), strip.colour(from, row)) > UNEVEN * contrast;
      if (ends) {
        boolean lasting = column - from >= SHORTEST * strip.height();
        if (lasting && contrast >= FAINT && isClearBeside(row, from, column, contrast)) {
          int end = (int) (END * strip.height());
          Arrays.fill(
              line[row], Math.max(0, from - end), Math.min(strip.width(), column + end), true);
        }
        from = column;
      }
    }
  }

  private boolean isClearBeside(int row, int from, int to, int contrast) {
    int away = (int) (BESIDE * strip.height());
    return clearShare(row - away, from, to, contrast) >= CLEAR_SHARE
        && clearShare(row + away, from, to, contrast) >= CLEAR_SHARE;
  }

  private double clearShare(int row, int from, int to, int contrast) {
    if (row < 0 || row >= strip.height()) {
      return 1;
    }
    int clear = 0;
    for (int column = from; column < to; column++) {
      if (distance(strip.colour(column, row), ground) < contrast / 2) {
        clear++;
      }
    }
    return (double) clear / (to - from);
  }

  private Pixels cleared() {
    int[] out = new int[strip.width() * strip.height()];
    for (int row = 0; row < strip.height(); row++) {
      for (int column = 0; column < strip.width(); column++) {
        out[row * strip.width() + column] = line[row][column] ? ground : strip.colour(column, row);
      }
    }
    return new Pixels(strip.width(), strip.height(), out);
  }

  /** The largest difference of a channel. */
  private static int distance(int colour, int other) {
    int red = Math.abs((colour >> 16 & 0xFF) - (other >> 16 & 0xFF));
    int green = Math.abs((colour >> 8 & 0xFF) - (other >> 8 & 0xFF));
    int blue = Math.abs((colour & 0xFF) - (other & 0xFF));
    return Math.max(red, Math.max(green, blue));
  }
}
