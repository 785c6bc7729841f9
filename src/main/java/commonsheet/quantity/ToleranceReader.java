package commonsheet.quantity;

import java.math.BigDecimal;
import java.util.Set;

/**
 * Reads what a number may differ by.
 *
 * <pre>
 * tolerance := body | "(" body ")" | "[" body "]"
 * body      := plusMinus amount | side ( "/" | "," | spaces ) side
 * plusMinus := "±" | "+/-" | "+-"
 * side      := sign number [ unit ] | "0"
 * </pre>
 */
final class ToleranceReader {
  /**
   * Two signed numbers with only a space between are a tolerance if they are small against the
   * number.
   */
  private static final BigDecimal LARGEST_SHARE = new BigDecimal("0.5");

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private static final Set<String> THOUSANDTHS = Set.of("mV", "mA", "mOhm");

  /** How far down and up, both positive or zero. */
  private record Sides(BigDecimal down, BigDecimal up, PrintedUnit unit, int end) {
    Sides endingAt(int newEnd) {
      return new Sides(down, up, unit, newEnd);
    }
  }

  private record Side(BigDecimal signed, PrintedUnit unit, boolean hasSign, int end) {}

  private final FoldedText text;
  private final AmountReader amounts;
  private final UnitReader units;
  private final NumberStyle style;

  ToleranceReader(FoldedText text, AmountReader amounts, NumberStyle style) {
    this.text = text;
    this.amounts = amounts;
    this.units = amounts.units();
    this.style = style;
  }

  /** The amount with the tolerance behind it; null where none follows. */
  Extent read(Amount amount) {
    int at = text.afterSpaces(amount.end());
    char open = text.at(at);
    if (open != '(' && open != '[') {
      return applied(amount, body(amount, at));
    }
    Sides inside = body(amount, text.afterSpaces(at + 1));
    if (inside == null) {
      return null;
    }
    int close = text.afterSpaces(inside.end());
    char wanted = open == '(' ? ')' : ']';
    return text.at(close) == wanted ? applied(amount, inside.endingAt(close + 1)) : null;
  }

  private Sides body(Amount amount, int at) {
    int afterSign = afterPlusMinus(at);
    return afterSign > at ? symmetric(afterSign) : twoSided(amount, at);
  }

  /** Whether a tolerance begins at a place, white space before it allowed. */
  boolean follows(int place) {
    int at = text.afterSpaces(place);
    return afterPlusMinus(at) > at;
  }

  private int afterPlusMinus(int at) {
    if (text.at(at) == '±') {
      return at + 1;
    }
    if (text.at(at) != '+') {
      return at;
    }
    int next = text.afterSpaces(at + 1);
    if (text.at(next) == '/') {
      next = text.afterSpaces(next + 1);
    }
    return text.at(next) == '-' ? next + 1 : at;
  }

  private Sides symmetric(int afterSign) {
    Amount amount = amounts.unsigned(text.afterSpaces(afterSign));
    if (amount == null) {
      return null;
    }
    BigDecimal size = amount.valueIn(amount.unit());
    return new Sides(size, size, amount.unit(), amount.end());
  }

  private Sides twoSided(Amount amount, int at) {
    Side first = side(at);
    if (first == null) {
      return null;
    }
    int between = text.afterSpaces(first.end());
    boolean slash = text.at(between) == '/' || text.at(between) == ',';
    Side second = side(slash ? text.afterSpaces(between + 1) : between);
    if (second == null || !(first.hasSign() || second.hasSign())) {
      return null;
    }
    boolean signed = first.hasSign() && second.hasSign();
    boolean small = isSmall(first, amount) && isSmall(second, amount);
    if (!(slash || (signed && small)) || !CommonUnit.exists(first.unit(), second.unit())) {
      return null;
    }
    BigDecimal least = first.signed().min(second.signed());
    BigDecimal greatest = first.signed().max(second.signed());
    if (least.signum() > 0 || greatest.signum() < 0) {
      return null;
    }
    return new Sides(
        least.negate(), greatest, CommonUnit.of(second.unit(), first.unit()), second.end());
  }

  private Side side(int at) {
    char sign = text.at(at);
    boolean signed = sign == '+' || sign == '-';
    Amount amount = amounts.unsigned(signed ? text.afterSpaces(at + 1) : at);
    if (amount == null) {
      return null;
    }
    BigDecimal size = amount.valueIn(amount.unit());
    if (!signed && size.signum() != 0) {
      return null;
    }
    return new Side(sign == '-' ? size.negate() : size, amount.unit(), signed, amount.end());
  }

  private static boolean isSmall(Side side, Amount amount) {
    BigDecimal most = amount.number().value().abs().multiply(LARGEST_SHARE);
    return side.signed().abs().compareTo(most) <= 0;
  }

  private Extent applied(Amount amount, Sides sides) {
    if (sides == null) {
      return null;
    }
    PrintedUnit own = amount.unit();
    PrintedUnit theirs = sides.unit();
    if (own == null && theirs == null) {
      theirs = units.read(sides.end());
      int end = theirs == null ? sides.end() : theirs.end();
      return absolute(amount, sides.endingAt(end), theirs, theirs);
    }
    if (isPercent(theirs) && !isPercent(own)) {
      PrintedUnit behind = own == null ? units.read(sides.end()) : own;
      if (behind != null) {
        return relative(amount, sides.endingAt(Math.max(sides.end(), behind.end())), behind);
      }
    }
    if (!CommonUnit.exists(own, theirs)) {
      return null;
    }
    PrintedUnit larger = own == null ? largerUnit(amount, sides) : null;
    return larger == null
        ? absolute(amount, sides, CommonUnit.of(own, theirs), theirs)
        : absolute(amount, sides, larger, theirs).doubted(true);
  }

  /**
   * "4.275 ±50 mV": a tolerance above the number itself is printed in a thousandth of the number's
   * unit.
   */
  private static PrintedUnit largerUnit(Amount amount, Sides sides) {
    String code = sides.unit().unit().ucum();
    BigDecimal value = amount.valueIn(sides.unit());
    boolean mismatch = value.signum() > 0 && sides.down().compareTo(value) > 0;
    return mismatch && THOUSANDTHS.contains(code)
        ? sides.unit().as(code.substring(1), false)
        : null;
  }

  private Extent absolute(Amount amount, Sides sides, PrintedUnit unit, PrintedUnit theirs) {
    BigDecimal value = CommonUnit.inUnit(amount.valueIn(unit), amount.unit(), unit);
    PrintedUnit printed = theirs == null ? unit : theirs;
    BigDecimal down = CommonUnit.differenceInUnit(sides.down(), printed, unit);
    BigDecimal up = CommonUnit.differenceInUnit(sides.up(), printed, unit);
    return extent(amount, value, down, up, unit, sides.end());
  }

  private Extent relative(Amount amount, Sides sides, PrintedUnit unit) {
    BigDecimal value = amount.valueIn(unit);
    BigDecimal hundredth = value.abs().divide(HUNDRED);
    return extent(
        amount,
        value,
        hundredth.multiply(sides.down()),
        hundredth.multiply(sides.up()),
        unit,
        sides.end());
  }

  private Extent extent(
      Amount amount, BigDecimal value, BigDecimal down, BigDecimal up, PrintedUnit unit, int end) {
    return new Extent(
        value, value.subtract(down), value.add(up), unit, amount.isAmbiguousIn(unit, style), end);
  }

  private static boolean isPercent(PrintedUnit unit) {
    return unit != null && unit.dimension() == Dimension.RATIO;
  }
}
