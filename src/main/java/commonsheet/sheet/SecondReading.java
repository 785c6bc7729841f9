package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which words of a picture are read a second time: those whose value depends on each character,
 * with their neighbours in the row, as parts of lines.
 */
final class SecondReading {
  /** A word no longer than this may be a unit or a relation. */
  private static final int SHORT = 3;

  /** Confidence below which a longer word is read again as well: two doubts may add up to none. */
  private static final double DOUBTED = 0.9;

  /** Widest gap between words that are read as one, in their height: about three spaces. */
  private static final double WIDEST_GAP = 1.2;

  /** Share of their height words of a row have in common, at least. */
  private static final double SAME_ROW = 0.7;

  private SecondReading() {}

  /** Whether a word is not to be trusted before it was read twice. */
  static boolean isNeeded(Word word) {
    boolean number = word.text().codePoints().anyMatch(Character::isDigit);
    return number || word.text().length() <= SHORT;
  }

  /** The places to read again, one for each run of such words. */
  static List<TextPlace> places(List<Word> words) {
    List<Word> asked =
        words.stream()
            .filter(word -> isNeeded(word) || word.confidence() < DOUBTED)
            .filter(word -> word.turn() % 90 == 0)
            .sorted(Comparator.comparingDouble(word -> along(word).x()))
            .toList();
    List<List<Word>> runs = new ArrayList<>();
    for (Word word : asked) {
      runs.stream()
          .filter(run -> follows(word, run.get(run.size() - 1)))
          .findFirst()
          .ifPresentOrElse(run -> run.add(word), () -> runs.add(new ArrayList<>(List.of(word))));
    }
    return runs.stream()
        .map(
            run ->
                new TextPlace(Box.around(run.stream().map(Word::box).toList()), run.get(0).turn()))
        .toList();
  }

  private static boolean follows(Word word, Word last) {
    Box own = along(word);
    Box before = along(last);
    double height = Math.min(own.height(), before.height());
    double gap = own.x() - before.right();
    return word.turn() == last.turn()
        && own.sharedHeight(before) > SAME_ROW
        && gap < WIDEST_GAP * height
        && gap > -height;
  }

  /** The box of a word as it lies when its line is turned level, left to right. */
  private static Box along(Word word) {
    Box box = word.box();
    return switch (word.turn()) {
      case 90 -> new Box(-box.bottom(), box.x(), box.height(), box.width());
      case 180 -> new Box(-box.right(), -box.bottom(), box.width(), box.height());
      case 270 -> new Box(box.y(), -box.right(), box.height(), box.width());
      default -> box;
    };
  }
}
