package commonsheet.quantity;

/**
 * A unit as it stands behind a number.
 *
 * @param entry its line in the table; for units put together (°C/min) a line of its own that
 *     converts to nothing
 * @param start where it begins
 * @param end the place after it
 * @param isOneLetter whether it is a single letter, which can as well be part of a name
 * @param loneC whether it is a bare C, which is a rate or, where the degree sign was lost, a
 *     temperature
 * @param doubtful whether the spelling can mean something else
 */
record PrintedUnit(
    UnitTable.Entry entry,
    int start,
    int end,
    boolean isOneLetter,
    boolean loneC,
    boolean doubtful) {
  TradeUnit unit() {
    return entry.unit();
  }

  Dimension dimension() {
    return entry.unit().dimension();
  }

  PrintedUnit endingAt(int newEnd) {
    return new PrintedUnit(entry, start, newEnd, isOneLetter, loneC, doubtful);
  }

  PrintedUnit settled() {
    return new PrintedUnit(entry, start, end, isOneLetter, loneC, false);
  }

  /** The same words read as another unit. */
  PrintedUnit as(String ucum, boolean nowDoubtful) {
    return new PrintedUnit(
        UnitTable.standard().entry(ucum), start, end, isOneLetter, false, nowDoubtful);
  }
}
