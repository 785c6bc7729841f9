package commonsheet.quantity;

import com.fasterxml.jackson.databind.JsonNode;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;

/**
 * A text with look-alikes folded into one character: full-width forms, the many dashes, tildes,
 * degree signs and spaces. Character i of the folded text is character i of the printed one, so
 * that places agree.
 */
final class FoldedText {
  private static final Map<Character, Character> LOOK_ALIKES = lookAlikes();
  private static final char NOTHING = '\0';

  /** Below stand the letters of the alphabets, which are what they are. */
  private static final char FIRST_PUNCTUATION = 0x2000;

  private final String printed;
  private final char[] folded;

  FoldedText(String printed) {
    this.printed = printed;
    this.folded = printed.toCharArray();
    for (int i = 0; i < folded.length; i++) {
      folded[i] = fold(folded[i]);
    }
  }

  int length() {
    return folded.length;
  }

  /** The folded character at a place; a NUL before the beginning and after the end. */
  char at(int place) {
    return place >= 0 && place < folded.length ? folded[place] : NOTHING;
  }

  /** The words as printed, between two places. */
  String printed(int from, int to) {
    return printed.substring(from, to);
  }

  /** The first place from {@code place} on that holds no white space. */
  int afterSpaces(int place) {
    int at = place;
    while (isSpace(at(at))) {
      at++;
    }
    return at;
  }

  static char fold(char c) {
    if (c < 0x80) {
      return c < ' ' && c != '\n' ? ' ' : c;
    }
    Character known = LOOK_ALIKES.get(c);
    if (known != null) {
      return known;
    }
    if (c < FIRST_PUNCTUATION || isIdeograph(c) || Character.isSurrogate(c) || isKeptAsIs(c)) {
      return c;
    }
    String compatible = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC);
    if (compatible.length() != 1) {
      return c;
    }
    return LOOK_ALIKES.getOrDefault(compatible.charAt(0), compatible.charAt(0));
  }

  /** A raised 2 in m² is not the digit 2. */
  private static boolean isKeptAsIs(char c) {
    return "²³¹…‥".indexOf(c) >= 0 || (c >= '⁰' && c <= 'ⁿ');
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean isSpace(char c) {
    return c == ' ' || c == '\n' || c == '\u2009';
  }

  /**
   * A letter of an alphabet, as opposed to a Chinese or Japanese character or a sign such as Ω or
   * Ø.
   */
  static boolean isLetter(char c) {
    if (c < 0x80) {
      return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }
    return Character.isLetter(c) && c < 0x2000 && "ΩμΦφϕØø".indexOf(c) < 0;
  }

  /** A Chinese character or one of the Japanese and Korean syllable scripts. */
  static boolean isIdeograph(char c) {
    return (c >= 0x3040 && c <= 0x9FFF && Character.isLetter(c)) || (c >= 0xAC00 && c <= 0xD7A3);
  }

  private static Map<Character, Character> lookAlikes() {
    Map<Character, Character> map = new HashMap<>();
    for (Map.Entry<String, JsonNode> entry : Resource.read("characters.yaml").properties()) {
      for (char alike : entry.getValue().asText().toCharArray()) {
        map.put(alike, entry.getKey().charAt(0));
      }
    }
    return Map.copyOf(map);
  }
}
