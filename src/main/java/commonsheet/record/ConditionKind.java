package commonsheet.record;

import java.util.List;

/**
 * A condition that a statement may carry.
 *
 * @param name as in {@link Conditions#NAMES}
 * @param label what people are shown, such as {@code Discharged to}
 * @param unit UCUM code of its unit; {@code 1} for multiples of C and for counts
 */
public record ConditionKind(String name, String label, String unit) {
  private static final List<ConditionKind> ALL =
      List.of(
          new ConditionKind(Conditions.DISCHARGE_CURRENT, "Discharge current", "A"),
          new ConditionKind(Conditions.DISCHARGE_RATE, "Discharge rate", "1"),
          new ConditionKind(Conditions.CHARGE_CURRENT, "Charge current", "A"),
          new ConditionKind(Conditions.CHARGE_RATE, "Charge rate", "1"),
          new ConditionKind(Conditions.CUTOFF_VOLTAGE, "Discharged to", "V"),
          new ConditionKind(Conditions.CHARGE_VOLTAGE, "Charged to", "V"),
          new ConditionKind(Conditions.TEMPERATURE, "Temperature", "Cel"),
          new ConditionKind(Conditions.TEMPERATURE_LOW, "Temperature from", "Cel"),
          new ConditionKind(Conditions.TEMPERATURE_HIGH, "Temperature up to", "Cel"),
          new ConditionKind(Conditions.DURATION, "Duration", "s"),
          new ConditionKind(Conditions.FREQUENCY, "Frequency", "Hz"),
          new ConditionKind(Conditions.RETENTION, "Capacity left", "%"),
          new ConditionKind(Conditions.CYCLES, "After cycles", "1"),
          new ConditionKind(Conditions.STATE_OF_CHARGE, "State of charge", "%"));

  /** Every condition, in the order they are written. */
  public static List<ConditionKind> all() {
    return ALL;
  }

  /**
   * The condition of a name.
   *
   * @throws IllegalArgumentException if there is none, in a sentence
   */
  public static ConditionKind of(String name) {
    for (ConditionKind kind : ALL) {
      if (kind.name().equals(name)) {
        return kind;
      }
    }
    throw new IllegalArgumentException(
        "\""
            + name
            + "\" is no condition; the conditions are "
            + String.join(", ", Conditions.NAMES));
  }

  /** Whether it is a current as a multiple of C. */
  public boolean isRate() {
    return name.equals(Conditions.DISCHARGE_RATE) || name.equals(Conditions.CHARGE_RATE);
  }
}
