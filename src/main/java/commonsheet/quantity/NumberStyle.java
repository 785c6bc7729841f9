package commonsheet.quantity;

/** Which mark a sheet puts before its decimals. The other one then separates thousands. */
public enum NumberStyle {
  DECIMAL_POINT('.'),
  DECIMAL_COMMA(',');

  private final char decimalMark;

  NumberStyle(char decimalMark) {
    this.decimalMark = decimalMark;
  }

  char decimalMark() {
    return decimalMark;
  }

  /**
   * The style most numbers of a sheet speak for. Only numbers that carry a unit and can be read in
   * one way count: 3,7V and 0,5C speak for the comma; 3.7V and 2,550mAh, which would not be 2.55
   * mAh, for the point.
   *
   * @param wholeSheetText all words of the sheet
   * @return the point where the numbers are silent or at odds
   */
  public static NumberStyle of(String wholeSheetText) {
    FoldedText text = new FoldedText(wholeSheetText);
    NumberReader numbers = new NumberReader(text, DECIMAL_POINT);
    UnitReader units = new UnitReader(text);
    int forComma = 0;
    int forPoint = 0;
    for (int at = 0; at < text.length(); at++) {
      boolean begins = FoldedText.isDigit(text.at(at)) && !FoldedText.isDigit(text.at(at - 1));
      PrintedNumber number = begins ? numbers.read(at) : null;
      PrintedUnit unit = number == null ? null : units.read(number.end());
      if (unit == null) {
        continue;
      }
      NumberStyle spokenFor = spokenFor(text, at, number, unit);
      forComma += spokenFor == DECIMAL_COMMA ? 1 : 0;
      forPoint += spokenFor == DECIMAL_POINT ? 1 : 0;
      at = number.end() - 1;
    }
    return forComma > forPoint ? DECIMAL_COMMA : DECIMAL_POINT;
  }

  /**
   * The style one number speaks for, or null. The number was read with the point as the decimal
   * mark.
   */
  private static NumberStyle spokenFor(
      FoldedText text, int start, PrintedNumber number, PrintedUnit unit) {
    if (number.other() != null) {
      boolean pointFits = unit.entry().isUsual(number.value());
      boolean commaFits = unit.entry().isUsual(number.other());
      if (pointFits == commaFits) {
        return null;
      }
      return pointFits ? DECIMAL_POINT : DECIMAL_COMMA;
    }
    char mark = lastMark(text, start, number.end());
    boolean decimal = number.value().scale() > 0;
    if (mark == '\0') {
      return null;
    }
    return (mark == ',') == decimal ? DECIMAL_COMMA : DECIMAL_POINT;
  }

  private static char lastMark(FoldedText text, int start, int end) {
    for (int at = end - 1; at >= start; at--) {
      if (text.at(at) == '.' || text.at(at) == ',') {
        return text.at(at);
      }
    }
    return '\0';
  }
}
