package commonsheet.export;

import commonsheet.record.Statement;
import commonsheet.record.Statistic;

/**
 * A quantity that is compared, as comparison.yaml defines it.
 *
 * @param id start of its column names in CSV, such as {@code capacity_minimum}
 * @param title for people, without the unit
 * @param quantity name of the quantity in records
 * @param unit UCUM code of the quantity's canonical unit
 * @param only takes statements of this statistic only, {@code unsaid} those without any; null: all
 * @param implied a statistic that the title says already, or null
 * @param range whether the quantity is a range by nature
 */
public record Column(
    String id,
    String title,
    String quantity,
    String unit,
    String only,
    Statistic implied,
    boolean range) {
  private static final String UNSAID = "unsaid";

  /** Whether the statement belongs in this column. */
  boolean takes(Statement statement) {
    if (!quantity.equals(statement.quantity())) {
      return false;
    }
    Statistic statistic = statement.statistic();
    return only == null || only.equals(statistic == null ? UNSAID : statistic.label());
  }

  /** The statistic of a statement in this column where the title does not say it, or null. */
  Statistic unimplied(Statement statement) {
    return only != null || statement.statistic() == implied ? null : statement.statistic();
  }
}
