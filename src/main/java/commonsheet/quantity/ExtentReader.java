package commonsheet.quantity;

/**
 * Reads the numbers of one figure.
 *
 * <pre>
 * extent := amount [ tolerance | rangeRest ]
 *         | "(" amount ( tolerance | rangeRest ) ")" unit      (55±2)℃
 * </pre>
 */
final class ExtentReader {
  private final FoldedText text;
  private final AmountReader amounts;
  private final ToleranceReader tolerances;
  private final RangeReader ranges;
  private final NumberStyle style;

  ExtentReader(FoldedText text, NumberStyle style) {
    this.text = text;
    this.style = style;
    this.amounts = new AmountReader(text, style);
    this.tolerances = new ToleranceReader(text, amounts, style);
    this.ranges = new RangeReader(text, amounts, tolerances, style);
  }

  /** The extent at a place, or null. */
  Extent read(int place, boolean afterBetween) {
    Extent extent =
        text.at(place) == '(' ? inParentheses(place) : continued(amounts.read(place), afterBetween);
    return extent == null ? null : extent.settled();
  }

  /** A temperature whose minus stands apart from its digits; null for anything else. */
  Extent readApartFromSign(int place) {
    Extent extent = continued(amounts.readLoosely(place), false);
    if (extent == null) {
      return null;
    }
    Extent settled = extent.settled();
    boolean temperature =
        settled.unit() != null && settled.unit().dimension() == Dimension.TEMPERATURE;
    return temperature ? settled.doubted(settled.value() != null) : null;
  }

  private Extent continued(Amount first, boolean afterBetween) {
    if (first == null) {
      return null;
    }
    Extent extent = joined(first, afterBetween);
    if (extent != null) {
      return extent;
    }
    PrintedUnit unit = first.unit();
    return Extent.of(first.valueIn(unit), unit, first.isAmbiguousIn(unit, style), first.end());
  }

  private Extent joined(Amount first, boolean afterBetween) {
    Extent withTolerance = tolerances.read(first);
    return withTolerance == null ? ranges.read(first, afterBetween) : withTolerance;
  }

  private Extent inParentheses(int place) {
    Amount first = amounts.read(text.afterSpaces(place + 1));
    Extent inside = first == null ? null : joined(first, false);
    int close = inside == null ? -1 : text.afterSpaces(inside.end());
    if (close < 0 || text.at(close) != ')') {
      return null;
    }
    if (inside.unit() == null) {
      PrintedUnit unit = amounts.units().read(close + 1);
      return unit == null ? null : inside.withUnit(unit, unit.end());
    }
    PrintedUnit unit = inside.unit().endingAt(close + 1);
    PrintedUnit withPer = amounts.units().withPer(unit);
    return withPer.end() == unit.end() ? null : inside.withUnit(withPer, withPer.end());
  }
}
