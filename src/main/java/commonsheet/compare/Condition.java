package commonsheet.compare;

/**
 * The one condition at which cells are compared.
 *
 * @param load on each cell
 * @param cutoffVoltage at which a discharge ends, in V per cell
 * @param temperature of the surroundings, in °C
 * @param reserve share of the delivered charge that is to stay in the cell, 0 up to below 1; it
 *     bounds where the lowest voltage is looked for, and what a pack is counted to give
 * @param tolerance how far a sheet's condition may be from this one
 */
public record Condition(
    Load load, double cutoffVoltage, double temperature, double reserve, Tolerance tolerance) {
  /**
   * To this voltage the curves of most cobalt, nickel and manganese cells reach (end voltages by
   * chemistry: manufacturers' tables, 3.00 V). Iron phosphate and titanate cells need another one.
   */
  public static final double USUAL_CUTOFF = 3.0;

  /** Between the 20, 23 and 25 °C at which makers test (IEC 61960-3: 20 ± 5 °C). */
  public static final double USUAL_TEMPERATURE = 23;

  /**
   * How far conditions may differ and still be called the same.
   *
   * @param voltage in V
   * @param temperature in K
   */
  public record Tolerance(double voltage, double temperature) {
    /** Sheets print voltages to the hundredth; IEC 61960-3 tests at 20 ± 5 °C. */
    public static final Tolerance STANDARD = new Tolerance(0.005, 5);
  }

  /** A load at the usual cut-off and temperature, without reserve. */
  public static Condition usual(Load load) {
    return new Condition(load, USUAL_CUTOFF, USUAL_TEMPERATURE, 0, Tolerance.STANDARD);
  }

  /** The same condition under another load. */
  public Condition under(Load other) {
    return new Condition(other, cutoffVoltage, temperature, reserve, tolerance);
  }
}
