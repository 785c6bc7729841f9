package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds white strips between columns of bare numbers that were taken for one column. */
final class NumberColumns {
  /** Lines that must have a number on either side of a strip. */
  private static final int LEAST_PAIRS = 2;

  private NumberColumns() {}

  /**
   * The strips, from left to right, each as where it begins and ends.
   *
   * @param fragments what stands in the column, line by line
   * @param least width of a strip in points
   */
  static List<double[]> strips(List<Line> fragments, double least) {
    List<Box> words =
        fragments.stream()
            .flatMap(f -> f.words().stream())
            .map(Word::box)
            .sorted(Comparator.comparingDouble(Box::x))
            .toList();
    List<double[]> strips = new ArrayList<>();
    double right = words.isEmpty() ? 0 : words.get(0).right();
    for (Box word : words) {
      if (word.x() - right >= least && partsNumbers(fragments, right, word.x())) {
        strips.add(new double[] {right, word.x()});
      }
      right = Math.max(right, word.right());
    }
    return strips;
  }

  /**
   * Whether numbers stand on both sides in some lines, and other words in no more than the head.
   */
  private static boolean partsNumbers(List<Line> fragments, double from, double to) {
    int numbers = 0;
    int others = 0;
    for (Line fragment : fragments) {
      for (int i = 1; i < fragment.words().size(); i++) {
        Word before = fragment.words().get(i - 1);
        Word after = fragment.words().get(i);
        if (before.box().right() <= from + 0.01 && after.box().x() >= to - 0.01) {
          boolean bare = isBareNumber(before) && isBareNumber(after);
          numbers += bare ? 1 : 0;
          others += bare ? 0 : 1;
        }
      }
    }
    return numbers >= LEAST_PAIRS && others <= 1;
  }

  private static boolean isBareNumber(Word word) {
    String text = word.text();
    return text.codePoints().anyMatch(Character::isDigit)
        && text.codePoints()
            .allMatch(c -> Character.isDigit(c) || ".,+-\u2212\u00B1".indexOf(c) >= 0);
  }
}
