package commonsheet.chart.naming;

import commonsheet.chart.text.Measure;
import commonsheet.record.Conditions;

/**
 * What a curve's label says.
 *
 * @param conditions what sets the curve apart
 * @param measure what the curve shows, where the label names a quantity; otherwise null
 * @param plain whether nothing of the label is left unread
 * @param loneC the number before a bare C, which is a rate or a temperature by its company; null
 *     elsewhere
 */
public record LabelMeaning(Conditions conditions, Measure measure, boolean plain, Double loneC) {
  public boolean isEmpty() {
    return conditions.isEmpty() && measure == null;
  }

  /** The same, not clearly read. */
  public LabelMeaning unclear() {
    return new LabelMeaning(conditions, measure, false, loneC);
  }

  /** The same label with its bare C read as a temperature or a rate. */
  public LabelMeaning loneCAs(String condition) {
    return new LabelMeaning(Conditions.NONE.with(condition, loneC), measure, plain, loneC);
  }
}
