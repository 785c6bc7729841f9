package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The conditions stated with a value: name to number in the condition's canonical unit. The names
 * and their order are fixed by {@link #NAMES}; what the sheet leaves unsaid is absent.
 */
public record Conditions(@JsonValue Map<String, Double> values) {
  public static final String DISCHARGE_CURRENT = "dischargeCurrent";
  public static final String DISCHARGE_RATE = "dischargeRate";
  public static final String CHARGE_CURRENT = "chargeCurrent";
  public static final String CHARGE_RATE = "chargeRate";
  public static final String CUTOFF_VOLTAGE = "cutoffVoltage";
  public static final String CHARGE_VOLTAGE = "chargeVoltage";
  public static final String TEMPERATURE = "temperature";
  public static final String TEMPERATURE_LOW = "temperatureLow";
  public static final String TEMPERATURE_HIGH = "temperatureHigh";
  public static final String DURATION = "duration";
  public static final String FREQUENCY = "frequency";
  public static final String RETENTION = "retention";
  public static final String CYCLES = "cycles";
  public static final String STATE_OF_CHARGE = "stateOfCharge";

  /**
   * Every condition a statement may carry, in the order they are written. Units: currents A, rates
   * multiples of C, voltages V, temperatures Cel, duration s, frequency Hz, retention and
   * stateOfCharge %, cycles a count.
   */
  public static final List<String> NAMES =
      List.of(
          DISCHARGE_CURRENT,
          DISCHARGE_RATE,
          CHARGE_CURRENT,
          CHARGE_RATE,
          CUTOFF_VOLTAGE,
          CHARGE_VOLTAGE,
          TEMPERATURE,
          TEMPERATURE_LOW,
          TEMPERATURE_HIGH,
          DURATION,
          FREQUENCY,
          RETENTION,
          CYCLES,
          STATE_OF_CHARGE);

  public static final Conditions NONE = new Conditions(Map.of());

  /** Keeps the known names in their fixed order. */
  @JsonCreator
  public Conditions {
    for (String name : values.keySet()) {
      if (!NAMES.contains(name)) {
        throw new IllegalArgumentException(
            "\"" + name + "\" is no condition; the conditions are " + String.join(", ", NAMES));
      }
    }
    Map<String, Double> ordered = new LinkedHashMap<>();
    for (String name : NAMES) {
      Double value = values.get(name);
      if (value != null) {
        ordered.put(name, value);
      }
    }
    values = Collections.unmodifiableMap(ordered);
  }

  public boolean isEmpty() {
    return values.isEmpty();
  }

  /** The value of a condition, or null where the sheet does not state it. */
  public Double get(String name) {
    return values.get(name);
  }

  /** These conditions with one more, which replaces an earlier value of the same name. */
  public Conditions with(String name, double value) {
    Map<String, Double> more = new LinkedHashMap<>(values);
    more.put(name, value);
    return new Conditions(more);
  }

  /** These conditions without the one of that name. */
  public Conditions without(String name) {
    Map<String, Double> fewer = new LinkedHashMap<>(values);
    fewer.remove(name);
    return new Conditions(fewer);
  }

  /** These conditions and those of {@code other} that are not yet present here. */
  public Conditions withMissingFrom(Conditions other) {
    Map<String, Double> more = new LinkedHashMap<>(other.values);
    more.putAll(values);
    return new Conditions(more);
  }

  /** Whether no condition present in both has different values (relative tolerance 0.5 %). */
  public boolean agreeWith(Conditions other) {
    for (Map.Entry<String, Double> entry : values.entrySet()) {
      Double theirs = other.values.get(entry.getKey());
      if (theirs != null
          && Math.abs(theirs - entry.getValue()) > 0.005 * Math.max(Math.abs(theirs), 1e-9)) {
        return false;
      }
    }
    return true;
  }
}
