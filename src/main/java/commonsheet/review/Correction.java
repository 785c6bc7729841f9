package commonsheet.review;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
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
 * @param quantity another one; then value or bounds have to be given too, in its unit
 * @param value in the unit of the quantity
 * @param noValue whether the sheet gives bounds and no value
 * @param bounds new bounds, or {@link #NO_BOUNDS}
 * @param statistic new one
 * @param noStatistic whether the sheet says none
 * @param conditions to set, by name; null as a value takes a condition away
 * @param label of a curve
 * @param evidence of another place on the sheet
 */
public record Correction(
    String quantity,
    Double value,
    boolean noValue,
    Bounds bounds,
    Statistic statistic,
    boolean noStatistic,
    Map<String, Double> conditions,
    String label,
    Evidence evidence) {
  /** A lower and an upper bound in the unit of the quantity; both null for none. */
  public record Bounds(Double low, Double high) {}

  /** Takes bounds away. */
  public static final Bounds NO_BOUNDS = new Bounds(null, null);

  public Correction {
    conditions = conditions == null ? Map.of() : new LinkedHashMap<>(conditions);
  }

  /** A correction that leaves quantity and place as they are. */
  public Correction(
      Double value,
      Bounds bounds,
      Statistic statistic,
      boolean noStatistic,
      Map<String, Double> conditions,
      String label) {
    this(null, value, false, bounds, statistic, noStatistic, conditions, label, null);
  }

  /** Whether it changes nothing. */
  public boolean isEmpty() {
    return !isOfValue() && conditions.isEmpty() && label == null;
  }

  private boolean isOfValue() {
    return quantity != null
        || value != null
        || noValue
        || bounds != null
        || statistic != null
        || noStatistic
        || evidence != null;
  }

  /** The statement as corrected, with what was first read beside it. */
  Statement of(Statement before) throws ReviewException {
    if (label != null) {
      throw new ReviewException("a statement has no label; only curves have");
    }
    boolean renamed = quantity != null && !quantity.equals(before.quantity());
    if (renamed && value == null && bounds == null) {
      throw new ReviewException("say the value too, since it now is one of another quantity");
    }
    Double newValue = noValue ? null : value == null ? before.value() : value;
    Bounds newBounds = bounds != null ? bounds : moved(before, renamed);
    if (newValue == null && newBounds.low() == null) {
      throw new ReviewException(before.id() + " would have neither a value nor a range");
    }
    String newQuantity = renamed ? quantity : before.quantity();
    return new Statement(
        before.id(),
        newQuantity,
        noStatistic ? null : statistic == null ? before.statistic() : statistic,
        newValue,
        newBounds.low(),
        newBounds.high(),
        QuantityCatalogue.standard().get(newQuantity).unit(),
        applied(before.conditions()),
        evidence == null ? before.evidence() : evidence,
        Standing.CORRECTED,
        List.of(),
        original(before, newQuantity));
  }

  /** What was first read, whatever has been corrected since. */
  private Original original(Statement before, String newQuantity) {
    Original first = before.original() == null ? Original.of(before) : before.original();
    String read = first.quantity() == null ? before.quantity() : first.quantity();
    return new Original(
        read.equals(newQuantity) ? null : read,
        first.statistic(),
        first.value(),
        first.low(),
        first.high(),
        first.conditions(),
        first.evidence() == null && evidence != null ? before.evidence() : first.evidence());
  }

  /** A tolerance goes along with its value: 45 ± 1 g corrected to 48 g is 48 ± 1 g. */
  private Bounds moved(Statement before, boolean renamed) {
    if (renamed || before.low() == null) {
      return NO_BOUNDS;
    }
    if (value == null || before.value() == null) {
      return new Bounds(before.low(), before.high());
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
    if (isOfValue()) {
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
