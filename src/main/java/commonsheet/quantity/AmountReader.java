package commonsheet.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Reads one number with its unit.
 *
 * <pre>
 * amount    := [ sign ] ( fraction | ordinal | number [ unit ] ) | rateOver | word
 * fraction  := "1" "/" number rateUnit          1/5C
 * rateOver  := "C" [ digits ] "/" number [ "A" ]  C/5, C5/5
 * ordinal   := number ( "st" | "th" | … ) cycleUnit
 * word      := numberWord timeUnit              three months
 * </pre>
 */
final class AmountReader {
  private static final String RATE = "h-1";

  private final FoldedText text;
  private final NumberReader numbers;
  private final UnitReader units;
  private final Words words = Words.standard();

  AmountReader(FoldedText text, NumberStyle style) {
    this.text = text;
    this.numbers = new NumberReader(text, style);
    this.units = new UnitReader(text);
  }

  UnitReader units() {
    return units;
  }

  /** An amount whose sign, if any, stands directly before its digits; null where none begins. */
  Amount read(int place) {
    return signed(place, place + 1);
  }

  /** An amount whose sign may stand apart: "- 20 ~ + 60 °C". */
  Amount readLoosely(int place) {
    return signed(place, text.afterSpaces(place + 1));
  }

  private Amount signed(int place, int afterSign) {
    return switch (text.at(place)) {
      case '+' -> unsigned(afterSign);
      case '-' -> negated(unsigned(afterSign));
      case '±', '~', '(' -> null;
      default ->
          FoldedText.isDigit(text.at(place)) || text.at(place) == '.'
              ? unsigned(place)
              : inWords(place);
    };
  }

  private static Amount negated(Amount amount) {
    return amount == null
        ? null
        : new Amount(amount.number().negated(), amount.unit(), amount.end());
  }

  Amount unsigned(int place) {
    PrintedNumber number = numbers.read(place);
    if (number == null) {
      return null;
    }
    Amount fraction = fraction(number);
    if (fraction != null) {
      return fraction;
    }
    Phrases.Match<Boolean> ordinal = words.ordinals.longest(text, number.end());
    if (ordinal != null) {
      return counted(number, ordinal.end());
    }
    PrintedUnit unit = units.read(number.end());
    if (unit != null && unit.dimension() == Dimension.CYCLES && number.value().scale() > 0) {
      // "3.2 Cycle" is a clause and its heading.
      return new Amount(number, null, number.end());
    }
    if (unit != null) {
      return new Amount(number, unit, unit.end());
    }
    return isInsideCode(number.end()) ? null : new Amount(number, null, number.end());
  }

  private Amount fraction(PrintedNumber number) {
    int slash = text.afterSpaces(number.end());
    if (text.at(slash) != '/' || number.value().compareTo(BigDecimal.ONE) != 0) {
      return null;
    }
    PrintedNumber below = numbers.read(text.afterSpaces(slash + 1));
    PrintedUnit unit = below == null ? null : units.read(below.end());
    boolean rate = unit != null && unit.dimension() == Dimension.RATE;
    return rate ? new Amount(inverse(below), settled(unit), unit.end()) : null;
  }

  private Amount counted(PrintedNumber number, int afterOrdinal) {
    PrintedUnit unit = units.read(afterOrdinal);
    boolean counts = unit != null && unit.dimension() == Dimension.CYCLES;
    return counts ? new Amount(number, unit, unit.end()) : null;
  }

  private Amount inWords(int place) {
    if (FoldedText.isLetter(text.at(place - 1))) {
      return null;
    }
    Amount rate = rateOver(place);
    if (rate != null) {
      return rate;
    }
    Phrases.Match<BigDecimal> word = words.numbers.longest(text, place);
    PrintedUnit unit = word == null ? null : units.read(word.end());
    if (unit == null || unit.dimension() != Dimension.TIME) {
      return null;
    }
    return new Amount(new PrintedNumber(word.meaning(), null, word.end()), unit, unit.end());
  }

  private Amount rateOver(int place) {
    if (text.at(place) != 'C'
        || FoldedText.isDigit(text.at(place - 1))
        || text.at(place - 1) == '°') {
      return null;
    }
    int slash = place + 1;
    while (FoldedText.isDigit(text.at(slash))) {
      slash++;
    }
    PrintedNumber below = text.at(slash) == '/' ? numbers.read(text.afterSpaces(slash + 1)) : null;
    if (below == null || below.value().signum() == 0) {
      return null;
    }
    int end = below.end();
    int ampere = text.afterSpaces(end);
    if (text.at(ampere) == 'A' && !FoldedText.isLetter(text.at(ampere + 1))) {
      end = ampere + 1;
    } else if (FoldedText.isLetter(text.at(end)) || units.read(end) != null) {
      return null;
    }
    UnitTable.Entry rate = UnitTable.standard().entry(RATE);
    return new Amount(inverse(below), new PrintedUnit(rate, place, end, false, false, false), end);
  }

  private static PrintedNumber inverse(PrintedNumber below) {
    BigDecimal value = BigDecimal.ONE.divide(below.value(), MathContext.DECIMAL64);
    return new PrintedNumber(value, null, below.end());
  }

  private static PrintedUnit settled(PrintedUnit unit) {
    return unit.as(RATE, false);
  }

  /**
   * Letters glued to the digits that are no unit: 18650PF. "50.0Max", "0to45" and "85x55" are no
   * codes.
   */
  private boolean isInsideCode(int end) {
    char next = text.at(end);
    if (!FoldedText.isLetter(next) && next != '_') {
      return false;
    }
    boolean factor = (next == 'x' || next == 'X') && FoldedText.isDigit(text.at(end + 1));
    return !factor
        && words.after.longest(text, end) == null
        && words.range.longest(text, end) == null;
  }
}
