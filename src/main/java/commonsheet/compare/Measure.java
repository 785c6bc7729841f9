package commonsheet.compare;

/** What cells are compared by. The order is that of the columns of a comparison. */
public enum Measure {
  CURRENT_RATING(
      "currentRating", "A", "Current rating", "maximum continuous discharge current stated"),
  PULSE_RATING("pulseRating", "A", "Pulse rating", "maximum pulse discharge current stated"),
  NOMINAL_CAPACITY("nominalCapacity", "A.h", "Nominal capacity", "as the sheet prints it"),
  NOMINAL_VOLTAGE("nominalVoltage", "V", "Nominal voltage", "as the sheet prints it"),
  MASS("mass", "g", "Mass", "of the bare cell"),
  DELIVERED_CAPACITY(
      "deliveredCapacity",
      "A.h",
      "Delivered capacity",
      "charge given under the load to the cut-off"),
  DELIVERED_ENERGY(
      "deliveredEnergy", "W.h", "Delivered energy", "energy given under the load to the cut-off"),
  DELIVERED_SPECIFIC_ENERGY(
      "deliveredSpecificEnergy", "W.h/kg", "Delivered energy per mass", "of the bare cell"),
  MEAN_VOLTAGE("meanVoltage", "V", "Mean voltage", "delivered energy over delivered capacity"),
  LOWEST_VOLTAGE(
      "lowestVoltage",
      "V",
      "Lowest voltage",
      "under the peak of the load, before the reserve or, without one, the last tenth"
          + " of the charge"),
  VOLTAGE_DROP(
      "voltageDrop",
      "V",
      "Voltage drop",
      "mean gap at equal charge between the curve of the lowest rate and the voltage under the"
          + " load"),
  HEAT(
      "heat",
      "W",
      "Heat",
      "mean of current times that gap; what the lowest rate itself loses is not in it"),
  CURVE_RESISTANCE(
      "curveResistance",
      "mOhm",
      "Resistance from curves",
      "separation of discharge curves at equal charge over the difference of their currents");

  private final String label;
  private final String unit;
  private final String title;
  private final String meaning;

  Measure(String label, String unit, String title, String meaning) {
    this.label = label;
    this.unit = unit;
    this.title = title;
    this.meaning = meaning;
  }

  /** Its name in files and options, such as {@code deliveredEnergy}. */
  public String label() {
    return label;
  }

  /** UCUM code. */
  public String unit() {
    return unit;
  }

  /** For people, without the unit. */
  public String title() {
    return title;
  }

  /** In a few words what is meant. */
  public String meaning() {
    return meaning;
  }

  /** Whether a cell is the better, the less it has of this. */
  public boolean lessIsBetter() {
    return this == MASS || this == VOLTAGE_DROP || this == HEAT || this == CURVE_RESISTANCE;
  }
}
