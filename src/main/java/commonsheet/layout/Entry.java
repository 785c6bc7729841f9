package commonsheet.layout;

import commonsheet.record.Method;
import java.util.List;

/**
 * One thing a sheet says: a table row, a clause, a pair of label and value.
 *
 * @param labels from the outermost (a merged cell, a clause's heading) to the innermost
 * @param values what is said, one per value column
 * @param conditions what stands beside it: condition and remark columns, footnotes
 * @param context the paragraph that introduces it, whose conditions hold where the entry has none
 *     of its own
 * @param section the heading it stands under, empty where there is none
 * @param layoutRule what brought it about, for the evidence: {@code table}, {@code clause}, …
 */
record Entry(
    int page,
    List<Passage> labels,
    List<Value> values,
    Passage conditions,
    Passage context,
    String section,
    Method method,
    String layoutRule) {

  /**
   * One value of an entry.
   *
   * @param role the column it stands in
   * @param heading the words at the head of the column where they are a condition or a model;
   *     otherwise empty
   * @param unit the unit given for the row or column, empty where the value has its own
   * @param conditions what stands beside this very value
   */
  record Value(Role role, Passage heading, Passage text, String unit, Passage conditions) {}

  Entry {
    labels = List.copyOf(labels);
    values = List.copyOf(values);
  }

  /** This entry with other conditions beside it. */
  Entry with(Passage other) {
    return new Entry(page, labels, values, other, context, section, method, layoutRule);
  }

  String label() {
    StringBuilder all = new StringBuilder();
    for (Passage label : labels) {
      if (!label.isBlank()) {
        all.append(all.isEmpty() ? "" : " / ").append(label.shown());
      }
    }
    return all.toString();
  }
}
