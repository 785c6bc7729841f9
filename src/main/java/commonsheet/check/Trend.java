package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Values of one quantity and statistic that differ by one condition only and have to go one way
 * with it: a capacity falls with the rate and the cold, what is left falls with the time of
 * storage.
 */
final class Trend extends NamedRule {
  /** Sheets round to whole per cents and tens of mAh; a share. */
  private static final double ROUNDING = 0.01;

  private static final Set<String> LOADS =
      Set.of(Conditions.DISCHARGE_CURRENT, Conditions.DISCHARGE_RATE);

  private final Set<String> quantities;
  private final String condition;
  private final boolean rising;
  private final double upTo;
  private final String because;

  private Trend(
      String id,
      Set<String> quantities,
      String condition,
      boolean rising,
      double upTo,
      String because) {
    super(id, Severity.WARNING, COMMON_PRACTICE);
    this.quantities = quantities;
    this.condition = condition;
    this.rising = rising;
    this.upTo = upTo;
    this.because = because;
  }

  private static final Set<String> GIVEN = Set.of("capacity", "energy", "capacityRetention");

  /** Capacity falls with the rate. */
  static Trend byRate() {
    return new Trend(
        "trend/rate",
        GIVEN,
        Conditions.DISCHARGE_RATE,
        false,
        Double.POSITIVE_INFINITY,
        "at the higher load a cell gives less");
  }

  /** And with the current. */
  static Trend byCurrent() {
    return new Trend(
        "trend/current",
        GIVEN,
        Conditions.DISCHARGE_CURRENT,
        false,
        Double.POSITIVE_INFINITY,
        "at the higher load a cell gives less");
  }

  /** Capacity rises with the temperature, up to room temperature; above, cells differ. */
  static Trend byTemperature() {
    return new Trend(
        "trend/temperature",
        GIVEN,
        Conditions.TEMPERATURE,
        true,
        25,
        "in the cold a cell gives less");
  }

  /** What is left after storage falls with its time. */
  static Trend byStorage() {
    return new Trend(
        "trend/storage",
        Set.of("capacityRetention", "capacityRecovery"),
        Conditions.DURATION,
        false,
        Double.POSITIVE_INFINITY,
        "the longer a cell is stored the less is left");
  }

  /** What is left after cycling falls with the cycles. */
  static Trend byCycles() {
    return new Trend(
        "trend/cycles",
        GIVEN,
        Conditions.CYCLES,
        false,
        Double.POSITIVE_INFINITY,
        "the more cycles the less is left");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Statement> concerned =
        Readings.of(record)
            .filter(s -> quantities.contains(s.quantity()) && s.value() != null)
            .filter(s -> at(s) != null && at(s) <= upTo)
            .toList();
    return concerned.stream()
        .flatMap(
            one ->
                concerned.stream()
                    .filter(other -> at(one) < at(other) && areAlike(one, other))
                    .filter(other -> isWrong(one, other))
                    .map(other -> finding(one, other)));
  }

  private Double at(Statement statement) {
    return statement.conditions().get(condition);
  }

  private boolean areAlike(Statement one, Statement other) {
    return one.quantity().equals(other.quantity())
        && one.statistic() == other.statistic()
        && rest(one).equals(rest(other));
  }

  /** The other conditions; a load told in two ways is one. */
  private Conditions rest(Statement statement) {
    Conditions rest = statement.conditions().without(condition);
    for (String load : LOADS) {
      rest = LOADS.contains(condition) ? rest.without(load) : rest;
    }
    return rest;
  }

  /** Whether the values of two, the first at the lower condition, go the other way. */
  private boolean isWrong(Statement one, Statement other) {
    double low = rising ? one.value() : other.value();
    double high = rising ? other.value() : one.value();
    return low > high * (1 + ROUNDING);
  }

  private Finding finding(Statement one, Statement other) {
    return finding(
        List.of(one.id(), other.id()),
        "The "
            + Wording.name(one)
            + " is "
            + Wording.valueAndPage(one)
            + " at "
            + told(one)
            + " and "
            + Wording.valueAndPage(other)
            + " at "
            + told(other)
            + ", though "
            + because
            + "; look which line each stands in.");
  }

  private String told(Statement statement) {
    double value = at(statement);
    return switch (condition) {
      case Conditions.DISCHARGE_RATE -> Wording.number(value) + " C";
      case Conditions.DISCHARGE_CURRENT -> Wording.number(value) + " A";
      case Conditions.TEMPERATURE -> Wording.number(value) + " °C";
      case Conditions.DURATION -> Wording.number(Math.rint(value / 8640) / 10) + " days";
      default -> Wording.number(value) + " cycles";
    };
  }
}
