package commonsheet.sheet;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Words that stand side by side on one line, left to right.
 *
 * @param box around the words; null for a line without any, which no page has
 */
public record Line(List<Word> words, Box box) {
  public Line {
    words = List.copyOf(words);
  }

  /** The line of these words. */
  public Line(List<Word> words) {
    this(words, words.isEmpty() ? null : Box.around(words.stream().map(Word::box).toList()));
  }

  /** The words with single spaces between them. */
  public String text() {
    return text(words);
  }

  static String text(List<Word> words) {
    return words.stream().map(Word::text).collect(Collectors.joining(" "));
  }
}
