package commonsheet.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Mends characters that a recogniser takes for another one, where what stands beside them tells it.
 * What was mended is never sure.
 */
final class ReadingSlips {
  /** Confidence of a word that was mended, at most: it makes a value unsure. */
  private static final double MENDED = 0.5;

  /** Share of its height a word has in common with others of its row. */
  private static final double SAME_ROW = 0.5;

  /** How far the next word of a row may begin from the end of one, in heights. */
  private static final double NEXT = 2.5;

  /** The rated capacity over five hours, C with a small 5 below: "0.2Cs", "1.0CsA". */
  private static final Pattern FIVE_HOUR_CAPACITY = Pattern.compile("(?<=\\dC)[sS](?=A?(?:\\W|$))");

  /** The letter O for the digit in a number: "O.2C", "3OmΩ", "1O0". */
  private static final Pattern ROUND_DIGIT =
      Pattern.compile("(?<![\\p{L}\\d])[Oo](?=[.,]\\d)|(?<=\\d)[Oo](?![\\p{Ll}])");

  /** A small L or a capital I for the digit in a number: "l.5A", "I8650". */
  private static final Pattern UPRIGHT_DIGIT =
      Pattern.compile("(?<![\\p{L}\\d])[lI|](?=[.,]?\\d)|(?<=\\d)[lI|](?=\\d)");

  /** A comma between conditions taken for a point: "to2.5V.25℃". */
  private static final Pattern COMMA = Pattern.compile("(?<=\\d[VA])[.](?=\\d)");

  /** Where a space was lost between conditions: "to2.5V,25℃". */
  private static final Pattern LOST_SPACE =
      Pattern.compile("(?<=^to)(?=\\d)|(?<=\\d ?[VAC℃],)(?=\\d|to)|(?<=\\dC)(?=to)");

  /** What mΩ is taken for; the letter is rarer than all of these. */
  private static final Pattern MILLIOHM = Pattern.compile("(?i)(?<=^|\\d)m(?:s|q|n|2|0|o|a)$");

  private static final Pattern RESISTANCE =
      Pattern.compile("(?i)resist|imped|widerstand|résist|内阻|阻抗|抵抗|インピーダンス");

  private static final Pattern TEMPERATURE_UNIT = Pattern.compile("[\"°º]?[℃C]|°C.*|℃.*");

  private final List<Word> words;

  private ReadingSlips(List<Word> words) {
    this.words = words;
  }

  /** The words of one picture, mended. */
  static List<Word> mended(List<Word> words) {
    ReadingSlips slips = new ReadingSlips(words);
    return words.stream().map(slips::mended).toList();
  }

  private Word mended(Word word) {
    if (!word.recognised()) {
      return word;
    }
    String text = word.text();
    text = FIVE_HOUR_CAPACITY.matcher(text).replaceAll("5");
    text = ROUND_DIGIT.matcher(text).replaceAll("0");
    text = UPRIGHT_DIGIT.matcher(text).replaceAll("1");
    text = COMMA.matcher(text).replaceAll(",");
    text = LOST_SPACE.matcher(text).replaceAll(" ");
    if (text.equalsIgnoreCase("o") && TEMPERATURE_UNIT.matcher(after(word)).matches()) {
      text = "0";
    }
    if (MILLIOHM.matcher(text).find() && isOfResistance(word)) {
      text = MILLIOHM.matcher(text).replaceAll("mΩ");
    }
    return text.equals(word.text()) ? word : doubted(word, text);
  }

  /** The text of the next word of the row, or nothing. */
  private String after(Word word) {
    return words.stream()
        .filter(other -> isInRow(other, word) && other.box().x() > word.box().x())
        .min(Comparator.comparingDouble(other -> other.box().x()))
        .filter(o -> o.box().x() - word.box().right() < NEXT * word.box().height())
        .map(Word::text)
        .orElse("");
  }

  private boolean isOfResistance(Word word) {
    return words.stream()
        .anyMatch(other -> isInRow(other, word) && RESISTANCE.matcher(other.text()).find());
  }

  private static boolean isInRow(Word other, Word word) {
    return other != word
        && other.turn() == word.turn()
        && other.box().sharedHeight(word.box()) > SAME_ROW;
  }

  private static Word doubted(Word word, String text) {
    return new Word(
        text,
        word.box(),
        word.size(),
        word.bold(),
        word.turn(),
        word.raised(),
        word.recognised(),
        Math.min(word.confidence(), MENDED));
  }
}
