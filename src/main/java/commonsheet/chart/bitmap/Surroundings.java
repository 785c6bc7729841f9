package commonsheet.chart.bitmap;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.List;

/** What lies in and around a plot. */
final class Surroundings {
  /** How far around a plot its words may stand, as a share of its size. */
  private static final double AROUND = 0.5;

  private Surroundings() {}

  static List<Word> words(List<Word> words, Box frame) {
    Box around =
        new Box(
            frame.x() - AROUND * frame.width(),
            frame.y() - AROUND * frame.height(),
            (1 + 2 * AROUND) * frame.width(),
            (1 + 2 * AROUND) * frame.height());
    return words.stream()
        .filter(w -> around.contains(w.box().centreX(), w.box().centreY()))
        .toList();
  }
}
