package commonsheet.review;

import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Original;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a person puts in place of what was read. Null leaves a member as it is.
 *
 * @param value in the unit of the quantity
 * @param bounds new bounds, or {@link #NO_BOUNDS}
 * @param statistic new one
 * @param noStatistic whether the sheet says none
 * @param conditions to set, by name; null as a value takes a condition away
 * @param label of a curve
 */
public record Correction(
    Double value,
    Bounds bounds,
    Statistic statistic,
    boolean noStatistic,
    Map<String, Double> conditions,
    String label) {
  /** A lower and an upper bound in the unit of the quantity; both null for none. */
  public record Bounds(Double low, Double high) {}

  /** Takes bounds away. */
  public static final Bounds NO_BOUNDS = new Bounds(null, null);

  public Correction {
    conditions = conditions == null ? Map.of() : new LinkedHashMap<>(conditions);
  }

  /** Whether it changes nothing. */
  public boolean isEmpty() {
    return value == null
        && bounds == null
        && statistic == null
        && !noStatistic
        && conditions.isEmpty()
        && label == null;
  }

  /** The statement as corrected, with what was first read beside it. */
  Statement of(Statement before) throws ReviewException {
    if (label != null) {
      throw new ReviewException("a statement has no label; only curves have");
    }
    Double newValue = value == null ? before.value() : value;
    boolean tolerance = value != null && bounds == null && before.value() != null;
    Bounds newBounds =
        bounds != null
            ? bounds
            : tolerance ? moved(before) : new Bounds(before.low(), before.high());
    if (newValue == null && newBounds.low() == null) {
      throw new ReviewException(before.id() + " would have neither a value nor a range");
    }
    Original original =
        before.original() != null
            ? before.original()
            : new Original(
                null,
                before.statistic(),
                before.value(),
                before.low(),
                before.high(),
                before.conditions());
    return new Statement(
        before.id(),
        before.quantity(),
        noStatistic ? null : statistic == null ? before.statistic() : statistic,
        newValue,
        newBounds.low(),
        newBounds.high(),
        before.unit(),
        applied(before.conditions()),
        before.evidence(),
        Standing.CORRECTED,
        List.of(),
        original);
  }

  /** A tolerance goes along with its value: 45 ± 1 g corrected to 48 g is 48 ± 1 g. */
  private Bounds moved(Statement before) {
    if (before.low() == null) {
      return NO_BOUNDS;
    }
    double shift = value - before.value();
    return new Bounds(rounded(before.low() + shift), rounded(before.high() + shift));
  }

  /** Without the digits that binary sums make up. */
  private static double rounded(double sum) {
    return Math.rint(sum * 1e9) / 1e9;
  }

  /** The curve as corrected, with what was first read beside it. */
  Curve of(Curve before) throws ReviewException {
    if (value != null || bounds != null || statistic != null || noStatistic) {
      throw new ReviewException(
          before.id() + " is a curve; of a curve the conditions and the label can be corrected");
    }
    return before.corrected(label == null ? before.label() : label, applied(before.conditions()));
  }

  private Conditions applied(Conditions before) {
    Conditions after = before;
    for (Map.Entry<String, Double> condition : conditions.entrySet()) {
      after =
          condition.getValue() == null
              ? after.without(condition.getKey())
              : after.with(condition.getKey(), condition.getValue());
    }
    return after;
  }
}
