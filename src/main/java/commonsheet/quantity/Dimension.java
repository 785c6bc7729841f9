package commonsheet.quantity;

/** What a unit measures, as far as a cell datasheet needs to tell units apart. */
public enum Dimension {
  CHARGE,
  ENERGY,
  VOLTAGE,
  CURRENT,
  /** Multiples of the capacity per hour (C-rate). */
  RATE,
  RESISTANCE,
  MASS,
  LENGTH,
  TEMPERATURE,
  TIME,
  FREQUENCY,
  /** Per cent. */
  RATIO,
  CYCLES,
  SPECIFIC_ENERGY,
  ENERGY_DENSITY,
  POWER,
  /** Recognised only to keep its numbers from being taken for something else: force, humidity… */
  OTHER
}
