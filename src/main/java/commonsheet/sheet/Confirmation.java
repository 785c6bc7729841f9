package commonsheet.sheet;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Compares two readings of one picture: a number that only one of them has is not to be trusted.
 * What both have is wrong only if both are, so that its doubts are multiplied.
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
    List<Word> there = at(word);
    String own = plain(word.text());
    String other = there.stream().map(o -> plain(o.text())).collect(Collectors.joining());
    if (other.equals(own)) {
      double least = there.stream().mapToDouble(Word::confidence).min().orElse(0);
      return with(word, 1 - (1 - word.confidence()) * (1 - least));
    }
    if (!SecondReading.isNeeded(word) || other.contains(own)) {
      return word;
    }
    return with(word, Math.min(word.confidence(), UNCONFIRMED));
  }

  /** The words of the second reading at the same place; they may be parted elsewhere. */
  private List<Word> at(Word word) {
    return second.stream()
        .filter(other -> other.turn() == word.turn())
        .filter(other -> other.box().sharedHeight(word.box()) > SAME_PLACE)
        .filter(other -> other.box().sharedWidth(word.box()) > SAME_PLACE)
        .sorted(Comparator.comparingDouble(other -> other.box().x()))
        .toList();
  }

  private static Word with(Word word, double confidence) {
    return new Word(
        word.text(),
        word.box(),
        word.size(),
        word.bold(),
        word.turn(),
        word.raised(),
        true,
        confidence);
  }

  /**
   * Compatibility forms made the common ones: full-width signs, the one sign for degree Celsius.
   */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC);
  }
}
