package commonsheet.compare;

import commonsheet.quantity.PlainNumber;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** What a sheet prints about a cell, as figures: one statement chosen of each quantity. */
final class StatedFigures {
  private static final List<Statistic> NOMINAL_FIRST =
      Arrays.asList(
          Statistic.NOMINAL,
          Statistic.RATED,
          Statistic.TYPICAL,
          Statistic.STANDARD,
          null,
          Statistic.MINIMUM,
          Statistic.MAXIMUM);
  private static final List<Statistic> TYPICAL_FIRST =
      Arrays.asList(
          Statistic.TYPICAL,
          Statistic.NOMINAL,
          Statistic.STANDARD,
          Statistic.RATED,
          null,
          Statistic.MAXIMUM,
          Statistic.MINIMUM);

  private StatedFigures() {}

  static Map<Measure, Figure> of(CellRecord record, Condition condition) {
    return Map.of(
        Measure.CURRENT_RATING,
        Ratings.of(record, "maximumContinuousDischargeCurrent", condition),
        Measure.PULSE_RATING,
        Ratings.of(record, "maximumPulseDischargeCurrent", condition),
        Measure.NOMINAL_CAPACITY,
        chosen(record, "capacity", "no capacity", NOMINAL_FIRST),
        Measure.NOMINAL_VOLTAGE,
        chosen(record, "nominalVoltage", "no nominal voltage", NOMINAL_FIRST),
        Measure.MASS,
        chosen(record, "mass", "no mass", TYPICAL_FIRST));
  }

  private static Figure chosen(
      CellRecord record, String quantity, String nothing, List<Statistic> order) {
    List<Statement> stated = StatedChoice.printed(record, quantity);
    if (stated.isEmpty()) {
      return Figure.absent("the sheet states " + nothing);
    }
    Statement best =
        stated.stream()
            .min(
                Comparator.<Statement>comparingInt(s -> s.standing() == Standing.UNSURE ? 1 : 0)
                    .thenComparingInt(s -> order.indexOf(s.statistic()))
                    .thenComparingInt(s -> StatedChoice.rank(s.standing()))
                    .thenComparingDouble(StatedFigures::rate))
            .orElseThrow();
    return figure(best);
  }

  /** Of several nominal capacities the one at the lowest rate is what cells are named by. */
  private static double rate(Statement statement) {
    Double rate = statement.conditions().get(Conditions.DISCHARGE_RATE);
    return rate == null ? 0 : rate;
  }

  /** A statement as a figure, with its own bounds where it has some. */
  static Figure figure(Statement statement) {
    List<String> notes = new ArrayList<>();
    boolean maximum = statement.statistic() == Statistic.MAXIMUM;
    boolean minimum = statement.statistic() == Statistic.MINIMUM;
    if (statement.statistic() != null) {
      notes.add("the sheet's " + statement.statistic().label() + " value");
    }
    boolean unsure = statement.standing() == Standing.UNSURE;
    if (unsure) {
      notes.add(
          "statement "
              + statement.id()
              + " is unsure"
              + (statement.doubts().isEmpty() ? "" : ": " + statement.doubts().get(0)));
    }
    Double value = statement.value();
    return new Figure(
        value,
        minimum && statement.low() == null ? value : statement.low(),
        maximum && statement.high() == null ? value : statement.high(),
        Origin.STATED,
        List.of(statement.id()),
        notes,
        unsure);
  }

  static String number(double value) {
    return PlainNumber.of(value, 4);
  }
}
