package commonsheet.layout;

import commonsheet.quantity.Bound;
import commonsheet.quantity.Dimension;
import commonsheet.quantity.Figure;
import commonsheet.record.Conditions;
import java.util.List;
import java.util.Optional;

/** Turns the figures told beside a value into the conditions that its quantity may carry. */
final class ConditionsOf {
  /** Fewer cycles belong to the procedure of a test. Common practice, no source. */
  private static final double FEWEST_CYCLES = 20;

  private static final double MONTH = 30 * 86_400.0;
  private static final double YEAR = 365 * 86_400.0;

  private final Terms terms;

  ConditionsOf(Terms terms) {
    this.terms = terms;
  }

  /** The conditions told, first mention first; one that the quantity may not carry is left out. */
  Conditions read(String quantity, List<Told> told) {
    Conditions conditions = Conditions.NONE;
    for (Told t : told) {
      conditions = conditions.withMissingFrom(of(quantity, t));
    }
    return withOneTemperature(quantity, conditions, told);
  }

  /**
   * Several temperatures in one procedure: the storage temperature is the condition of what is left
   * after storage, the discharge temperature that of a discharge; the first mentioned counts
   * otherwise.
   */
  private Conditions withOneTemperature(String quantity, Conditions conditions, List<Told> told) {
    if (!terms.mayCarry(quantity, Conditions.TEMPERATURE)
        || conditions.get(Conditions.TEMPERATURE) == null) {
      return conditions;
    }
    boolean kept = quantity.equals("capacityRetention") || quantity.equals("capacityRecovery");
    Optional<Told> chosen = Optional.empty();
    if (kept) {
      chosen = single(told, Told.Part.STORAGE_TEMPERATURE);
    }
    if (chosen.isEmpty() && !quantity.contains("harge")) {
      chosen = single(told, Told.Part.DISCHARGE_TEMPERATURE);
    }
    return chosen
        .map(t -> conditions.with(Conditions.TEMPERATURE, t.figure().in("Cel").value()))
        .orElse(conditions);
  }

  /** Whether different temperatures stand beside a value and nothing tells which is its own. */
  boolean severalTemperatures(String quantity, List<Told> told) {
    return terms.mayCarry(quantity, Conditions.TEMPERATURE)
        && single(told, Told.Part.STORAGE_TEMPERATURE).isEmpty()
        && single(told, Told.Part.DISCHARGE_TEMPERATURE).isEmpty()
        && told.stream()
                .filter(t -> t.part() == Told.Part.TEMPERATURE && t.figure().value() != null)
                .map(t -> t.figure().in("Cel").value())
                .distinct()
                .count()
            > 1;
  }

  private static Optional<Told> single(List<Told> told, Told.Part part) {
    return told.stream().filter(t -> t.part() == part && t.figure().value() != null).findFirst();
  }

  private Conditions of(String quantity, Told told) {
    Figure figure = told.figure();
    return switch (told.part()) {
      case CHARGE_VOLTAGE -> one(quantity, Conditions.CHARGE_VOLTAGE, figure, "V");
      case CUTOFF_VOLTAGE -> one(quantity, Conditions.CUTOFF_VOLTAGE, figure, "V");
      case CHARGE_CURRENT ->
          current(quantity, Conditions.CHARGE_RATE, Conditions.CHARGE_CURRENT, figure);
      case DISCHARGE_CURRENT ->
          current(quantity, Conditions.DISCHARGE_RATE, Conditions.DISCHARGE_CURRENT, figure);
      case BOTH_CURRENTS ->
          current(quantity, Conditions.DISCHARGE_RATE, Conditions.DISCHARGE_CURRENT, figure)
              .withMissingFrom(
                  current(quantity, Conditions.CHARGE_RATE, Conditions.CHARGE_CURRENT, figure));
      case TEMPERATURE, STORAGE_TEMPERATURE, DISCHARGE_TEMPERATURE -> temperature(quantity, figure);
      case STORAGE_TIME -> one(quantity, Conditions.DURATION, figure, "s");
      case TIME ->
          quantity.equals("maximumPulseDischargeCurrent") || quantity.equals("internalResistanceDC")
              ? one(quantity, Conditions.DURATION, figure, "s")
              : Conditions.NONE;
      case FREQUENCY -> one(quantity, Conditions.FREQUENCY, figure, "Hz");
      case RETENTION -> one(quantity, Conditions.RETENTION, figure, "%");
      case STATE_OF_CHARGE -> one(quantity, Conditions.STATE_OF_CHARGE, figure, "%");
      case CYCLES ->
          figure.value() != null && figure.value() >= FEWEST_CYCLES
              ? one(quantity, Conditions.CYCLES, figure, "1")
              : Conditions.NONE;
      case TAPER_CURRENT, OTHER -> Conditions.NONE;
    };
  }

  private Conditions current(String quantity, String rateName, String currentName, Figure figure) {
    return figure.unit().dimension() == Dimension.RATE
        ? one(quantity, rateName, figure, null)
        : one(quantity, currentName, figure, "A");
  }

  private Conditions temperature(String quantity, Figure figure) {
    if (figure.isRange()) {
      Figure celsius = figure.in("Cel");
      return terms.mayCarry(quantity, Conditions.TEMPERATURE_LOW)
          ? Conditions.NONE
              .with(Conditions.TEMPERATURE_LOW, celsius.low())
              .with(Conditions.TEMPERATURE_HIGH, celsius.high())
          : Conditions.NONE;
    }
    if (figure.bound() == Bound.AT_LEAST && terms.mayCarry(quantity, Conditions.TEMPERATURE_LOW)) {
      return one(quantity, Conditions.TEMPERATURE_LOW, figure, "Cel");
    }
    if (figure.bound() == Bound.AT_MOST && terms.mayCarry(quantity, Conditions.TEMPERATURE_HIGH)) {
      return one(quantity, Conditions.TEMPERATURE_HIGH, figure, "Cel");
    }
    return one(quantity, Conditions.TEMPERATURE, figure, "Cel");
  }

  /**
   * Twelve months are a year: the trade's month of 30 days would make them 360 days. Common
   * practice, no source.
   */
  private static double wholeYears(double seconds) {
    double years = seconds / (12 * MONTH);
    return years >= 1 && Math.abs(years - Math.rint(years)) < 1e-9
        ? Math.rint(years) * YEAR
        : seconds;
  }

  private Conditions one(String quantity, String name, Figure figure, String unit) {
    if (!terms.mayCarry(quantity, name) || figure.value() == null) {
      return Conditions.NONE;
    }
    double value = unit == null || unit.equals("1") ? figure.value() : figure.in(unit).value();
    return Conditions.NONE.with(name, name.equals(Conditions.DURATION) ? wholeYears(value) : value);
  }
}
