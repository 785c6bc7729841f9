package commonsheet.sheet.ocr;

import java.util.ArrayList;
import java.util.List;

/**
 * Takes the best class of every step, joins repetitions and leaves out "none" (Graves et al.,
 * "Connectionist Temporal Classification", ICML 2006, best path decoding).
 */
final class CtcDecoder {
  private static final int NONE = 0;

  private final Alphabet alphabet;

  CtcDecoder(Alphabet alphabet) {
    this.alphabet = alphabet;
  }

  /**
   * Decodes one line.
   *
   * @param values probabilities, step by step
   * @param steps how many
   * @param classes per step
   * @param stepWidth pixels of the strip per step
   */
  ReadLine decode(float[] values, int steps, int classes, double stepWidth) {
    List<ReadLine.Letter> letters = new ArrayList<>();
    int from = 0;
    int last = NONE;
    double sure = 0;
    for (int step = 0; step <= steps; step++) {
      int at = step * classes;
      int best = step == steps ? NONE : best(values, at, classes);
      if (best != last) {
        if (last != NONE) {
          double x = (from + step) / 2.0 * stepWidth;
          letters.add(new ReadLine.Letter(alphabet.character(last), x, sure));
        }
        from = step;
        sure = 0;
      }
      if (best != NONE) {
        sure = Math.max(sure, sureness(values, at, best));
      }
      last = best;
    }
    return new ReadLine(letters).withoutDoubledDegree();
  }

  private double sureness(float[] values, int at, int best) {
    double sum = values[at + best];
    for (int other : alphabet.alike(best)) {
      sum += values[at + other];
    }
    return Math.min(1, sum);
  }

  private static int best(float[] values, int at, int classes) {
    int best = 0;
    for (int i = 1; i < classes; i++) {
      if (values[at + i] > values[at + best]) {
        best = i;
      }
    }
    return best;
  }
}
