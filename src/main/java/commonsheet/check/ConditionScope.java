package commonsheet.check;

import commonsheet.record.Conditions;
import java.util.Set;

/**
 * When two statements speak of the same case. Conditions that both state have to agree; some
 * conditions set a case of their own as soon as one of the two states them: a limit for the cold, a
 * current for ten seconds, a size after 300 cycles.
 */
enum ConditionScope {
  /** For values that do not depend on how the cell is discharged. */
  ANY(Set.of()),

  /** For values that depend on the discharge, such as a capacity. */
  DISCHARGE(Set.of(Conditions.DISCHARGE_CURRENT, Conditions.DISCHARGE_RATE));

  private static final Set<String> OWN_CASE =
      Set.of(
          Conditions.TEMPERATURE_LOW,
          Conditions.TEMPERATURE_HIGH,
          Conditions.DURATION,
          Conditions.RETENTION,
          Conditions.CYCLES,
          Conditions.STATE_OF_CHARGE);

  /**
   * Temperatures that sheets name only because tests are made there, in °C; IEC 61960-3 tests at 20
   * ± 5 °C (from memory), makers also at 23 ± 2 and 25 ± 5 °C.
   */
  private static final double ROOM_LOW = 15;

  private static final double ROOM_HIGH = 30;

  /** Unmodifiable. */
  @SuppressWarnings("ImmutableEnumChecker")
  private final Set<String> alsoOwnCase;

  ConditionScope(Set<String> alsoOwnCase) {
    this.alsoOwnCase = alsoOwnCase;
  }

  boolean sameCase(Conditions one, Conditions other) {
    return one.agreeWith(other) && addsNoCase(one, other) && addsNoCase(other, one);
  }

  /** Whether {@code one} states no condition of a case of its own that {@code other} lacks. */
  private boolean addsNoCase(Conditions one, Conditions other) {
    return one.values().entrySet().stream()
        .filter(condition -> other.get(condition.getKey()) == null)
        .noneMatch(condition -> isOwnCase(condition.getKey(), condition.getValue()));
  }

  private boolean isOwnCase(String name, double value) {
    return OWN_CASE.contains(name)
        || alsoOwnCase.contains(name)
        || (name.equals(Conditions.TEMPERATURE) && (value < ROOM_LOW || value > ROOM_HIGH));
  }
}
