package commonsheet.quantity;

import java.math.BigDecimal;

/**
 * Reads the second end of a range behind its first.
 *
 * <pre>
 * range     := separator amount | sign letters sign amount
 * separator := "~" | "to" | … | hyphen
 * sign      := "≤" | "&lt;" | "≥" | "&gt;", both the same way    -20 °C ≤ T ≤ 5 °C
 * </pre>
 */
final class RangeReader {
  private static final int LONGEST_SYMBOL = 5;
  private static final String LESS = "≤<";
  private static final String MORE = "≥>";

  /** A bare number of five digits before a hyphen is a size or model: 18650-2600mAh. */
  private static final BigDecimal LEAST_CODE = BigDecimal.valueOf(10_000);

  /** What stands between the two numbers. */
  private enum Kind {
    SIGN,
    WORD,
    HYPHEN,
    COMPARISON
  }

  private record Separator(Kind kind, int end) {}

  private final FoldedText text;
  private final AmountReader amounts;
  private final ToleranceReader tolerances;
  private final NumberStyle style;
  private final Words words = Words.standard();

  RangeReader(
      FoldedText text, AmountReader amounts, ToleranceReader tolerances, NumberStyle style) {
    this.text = text;
    this.amounts = amounts;
    this.tolerances = tolerances;
    this.style = style;
  }

  /**
   * The range that begins with an amount; null where none does.
   *
   * @param afterBetween whether "between" stands before the amount, so that "and" joins the two
   */
  Extent read(Amount first, boolean afterBetween) {
    Separator separator = separator(first, afterBetween);
    if (separator == null) {
      return null;
    }
    Amount second = amounts.readLoosely(text.afterSpaces(separator.end()));
    if (second == null
        || tolerances.follows(second.end())
        || !CommonUnit.exists(first.unit(), second.unit())
        || isUnitMissing(first, second, separator.kind())) {
      return null;
    }
    return ordered(first, second, separator.kind());
  }

  private Separator separator(Amount first, boolean afterBetween) {
    int at = text.afterSpaces(first.end());
    Separator comparison = comparison(at);
    if (comparison != null) {
      return comparison;
    }
    Phrases.Match<Boolean> word = words.range.longest(text, at);
    if (word == null && afterBetween) {
      word = words.and.longest(text, at);
    }
    if (word != null) {
      boolean letters = FoldedText.isLetter(text.at(at));
      boolean lone = letters && word.end() == at + 1;
      boolean spaced = at > first.end() && FoldedText.isSpace(text.at(word.end()));
      return lone && !spaced ? null : new Separator(letters ? Kind.WORD : Kind.SIGN, word.end());
    }
    return hyphen(first.end(), at);
  }

  private Separator comparison(int at) {
    int letters = text.afterSpaces(afterComparison(at, text.at(at)));
    int after = letters;
    while (FoldedText.isLetter(text.at(after))) {
      after++;
    }
    int second = text.afterSpaces(after);
    int end = afterComparison(second, text.at(at));
    boolean symbol = after > letters && after - letters <= LONGEST_SYMBOL;
    return symbol && end > second ? new Separator(Kind.COMPARISON, end) : null;
  }

  /**
   * The place behind a comparison sign that points the same way as another; the place itself if
   * none is there.
   */
  private int afterComparison(int at, char other) {
    String signs = LESS.indexOf(other) >= 0 ? LESS : MORE;
    if (signs.indexOf(text.at(at)) < 0) {
      return at;
    }
    return text.at(at + 1) == '=' ? at + 2 : at + 1;
  }

  /** A hyphen with a space before it only is the sign of the next number: "2.10 -20 °C". */
  private Separator hyphen(int numberEnd, int at) {
    if (text.at(at) != '-') {
      return null;
    }
    char next = text.at(at + 1);
    boolean spaceBefore = at > numberEnd;
    boolean newLine = text.printed(numberEnd, at).indexOf('\n') >= 0;
    boolean apart = FoldedText.isSpace(next) || next == '+' || next == '-';
    return !newLine && (!spaceBefore || apart) ? new Separator(Kind.HYPHEN, at + 1) : null;
  }

  /** "1C to 3.65" is no range of rates; "0 °C ~ 45" is one of temperatures. */
  private static boolean isUnitMissing(Amount first, Amount second, Kind kind) {
    if (first.unit() == null || second.unit() != null) {
      return false;
    }
    return kind == Kind.WORD || first.unit().dimension() != Dimension.TEMPERATURE;
  }

  private Extent ordered(Amount first, Amount second, Kind kind) {
    PrintedUnit unit = CommonUnit.of(second.unit(), first.unit());
    BigDecimal from = CommonUnit.inUnit(first.valueIn(unit), first.unit(), unit);
    BigDecimal to = CommonUnit.inUnit(second.valueIn(unit), second.unit(), unit);
    int order = from.compareTo(to);
    boolean code = kind == Kind.HYPHEN && first.unit() == null && from.compareTo(LEAST_CODE) >= 0;
    if (order == 0 || (order > 0 && kind == Kind.HYPHEN) || code) {
      return null;
    }
    boolean ambiguous = first.isAmbiguousIn(unit, style) || second.isAmbiguousIn(unit, style);
    return new Extent(null, from.min(to), from.max(to), unit, ambiguous, second.end());
  }
}
