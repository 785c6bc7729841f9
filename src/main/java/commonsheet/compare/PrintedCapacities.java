package commonsheet.compare;

import static commonsheet.compare.StatedFigures.number;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The capacities or energies that a sheet prints by current, near the temperature asked for.
 *
 * @param samples by ascending current, one for each
 * @param least whether they are minima, which a cell gives at least
 */
record PrintedCapacities(List<Sample> samples, boolean least) {
  /** Without a temperature a printed value is taken to be of an ordinary test, in °C. */
  private static final double ROOM_LOW = 18;

  private static final double ROOM_HIGH = 28;
  private static final List<String> OTHER_CASES =
      List.of(Conditions.DURATION, Conditions.RETENTION, Conditions.CYCLES);

  /**
   * One printed value.
   *
   * @param current in A
   * @param cutoff down to which it counts, in V, or null where the sheet does not say
   * @param from ids of the statements it comes from
   * @param doubts why it is unsure
   */
  record Sample(
      double current, double value, Double cutoff, List<String> from, List<String> doubts) {}

  /** What a cell usually gives, and what it gives at least; the first covers more. */
  static List<PrintedCapacities> of(CellRecord record, String quantity, Condition condition) {
    return Stream.of(false, true).map(least -> of(record, quantity, condition, least)).toList();
  }

  private static PrintedCapacities of(
      CellRecord record, String quantity, Condition condition, boolean least) {
    Map<Double, Sample> byCurrent = new LinkedHashMap<>();
    StatedChoice.printed(record, quantity).stream()
        .filter(s -> (s.statistic() == Statistic.MINIMUM) == least)
        .filter(s -> s.statistic() != Statistic.MAXIMUM)
        .filter(s -> OTHER_CASES.stream().allMatch(name -> s.conditions().get(name) == null))
        .filter(s -> isAt(s, condition))
        .sorted(Comparator.comparingInt(s -> StatedChoice.rank(s.standing())))
        .map(s -> sample(s, record))
        .filter(Objects::nonNull)
        .forEach(
            sample -> {
              boolean known =
                  byCurrent.keySet().stream()
                      .anyMatch(i -> CurveChoice.sameCurrent(i, sample.current()));
              if (!known) {
                byCurrent.put(sample.current(), sample);
              }
            });
    return new PrintedCapacities(
        byCurrent.values().stream().sorted(Comparator.comparingDouble(Sample::current)).toList(),
        least);
  }

  private static boolean isAt(Statement statement, Condition condition) {
    Double at = statement.conditions().get(Conditions.TEMPERATURE);
    double asked = condition.temperature();
    return at == null
        ? asked >= ROOM_LOW && asked <= ROOM_HIGH
        : Math.abs(at - asked) <= condition.tolerance().temperature();
  }

  private static Sample sample(Statement statement, CellRecord record) {
    List<String> from = new ArrayList<>(List.of(statement.id()));
    List<String> doubts = new ArrayList<>();
    if (statement.standing() == Standing.UNSURE) {
      doubts.add("statement " + statement.id() + " is unsure");
    }
    Double current = statement.conditions().get(Conditions.DISCHARGE_CURRENT);
    Double rate = statement.conditions().get(Conditions.DISCHARGE_RATE);
    if (current == null && rate != null) {
      RateBasis basis = RateBasis.of(record).orElse(null);
      if (basis == null) {
        return null;
      }
      current = rate * basis.capacity();
      if (!from.contains(basis.statement())) {
        from.add(basis.statement());
      }
      basis.doubt().ifPresent(doubts::add);
    }
    if (current == null || !(current > 0)) {
      return null;
    }
    Double cutoff = statement.conditions().get(Conditions.CUTOFF_VOLTAGE);
    if (cutoff == null) {
      cutoff = onlyCutoff(record);
      doubts.add(
          "the sheet does not say to which cut-off "
              + statement.id()
              + " counts"
              + (cutoff == null ? "" : "; taken as its " + number(cutoff) + " V"));
    }
    return new Sample(current, statement.value(), cutoff, from, doubts);
  }

  /** The cut-off of a sheet that states one only. */
  private static Double onlyCutoff(CellRecord record) {
    List<Double> stated =
        StatedChoice.printed(record, "dischargeCutoffVoltage").stream()
            .map(Statement::value)
            .distinct()
            .toList();
    return stated.size() == 1 ? stated.get(0) : null;
  }

  /** Those that count to the cut-off asked for. */
  List<Sample> to(Condition condition) {
    return samples.stream()
        .filter(
            s ->
                s.cutoff() == null
                    || Math.abs(s.cutoff() - condition.cutoffVoltage())
                        <= condition.tolerance().voltage())
        .toList();
  }

  /** Those that count to that cut-off or to a lower one, and so give no less. */
  List<Sample> toOrBelow(Condition condition) {
    return samples.stream()
        .filter(s -> s.cutoff() != null)
        .filter(s -> s.cutoff() <= condition.cutoffVoltage() + condition.tolerance().voltage())
        .toList();
  }
}
