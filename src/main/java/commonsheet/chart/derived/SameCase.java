package commonsheet.chart.derived;

import commonsheet.record.Conditions;
import java.util.List;

/** Whether a printed value and one from a curve are of the same discharge. */
final class SameCase {
  /** Rates and currents that are the same, as a share: sheets round one from the other. */
  private static final double SAME_LOAD = 0.02;

  /** Voltages that are the same, in V. */
  private static final double SAME_VOLTAGE = 0.01;

  /** Temperatures that are the same, in K: tests are made to ± 2 or ± 5 K. */
  private static final double SAME_TEMPERATURE = 2;

  /**
   * Temperatures of ordinary tests, in °C; IEC 61960-3 tests at 20 ± 5 °C (from memory), makers
   * also at 23 ± 2 and 25 ± 5 °C.
   */
  private static final double ROOM_LOW = 15;

  private static final double ROOM_HIGH = 30;

  private static final List<String> CASE_OF_ITS_OWN =
      List.of(
          Conditions.DURATION,
          Conditions.RETENTION,
          Conditions.CYCLES,
          Conditions.STATE_OF_CHARGE,
          Conditions.TEMPERATURE_LOW,
          Conditions.TEMPERATURE_HIGH);

  private SameCase() {}

  static boolean of(Conditions one, Conditions other) {
    return sameLoad(one, other)
        && sameTemperature(one, other)
        && sameVoltage(Conditions.CUTOFF_VOLTAGE, one, other)
        && sameVoltage(Conditions.CHARGE_VOLTAGE, one, other)
        && CASE_OF_ITS_OWN.stream()
            .allMatch(name -> (one.get(name) == null) == (other.get(name) == null))
        && one.agreeWith(only(other, CASE_OF_ITS_OWN));
  }

  /** Both have to name the load, in the same way. */
  private static boolean sameLoad(Conditions one, Conditions other) {
    Boolean rate = same(one.get(Conditions.DISCHARGE_RATE), other.get(Conditions.DISCHARGE_RATE));
    return rate != null
        ? rate
        : Boolean.TRUE.equals(
            same(one.get(Conditions.DISCHARGE_CURRENT), other.get(Conditions.DISCHARGE_CURRENT)));
  }

  /** Null where one of them is not known. */
  private static Boolean same(Double one, Double other) {
    return one == null || other == null
        ? null
        : Math.abs(one - other) <= SAME_LOAD * Math.max(one, other);
  }

  private static boolean sameTemperature(Conditions one, Conditions other) {
    Double first = one.get(Conditions.TEMPERATURE);
    Double second = other.get(Conditions.TEMPERATURE);
    if (first != null && second != null && Math.abs(first - second) <= SAME_TEMPERATURE) {
      return true;
    }
    return isOrdinary(first) && isOrdinary(second);
  }

  private static boolean isOrdinary(Double temperature) {
    return temperature == null || (temperature >= ROOM_LOW && temperature <= ROOM_HIGH);
  }

  private static boolean sameVoltage(String name, Conditions one, Conditions other) {
    Double first = one.get(name);
    Double second = other.get(name);
    return first == null || second == null || Math.abs(first - second) <= SAME_VOLTAGE;
  }

  private static Conditions only(Conditions conditions, List<String> names) {
    Conditions some = Conditions.NONE;
    for (String name : names) {
      if (conditions.get(name) != null) {
        some = some.with(name, conditions.get(name));
      }
    }
    return some;
  }
}
