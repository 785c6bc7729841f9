package commonsheet.export.sizing;

import commonsheet.compare.Condition;
import commonsheet.compare.Figure;
import commonsheet.compare.Measure;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Method;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * A quantity of a flat row, as rows.yaml defines it.
 *
 * @param name start of its column names
 * @param title for people
 * @param quantity name of the quantity in records
 * @param unit UCUM code of the quantity's canonical unit
 * @param prefer the statistics that are taken, the best first
 * @param take which of several with the same statistic
 * @param measure the measure of comparisons whose statement is taken, so that rows and comparisons
 *     agree; null where comparisons have none
 */
record RowQuantity(
    String name,
    String title,
    String quantity,
    String unit,
    List<String> prefer,
    Take take,
    String measure) {
  private static final String UNSAID = "unsaid";

  /** Which of several statements is taken. */
  enum Take {
    LOWEST,
    HIGHEST,
    FIRST
  }

  RowQuantity {
    prefer = List.copyOf(prefer);
  }

  /**
   * What a record states of the quantity, the best first; without what was rejected or derived. A
   * sure one goes before an unsure; then the statistic decides; then one that holds at any
   * temperature goes before one for a range with room temperature in it, and that before another.
   */
  List<Statement> statements(CellRecord record) {
    return record.statements().stream()
        .filter(s -> s.quantity().equals(quantity) && prefer.contains(statistic(s)))
        .filter(s -> s.standing() != Standing.REJECTED)
        .filter(s -> s.evidence() == null || s.evidence().method() != Method.DERIVED)
        .sorted(
            Comparator.comparing((Statement s) -> s.standing() == Standing.UNSURE)
                .thenComparingInt(s -> prefer.indexOf(statistic(s)))
                .thenComparingInt(RowQuantity::limits)
                .thenComparing(order()))
        .toList();
  }

  /** The figure that comparisons have for this quantity, or null. */
  Figure compared(Map<Measure, Figure> figures) {
    return figures.entrySet().stream()
        .filter(entry -> entry.getKey().label().equals(measure))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(null);
  }

  private Comparator<Statement> order() {
    Comparator<Statement> ascending = Comparator.comparingDouble(RowQuantity::size);
    return switch (take) {
      case LOWEST -> ascending;
      case HIGHEST -> ascending.reversed();
      case FIRST -> Comparator.comparingInt(s -> 0);
    };
  }

  private static double size(Statement statement) {
    if (statement.value() != null) {
      return statement.value();
    }
    return statement.high() == null ? statement.low() : statement.high();
  }

  /** 0 for a statement without a temperature, 1 for one that covers the usual one, else 2. */
  private static int limits(Statement statement) {
    Conditions conditions = statement.conditions();
    Double at = conditions.get(Conditions.TEMPERATURE);
    Double low = conditions.get(Conditions.TEMPERATURE_LOW);
    Double high = conditions.get(Conditions.TEMPERATURE_HIGH);
    if (low == null && high == null) {
      double far = at == null ? 0 : Math.abs(at - Condition.USUAL_TEMPERATURE);
      return far <= Condition.Tolerance.STANDARD.temperature() ? 0 : 2;
    }
    boolean covers =
        (low == null || low <= Condition.USUAL_TEMPERATURE)
            && (high == null || high >= Condition.USUAL_TEMPERATURE);
    return covers ? 1 : 2;
  }

  private static String statistic(Statement statement) {
    return statement.statistic() == null ? UNSAID : statement.statistic().label();
  }
}
