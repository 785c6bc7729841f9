package commonsheet.layout;

import commonsheet.record.Conditions;
import commonsheet.sheet.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a layout rule changes in the entries of a sheet and in the candidates read from them. */
final class Refinement {
  private final LayoutRule rule;

  Refinement(LayoutRule rule) {
    this.rule = rule;
  }

  /** Whether the rule says that nothing here is about the cell. */
  boolean ignores(Entry entry) {
    return rule.ignores(entry.section())
        || entry.labels().stream().anyMatch(label -> rule.ignores(label.text()));
  }

  /** What becomes of an entry that is ignored. */
  Outcome ignored(Entry entry) {
    return new Outcome(
        entry.page(), entry.label(), values(entry), "ignored by layout " + rule.name(), false);
  }

  /** The entry with the unit that its label stands for, and with the rule named as its origin. */
  Entry prepared(Entry entry) {
    Optional<LabelRule> label = label(entry);
    if (label.isEmpty()) {
      return entry;
    }
    String unit = label.get().unit();
    return new Entry(
        entry.page(),
        labels(entry),
        entry.values().stream().map(value -> withUnit(value, unit)).toList(),
        entry.conditions(),
        entry.context(),
        entry.section(),
        entry.method(),
        "layout/" + rule.name());
  }

  /**
   * The candidates with the statistic and the conditions that label and column stand for; printed
   * ones prevail.
   */
  List<Candidate> completed(Entry entry, List<Candidate> found) {
    Optional<LabelRule> label = label(entry);
    return found.stream().map(candidate -> completed(entry, candidate, label)).toList();
  }

  private Candidate completed(Entry entry, Candidate candidate, Optional<LabelRule> label) {
    Conditions byColumn = byColumn(entry, candidate);
    Conditions known = candidate.conditions().withMissingFrom(byColumn);
    if (label.isEmpty() || !label.get().quantity().equals(candidate.quantity())) {
      return candidate.with(known);
    }
    Candidate completed = candidate.with(known.withMissingFrom(label.get().conditions()));
    return completed.statistic() == null
        ? completed.called(label.get().statistic())
        : completed;
  }

  /** By all labels as shown by {@code explain}, else by the innermost that the rule knows. */
  private Optional<LabelRule> label(Entry entry) {
    Optional<LabelRule> whole = rule.label(entry.label());
    for (int i = entry.labels().size() - 1; i >= 0 && whole.isEmpty(); i--) {
      whole = rule.label(entry.labels().get(i).text());
    }
    return whole;
  }

  /** Several labels that the rule knows as one become one. */
  private List<Passage> labels(Entry entry) {
    if (entry.labels().size() < 2 || rule.label(entry.label()).isEmpty()) {
      return entry.labels();
    }
    List<Passage> labels = new ArrayList<>(entry.labels());
    Passage joined = labels.remove(0);
    for (Passage label : labels) {
      joined = joined.then(label);
    }
    return List.of(joined);
  }

  private static Entry.Value withUnit(Entry.Value value, String unit) {
    return unit == null || !value.unit().isBlank()
        ? value
        : new Entry.Value(value.role(), value.heading(), value.text(), unit, value.conditions());
  }

  private Conditions byColumn(Entry entry, Candidate candidate) {
    for (Entry.Value value : entry.values()) {
      Optional<ColumnRule> column = rule.column(value.heading().text());
      if (column.isPresent() && stands(candidate, value.text())) {
        return column.get().conditions();
      }
    }
    return Conditions.NONE;
  }

  private static boolean stands(Candidate candidate, Passage text) {
    Box inner = candidate.box();
    Box outer = text.box();
    return inner != null
        && outer != null
        && inner.x() >= outer.x()
        && inner.right() <= outer.right()
        && inner.y() >= outer.y()
        && inner.bottom() <= outer.bottom();
  }

  private static String values(Entry entry) {
    return String.join(" | ", entry.values().stream().map(v -> v.text().shown()).toList());
  }
}
