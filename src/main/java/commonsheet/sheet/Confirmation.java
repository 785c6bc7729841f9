package commonsheet.sheet;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Compares two readings of one picture: a number that only one of them has is not to be trusted.
 */
final class Confirmation {
  /** Confidence at most of a number or unit that the second reading does not have. */
  private static final double UNCONFIRMED = 0.5;

  /** Share of the height and of the width of words that are at the same place. */
  private static final double SAME_PLACE = 0.5;

  private final List<Word> second;

  Confirmation(List<Word> second) {
    this.second = second;
  }

  /** The words of the first reading, with less confidence where they are not confirmed. */
  List<Word> of(List<Word> first) {
    return first.stream().map(this::confirmed).toList();
  }

  private Word confirmed(Word word) {
    if (!SecondReading.isNeeded(word) || isConfirmed(word)) {
      return word;
    }
    return new Word(
        word.text(),
        word.box(),
        word.size(),
        word.bold(),
        word.turn(),
        word.raised(),
        true,
        Math.min(word.confidence(), UNCONFIRMED));
  }

  /** Whether the words at the same place have its text; they may be parted elsewhere. */
  private boolean isConfirmed(Word word) {
    String there =
        second.stream()
            .filter(other -> other.turn() == word.turn())
            .filter(other -> other.box().sharedHeight(word.box()) > SAME_PLACE)
            .filter(other -> other.box().sharedWidth(word.box()) > SAME_PLACE)
            .sorted(Comparator.comparingDouble(other -> other.box().x()))
            .map(other -> plain(other.text()))
            .collect(Collectors.joining());
    return there.contains(plain(word.text()));
  }

  /**
   * Compatibility forms made the common ones: full-width signs, the one sign for degree Celsius.
   */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC);
  }
}
