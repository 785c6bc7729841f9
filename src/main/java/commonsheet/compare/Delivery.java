package commonsheet.compare;

/**
 * What a cell gives under one current.
 *
 * @param capacity in A.h
 * @param energy in W.h
 * @param meanVoltage in V
 * @param discharge what the rest is computed from; null where no curves give it
 * @param reason why there is no discharge, or null
 */
record Delivery(
    Figure capacity, Figure energy, Figure meanVoltage, Discharge discharge, String reason) {
  /** Nothing is known, for one reason. */
  static Delivery absent(String reason) {
    Figure none = Figure.absent(reason);
    return new Delivery(none, none, none, null, reason);
  }
}
