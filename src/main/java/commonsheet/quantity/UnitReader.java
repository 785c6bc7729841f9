package commonsheet.quantity;

import java.math.BigDecimal;

/**
 * Reads the unit behind a number.
 *
 * <pre>
 * unit := spaces ( spelling [ per spelling ] | "(" spelling ")" | "[" spelling "]" )
 * </pre>
 */
final class UnitReader {
  /** One-letter units that drawings use as names of dimensions,. */
  private static final String LABELS = "WHNG";

  private final FoldedText text;
  private final Phrases<UnitTable.Spelling> spellings = UnitTable.standard().spellings();
  private final Words words = Words.standard();

  UnitReader(FoldedText text) {
    this.text = text;
  }

  /** The unit at a place, white space before it allowed, or null. */
  PrintedUnit read(int place) {
    int start = text.afterSpaces(place);
    char open = text.at(start);
    if (open == '(' || open == '[') {
      PrintedUnit inside = simple(text.afterSpaces(start + 1), place);
      int close = inside == null ? -1 : text.afterSpaces(inside.end());
      boolean closed = close >= 0 && text.at(close) == (open == '(' ? ')' : ']');
      return closed ? inside.endingAt(close + 1) : null;
    }
    PrintedUnit unit = simple(start, place);
    return unit == null ? null : withPer(unit);
  }

  /**
   * The unit with what it is counted per, read from the place behind it: 5 °C/min is no
   * temperature.
   */
  PrintedUnit withPer(PrintedUnit unit) {
    Phrases.Match<Boolean> per = words.per.longest(text, text.afterSpaces(unit.end()));
    if (per == null) {
      return unit;
    }
    int next = text.afterSpaces(per.end());
    if (words.each.longest(text, next) != null) {
      return unit;
    }
    PrintedUnit below = simple(next, next);
    return below == null ? unit : quotient(unit, below);
  }

  private PrintedUnit simple(int start, int afterNumber) {
    boolean spaced = start > afterNumber;
    Phrases.Match<UnitTable.Spelling> match =
        spellings.longest(text, start, (spelling, end) -> fits(spelling, start, end, spaced));
    if (match == null || match.meaning() == null) {
      return null;
    }
    boolean oneLetter = match.end() == start + 1 && FoldedText.isLetter(text.at(start));
    boolean loneC = oneLetter && lower(start) == 'c';
    UnitTable.Spelling spelling = match.meaning();
    return new PrintedUnit(
        spelling.entry(), start, match.end(), oneLetter, loneC, spelling.doubtful());
  }

  private boolean fits(UnitTable.Spelling spelling, int start, int end, boolean spaced) {
    char next = text.at(end);
    if (spelling == null) {
      return true;
    }
    if (spelling.closed()) {
      return !spaced && !FoldedText.isIdeograph(next);
    }
    if (spelling.doubtful() && FoldedText.isIdeograph(text.at(start))) {
      return !spaced;
    }
    if (FoldedText.isDigit(text.at(end - 1)) && FoldedText.isDigit(next)) {
      return false;
    }
    boolean oneLetter = end == start + 1 && FoldedText.isLetter(text.at(start));
    return !(oneLetter && isInsideCode(end)) && !(spaced && labelsNext(start, end));
  }

  /**
   * Whether the letters name the number that follows: "T 4.0±0.2 W 20.0±0.5", a W at the head of
   * the next line, "4.3 Min. 4.1".
   */
  private boolean labelsNext(int start, int end) {
    if (end == start + 1 && LABELS.indexOf(text.at(start)) >= 0) {
      return startsLine(start) || FoldedText.isDigit(text.at(text.afterSpaces(end)));
    }
    if (lower(start) != 'm' || lower(start + 1) != 'i' || end != start + 3) {
      return false;
    }
    int next = text.afterSpaces(text.at(end) == '.' ? end + 1 : end);
    boolean capital = text.at(start) == 'M';
    return text.at(next) == ':'
        || text.at(next) == '='
        || (capital && FoldedText.isDigit(text.at(next)));
  }

  private boolean startsLine(int start) {
    int at = start - 1;
    while (text.at(at) == ' ') {
      at--;
    }
    return text.at(at) == '\n';
  }

  private char lower(int place) {
    return Character.toLowerCase(text.at(place));
  }

  /** 1s1p, QRS-02V-S-B, 3.2 V-shaped: a letter that is part of something longer. */
  private boolean isInsideCode(int end) {
    char next = text.at(end);
    boolean joins = next == '-' || next == '\'' || next == '&';
    return (FoldedText.isDigit(next) && text.at(end - 1) != 'V')
        || next == '_'
        || (joins && FoldedText.isLetter(text.at(end + 1)));
  }

  private static PrintedUnit quotient(PrintedUnit above, PrintedUnit below) {
    String code = above.unit().ucum() + "/" + below.unit().ucum();
    UnitTable.Entry entry =
        new UnitTable.Entry(
            new TradeUnit(code, Dimension.OTHER),
            BigDecimal.ONE,
            BigDecimal.ONE,
            BigDecimal.ZERO,
            Double.NaN,
            Double.NaN,
            above.entry().print() + "/" + below.entry().print());
    return new PrintedUnit(entry, above.start(), below.end(), false, false, false);
  }
}
