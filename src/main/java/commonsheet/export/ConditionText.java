package commonsheet.export;

import commonsheet.record.Conditions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Conditions in a few words for people. */
public final class ConditionText {
  private static final double MINUTE = 60;
  private static final double HOUR = 3600;
  private static final double DAY = 86400;

  private ConditionText() {}

  /** Such as {@code 0.2 C discharge, to 2.5 V, at 23 °C}. */
  public static String of(Conditions conditions) {
    List<String> words = new ArrayList<>();
    Double low = conditions.get(Conditions.TEMPERATURE_LOW);
    Double high = conditions.get(Conditions.TEMPERATURE_HIGH);
    for (Map.Entry<String, Double> condition : conditions.values().entrySet()) {
      switch (condition.getKey()) {
        case Conditions.TEMPERATURE_LOW -> words.add(StatementText.range(low, high) + " °C");
        case Conditions.TEMPERATURE_HIGH -> {
          if (low == null) {
            words.add(StatementText.range(null, high) + " °C");
          }
        }
        default -> words.add(words(condition.getKey(), condition.getValue()));
      }
    }
    return String.join(", ", words);
  }

  private static String words(String name, double value) {
    String number = Printed.shown(value);
    return switch (name) {
      case Conditions.DISCHARGE_CURRENT -> number + " A discharge";
      case Conditions.DISCHARGE_RATE -> number + " C discharge";
      case Conditions.CHARGE_CURRENT -> number + " A charge";
      case Conditions.CHARGE_RATE -> number + " C charge";
      case Conditions.CUTOFF_VOLTAGE -> "to " + number + " V";
      case Conditions.CHARGE_VOLTAGE -> "charged to " + number + " V";
      case Conditions.TEMPERATURE -> "at " + number + " °C";
      case Conditions.DURATION -> "for " + duration(value);
      case Conditions.FREQUENCY -> frequency(value);
      case Conditions.RETENTION -> number + " % left";
      case Conditions.CYCLES -> "after " + number + " cycles";
      case Conditions.STATE_OF_CHARGE -> "at " + number + " % charge";
      default -> name + ' ' + number;
    };
  }

  /** In the largest unit that leaves a whole number; pulses up to two minutes stay in seconds. */
  private static String duration(double seconds) {
    if (seconds >= DAY && seconds % DAY == 0) {
      return Printed.shown(seconds / DAY) + " d";
    }
    if (seconds >= HOUR && seconds % HOUR == 0) {
      return Printed.shown(seconds / HOUR) + " h";
    }
    if (seconds > 2 * MINUTE && seconds % MINUTE == 0) {
      return Printed.shown(seconds / MINUTE) + " min";
    }
    return Printed.shown(seconds) + " s";
  }

  private static String frequency(double hertz) {
    return hertz >= 1000 ? Printed.shown(hertz / 1000) + " kHz" : Printed.shown(hertz) + " Hz";
  }
}
