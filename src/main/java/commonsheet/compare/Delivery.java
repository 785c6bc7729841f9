package commonsheet.compare;

/**
 * What a cell gives under one current.
 *
 * @param capacity in A.h
 * @param energy in W.h
 * @param meanVoltage in V
 * @param discharge what the rest is computed from; null where the current lies outside the curves
 */
record Delivery(Figure capacity, Figure energy, Figure meanVoltage, Discharge discharge) {
  /** Nothing is known, for one reason. */
  static Delivery absent(String reason) {
    Figure none = Figure.absent(reason);
    return new Delivery(none, none, none, null);
  }
}
