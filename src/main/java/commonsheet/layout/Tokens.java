package commonsheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A text cut into the units that phrases are matched by: words of letters, runs of digits, and
 * single ideographs or kana. Case, full-width forms, punctuation, and spaces between ideographs
 * make no difference.
 */
final class Tokens {
  /** One token: its normalised form and its place in the original text. */
  record Token(String form, int start, int end) {
    boolean isWord() {
      return Character.isLetter(form.charAt(0));
    }
  }

  private Tokens() {}

  static List<Token> of(String text) {
    List<Token> tokens = new ArrayList<>();
    int i = 0;
    while (i < text.length()) {
      char c = fold(text.charAt(i));
      if (isIdeograph(c)) {
        tokens.add(new Token(String.valueOf(c), i, i + 1));
        i++;
      } else if (isWordLetter(c)) {
        i = word(text, i, tokens);
      } else if (Character.isDigit(c)) {
        int start = i;
        while (i < text.length() && Character.isDigit(fold(text.charAt(i)))) {
          i++;
        }
        tokens.add(new Token(foldAll(text, start, i), start, i));
      } else if (c == '#') {
        tokens.add(new Token("#", i, i + 1));
        i++;
      } else {
        i++;
      }
    }
    return tokens;
  }

  /**
   * The forms of a text's tokens with a space between: equal for texts that differ in print only.
   */
  static String key(String text) {
    return of(text).stream().map(Token::form).collect(Collectors.joining(" "));
  }

  private static int word(String text, int start, List<Token> tokens) {
    StringBuilder form = new StringBuilder();
    int i = start;
    while (i < text.length()) {
      char c = fold(text.charAt(i));
      if (isWordLetter(c)) {
        form.append(c);
        i++;
      } else if (isHyphenation(text, i)) {
        i += 2; // a word broken at the end of a line
      } else {
        break;
      }
    }
    tokens.add(new Token(form.toString(), start, i));
    return i;
  }

  private static boolean isHyphenation(String text, int i) {
    return text.charAt(i) == '-'
        && i + 2 < text.length()
        && text.charAt(i + 1) == '\n'
        && Character.isLowerCase(text.charAt(i + 2));
  }

  private static String foldAll(String text, int start, int end) {
    StringBuilder folded = new StringBuilder();
    for (int i = start; i < end; i++) {
      folded.append(fold(text.charAt(i)));
    }
    return folded.toString();
  }

  /** Lower case, full-width forms as ASCII. */
  static char fold(char c) {
    if (c >= '\uFF01' && c <= '\uFF5E') {
      c = (char) (c - 0xFEE0);
    }
    return Character.toLowerCase(c);
  }

  static boolean isIdeograph(char c) {
    return Character.isIdeographic(c)
        || (c >= '\u3041' && c <= '\u30FF')
        || (c >= '\uAC00' && c <= '\uD7A3');
  }

  private static boolean isWordLetter(char c) {
    // Ohm and micro signs belong to units, never to words.
    return Character.isLetter(c)
        && !isIdeograph(c)
        && c != '\u03C9'
        && c != '\u03BC'
        && c != '\u00B5';
  }
}
