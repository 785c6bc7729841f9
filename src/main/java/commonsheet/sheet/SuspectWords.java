package commonsheet.sheet;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Mends written words with characters that the file does not tell, by what is drawn at their place:
 * the ohm of "60 mΩ" in a font without Unicode. What is known of a word must agree with what is
 * seen, and two readings with each other; otherwise the word stays as it is.
 */
final class SuspectWords {
  /** How far behind a number a unit may stand, in its height. */
  private static final double UNIT_GAP = 1.5;

  /** Share of height and width by which a recognised word is at a written one's place. */
  private static final double SAME_PLACE = 0.5;

  /** Confidence of a character that a sign is easily taken for. */
  private static final double DOUBTED = 0.5;

  private SuspectWords() {}

  /** The words of a page that are worth mending. */
  static List<Word> of(List<Word> words) {
    return words.stream()
        .filter(TextTrust::isSuspect)
        .filter(word -> word.turn() == 0 && (hasMore(word) || isBehindNumber(word, words)))
        .toList();
  }

  /** Other characters: alone, such a character is mostly the bullet of a list. */
  private static boolean hasMore(Word word) {
    return word.text()
        .codePoints()
        .anyMatch(c -> !TextTrust.isUnknown(c) && Character.isLetterOrDigit(c));
  }

  private static boolean isBehindNumber(Word word, List<Word> words) {
    return words.stream()
        .filter(other -> !other.text().isEmpty())
        .filter(other -> Character.isDigit(other.text().charAt(other.text().length() - 1)))
        .filter(other -> other.box().sharedHeight(word.box()) > SAME_PLACE)
        .mapToDouble(other -> word.box().x() - other.box().right())
        .anyMatch(gap -> gap > -1 && gap < UNIT_GAP * word.box().height());
  }

  /**
   * The words with the suspect ones mended.
   *
   * @param first what is seen at their places
   * @param second what is seen there in another reading
   */
  static List<Word> mended(
      List<Word> words, List<Word> suspects, List<Word> first, List<Word> second) {
    List<Word> mended = new ArrayList<>();
    for (Word word : words) {
      mended.add(suspects.contains(word) ? mended(word, at(word, first), at(word, second)) : word);
    }
    return mended;
  }

  private static Word mended(Word word, List<Word> first, List<Word> second) {
    String seen = text(first);
    Matcher fit = pattern(word).matcher(seen);
    if (!seen.equals(text(second)) || !fit.matches()) {
      return word;
    }
    double confidence = first.stream().mapToDouble(Word::confidence).min().orElse(0);
    for (int i = 1; i <= fit.groupCount(); i++) {
      boolean plain = fit.group(i).codePoints().anyMatch(c -> c < 0x80);
      confidence = plain ? Math.min(confidence, DOUBTED) : confidence;
    }
    return new Word(
        seen, word.box(), word.size(), word.bold(), word.turn(), word.raised(), true, confidence);
  }

  /** The written word, one or two characters in place of each that is not known. */
  private static Pattern pattern(Word word) {
    StringBuilder pattern = new StringBuilder();
    plain(word.text())
        .codePoints()
        .forEach(
            c ->
                pattern.append(
                    TextTrust.isUnknown(c) ? "(.{1,2}?)" : Pattern.quote(Character.toString(c))));
    return Pattern.compile(pattern.toString());
  }

  private static List<Word> at(Word word, List<Word> seen) {
    return seen.stream()
        .filter(other -> other.box().sharedHeight(word.box()) > SAME_PLACE)
        .filter(other -> other.box().sharedWidth(word.box()) > SAME_PLACE)
        .sorted(Comparator.comparingDouble(other -> other.box().x()))
        .toList();
  }

  private static String text(List<Word> words) {
    return words.stream().map(word -> plain(word.text())).collect(Collectors.joining());
  }

  /** Full-width forms as common ones, the ohm and micro signs as the letters. */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC).replace(" ", "");
  }
}
