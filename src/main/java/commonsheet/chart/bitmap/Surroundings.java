package commonsheet.chart.bitmap;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.List;

/** What lies in and around a plot. */
final class Surroundings {
  /** How far around a plot its words may stand, as a share of its size. */
  private static final double AROUND = 0.5;

  /** The same above and below as a share of its width: wide plots have as much under them. */
  private static final double OF_WIDTH = 0.45;

  private Surroundings() {}

  static List<Word> words(List<Word> words, Box frame) {
    double down = Math.max(AROUND * frame.height(), OF_WIDTH * frame.width());
    Box around =
        new Box(
            frame.x() - AROUND * frame.width(),
            frame.y() - down,
            (1 + 2 * AROUND) * frame.width(),
            frame.height() + 2 * down);
    return words.stream()
        .filter(w -> around.contains(w.box().centreX(), w.box().centreY()))
        .toList();
  }
}
