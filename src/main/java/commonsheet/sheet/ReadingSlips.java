package commonsheet.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Mends characters that a recogniser takes for another one, where what stands beside them tells it.
 * Where a character was changed the word is never sure; a space put in changes none.
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
      Pattern.compile(
          "(?<![\\p{L}\\d])[Oo](?=[.,]\\d)|(?<=\\d)[Oo](?![\\p{Ll}])|(?<=\\d[.,])[Oo](?=\\p{Lu}|\\d)");

  /** The digit for the letter in what the trade shortens: state of charge, depth of discharge. */
  private static final Pattern ROUND_LETTER =
      Pattern.compile("(?<=\\bS)0(?=C\\b)|(?<=\\bD)0(?=D\\b)|\\b0(?=CV\\b)");

  /** A small L for the capital I of "Li-Ion". */
  private static final Pattern ION = Pattern.compile("(?<=^|Li-|Lithium-)l(?=on\\b)");

  /** A small c after a number: "1c". */
  private static final Pattern RATE = Pattern.compile("(?<=\\d)c(?=\\W|$)");

  /** The ring before C taken for a star or a quotation mark: "25 *C", "23±5*C". */
  private static final Pattern RING = Pattern.compile("(?<=\\d)[*'\"\u2019\u201D]C(?=\\W|$)");

  private static final Pattern RING_ALONE = Pattern.compile("^[*'\"\u2019\u201D]C(?=\\W|$)");

  /** A star, the mark of a footnote, taken for a quotation mark: "Impedance\"4". */
  private static final Pattern FOOTNOTE =
      Pattern.compile("(?<=\\p{Ll}{2})[\"'\u2019\u201D](?=\\d$)");

  /** A digit for the small L of a litre: "596Wh/1". */
  private static final Pattern LITRE = Pattern.compile("(?<=Wh/)[1I|](?=\\W|$)");

  /** A capital S for seconds; nothing on a sheet of cells is measured in siemens. */
  private static final Pattern SECONDS = Pattern.compile("^[S\uFF33](?=[,.;)]?$)");

  private static final Pattern NUMBER = Pattern.compile(".*[\\d\uFF10-\uFF19]");

  /** A plus for the sign of a tolerance, before the unit of temperature: "25+2 ℃". */
  private static final Pattern TOLERANCE = Pattern.compile("(?<=\\d)[+土](?=[1-5]$)");

  private static final Pattern WARM_TOLERANCE = Pattern.compile("(?<=\\d)[+土](?=[1-5] ?[°℃])");

  /** No rate has a sign or a tolerance: "+45C", "23±2C". */
  private static final Pattern SIGNED_RATE =
      Pattern.compile("(?<=^[+\u2212-]\\d{1,2})C(?=\\W|$)|(?<=±\\d)C(?=\\W|$)");

  /** A small L or a capital I for the digit in a number: "l.5A", "I8650". */
  private static final Pattern UPRIGHT_DIGIT =
      Pattern.compile("(?<![\\p{L}\\d])[lI|](?=[.,]?\\d)|(?<=\\d)[lI|](?=\\d)");

  /** A comma between conditions taken for a point: "to2.5V.25℃". */
  private static final Pattern COMMA = Pattern.compile("(?<=\\d[VA])[.](?=\\d)");

  /** Small words before a number: "to2.5V", "with2.0V", "At25℃", "Max.50.5mm", "CC-CV0.5C". */
  private static final String BEFORE_NUMBER =
      "(?<=(?:^|\\W|\\d|[VAC])(?:[Tt]o|[Aa]t|[Oo]f|[Ff]or|[Ww]ith|[Ff]rom|[Tt]ill|[Uu]ntil|and|by|than))"
          + "(?=\\d)|(?<=(?:^|\\W)(?:[Mm]ax|[Mm]in|[Tt]yp)[.])(?=\\d)|(?<=CC|CV|^a)(?=\\d[.]\\d+"
          + " ?C)";

  /** Small words after a number and its unit: "0.2Cwith", "2.0Vcut-off", "+10to". */
  private static final String AFTER_NUMBER =
      "(?<=\\d"
          + " ?m?[VAC℃%])(?=to(?:\\W|\\d|$)|at(?:\\W|\\d|$)|with|cut|until|till|and|charg|discharg)"
          + "|(?<=\\d)(?=to(?:$|[+\u2212-]?\\d))|(?<=\\d ?[VAC℃],)(?=\\d|to)";

  /** Where a space was lost. */
  private static final Pattern LOST_SPACE = Pattern.compile(BEFORE_NUMBER + "|" + AFTER_NUMBER);

  /** What mΩ is taken for; the letter is rarer than all of these. */
  private static final Pattern MILLIOHM =
      Pattern.compile("(?i)(?<=^|\\d)m(?:s|q|n|2|0|o|a)(?=[.,;)]?$)");

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
    String text = withDigits(word.text());
    text = withUnits(word, text);
    Word mended = text.equals(word.text()) ? word : doubted(word, text);
    String spaced = LOST_SPACE.matcher(text).replaceAll(" ");
    return spaced.equals(text) ? mended : said(mended, spaced, mended.confidence());
  }

  private static String withDigits(String text) {
    String mended = FIVE_HOUR_CAPACITY.matcher(text).replaceAll("5");
    mended = ROUND_DIGIT.matcher(mended).replaceAll("0");
    mended = UPRIGHT_DIGIT.matcher(mended).replaceAll("1");
    mended = ROUND_LETTER.matcher(mended).replaceAll("O");
    return COMMA.matcher(mended).replaceAll(",");
  }

  private String withUnits(Word word, String text) {
    String mended = RATE.matcher(text).replaceAll("C");
    mended = SIGNED_RATE.matcher(mended).replaceAll("℃");
    mended = RING.matcher(mended).replaceAll("℃");
    mended = FOOTNOTE.matcher(mended).replaceAll("*");
    mended = LITRE.matcher(mended).replaceAll("l");
    if (NUMBER.matcher(before(word)).matches()) {
      mended = RING_ALONE.matcher(mended).replaceAll("℃");
      mended = SECONDS.matcher(mended).replaceAll("s");
    }
    mended = WARM_TOLERANCE.matcher(mended).replaceAll("±");
    boolean warm = TEMPERATURE_UNIT.matcher(after(word)).matches();
    if (warm) {
      mended = TOLERANCE.matcher(mended).replaceAll("±");
      mended = mended.equalsIgnoreCase("o") ? "0" : mended;
    }
    if (ION.matcher(mended).find() && isOfLithium(word)) {
      mended = ION.matcher(mended).replaceAll("I");
    }
    if (MILLIOHM.matcher(mended).find() && isOfResistance(word)) {
      mended = MILLIOHM.matcher(mended).replaceAll("mΩ");
    }
    return mended;
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

  /** The text of the word before it in the row, or nothing. */
  private String before(Word word) {
    return words.stream()
        .filter(other -> isInRow(other, word) && other.box().x() < word.box().x())
        .max(Comparator.comparingDouble(other -> other.box().x()))
        .filter(o -> word.box().x() - o.box().right() < NEXT * word.box().height())
        .map(Word::text)
        .orElse("");
  }

  private boolean isOfResistance(Word word) {
    return words.stream()
        .anyMatch(other -> isInRow(other, word) && RESISTANCE.matcher(other.text()).find());
  }

  private boolean isOfLithium(Word word) {
    return word.text().startsWith("Li")
        || words.stream().anyMatch(other -> isInRow(other, word) && isLithium(other.text()));
  }

  private static boolean isLithium(String text) {
    return text.equalsIgnoreCase("lithium") || text.equalsIgnoreCase("lithium-");
  }

  private static boolean isInRow(Word other, Word word) {
    return other != word
        && other.turn() == word.turn()
        && other.box().sharedHeight(word.box()) > SAME_ROW;
  }

  private static Word doubted(Word word, String text) {
    return said(word, text, Math.min(word.confidence(), MENDED));
  }

  private static Word said(Word word, String text, double confidence) {
    return new Word(
        text,
        word.box(),
        word.size(),
        word.bold(),
        word.turn(),
        word.raised(),
        word.recognised(),
        confidence);
  }
}
