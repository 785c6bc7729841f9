package commonsheet.sheet;

import java.util.List;
import java.util.stream.Collectors;

/** Words that stand side by side on one line, left to right. */
public record Line(List<Word> words) {
  public Line {
    words = List.copyOf(words);
  }

  public Box box() {
    return Box.around(words.stream().map(Word::box).toList());
  }

  /** The words with single spaces between them. */
  public String text() {
    return words.stream().map(Word::text).collect(Collectors.joining(" "));
  }
}
