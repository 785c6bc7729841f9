package commonsheet.quantity;

/** A word tied to one printed number that says what the number is of its kind. */
public enum Qualifier {
  MINIMUM,
  MAXIMUM,
  TYPICAL,
  NOMINAL,
  RATED,
  STANDARD
}
