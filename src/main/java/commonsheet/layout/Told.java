package commonsheet.layout;

import commonsheet.quantity.Figure;

/** A figure in running text and the part it plays there. */
record Told(Part part, Figure figure) {
  /** What a figure in running text can be. */
  enum Part {
    CHARGE_VOLTAGE,
    CUTOFF_VOLTAGE,
    CHARGE_CURRENT,
    DISCHARGE_CURRENT,
    /** One current for both directions: "0.5C charge and discharge". */
    BOTH_CURRENTS,
    TAPER_CURRENT,
    TEMPERATURE,
    STORAGE_TEMPERATURE,
    DISCHARGE_TEMPERATURE,
    STORAGE_TIME,
    TIME,
    FREQUENCY,
    /** A share of the capacity. */
    RETENTION,
    STATE_OF_CHARGE,
    CYCLES,
    OTHER
  }
}
