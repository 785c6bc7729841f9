package commonsheet.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Mends characters that are taken for another one where what stands beside them tells it. */
final class ReadingSlips {
  /** The rated capacity over five hours, C with a small 5 below: "0.2Cs", "1.0CsA". */
  private static final Pattern FIVE_HOUR_CAPACITY =
      Pattern.compile("(?<multiple>\\d+(?:\\.\\d+)?C)[sS](?=A?(?:\\W|$))");

  /** Confidence of a word that was mended, at most: it makes a value unsure. */
  private static final double MENDED = 0.5;

  private ReadingSlips() {}

  static Word mended(Word word) {
    Matcher slip = FIVE_HOUR_CAPACITY.matcher(word.text());
    if (!slip.find()) {
      return word;
    }
    return new Word(
        slip.replaceAll("${multiple}5"),
        word.box(),
        word.size(),
        word.bold(),
        word.turn(),
        word.raised(),
        word.recognised(),
        Math.min(word.confidence(), MENDED));
  }
}
