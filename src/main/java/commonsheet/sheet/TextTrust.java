package commonsheet.sheet;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Tells written words that do not say what is drawn: characters that no text has, and pages whose
 * words are no words, as when a font gives its letters the codes of others.
 */
final class TextTrust {
  /** Latin words of fewer letters are too short to tell by. */
  private static final int LONG = 4;

  /** Long words a page must have to be judged by them, and the share that must be implausible. */
  private static final int ENOUGH = 12;

  private static final double MOST = 0.5;

  /**
   * Share of vowels in a page's letters below which it is in no language (English, German, French
   * and Spanish have 0.38 to 0.48), and letters it takes to tell.
   */
  private static final double LEAST_VOWELS = 0.22;

  private static final int FEWEST_LETTERS = 100;

  /** Signs between letters that no word of the languages read has there. */
  private static final Pattern SIGN_WITHIN =
      Pattern.compile("\\p{L}[!\"#$%*;<=>?@\\[\\\\\\]^`{|}~]+\\p{L}");

  private static final Pattern VOWEL =
      Pattern.compile("[aeiouy\u00E0-\u00FF]", Pattern.CASE_INSENSITIVE);

  private static final Pattern LATIN = Pattern.compile("[\\p{IsLatin}\\p{Punct}]+");

  /** Capitals alone may be a short form, such as CCCV. */
  private static final Pattern SMALL = Pattern.compile("\\p{Ll}");

  private TextTrust() {}

  /** Whether a word has a character of which the file does not say what it is. */
  static boolean isSuspect(Word word) {
    return !word.recognised() && word.text().codePoints().anyMatch(TextTrust::isUnknown);
  }

  /** Not told (U+FFFD), or told by a private code, which means something to one font only. */
  static boolean isUnknown(int c) {
    return c == 0xFFFD || Character.getType(c) == Character.PRIVATE_USE;
  }

  /** Whether most words of a page cannot be what is drawn. */
  static boolean lies(List<Word> words) {
    List<Word> written =
        words.stream().filter(w -> !w.recognised() && w.text().length() >= LONG).toList();
    List<Word> judged =
        written.stream().filter(w -> isSuspect(w) || LATIN.matcher(w.text()).matches()).toList();
    long implausible = judged.stream().filter(TextTrust::isImplausible).count();
    return judged.size() >= ENOUGH
        && judged.size() >= MOST * written.size()
        && (implausible > MOST * judged.size() || vowelShare(judged) < LEAST_VOWELS);
  }

  private static double vowelShare(List<Word> words) {
    long letters = 0;
    long vowels = 0;
    for (Word word : words) {
      letters += word.text().codePoints().filter(Character::isLetter).count();
      vowels += VOWEL.matcher(word.text()).results().count();
    }
    return letters < FEWEST_LETTERS ? 1 : (double) vowels / letters;
  }

  private static boolean isImplausible(Word word) {
    String text = word.text();
    boolean vowels = VOWEL.matcher(text).find();
    boolean letters = text.codePoints().filter(Character::isLetter).count() >= LONG;
    return isSuspect(word)
        || SIGN_WITHIN.matcher(text).find()
        || (letters && !vowels && SMALL.matcher(text).find());
  }
}
