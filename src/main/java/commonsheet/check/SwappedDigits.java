package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Two values of one quantity and statistic that differ by two neighbouring digits exchanged. */
final class SwappedDigits extends NamedRule {
  SwappedDigits() {
    super("slip/swapped-digits", Severity.WARNING, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    List<Statement> all = Readings.of(record).filter(s -> s.value() != null).toList();
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (Statement other : all.subList(i + 1, all.size())) {
        Statement one = all.get(i);
        if (one.quantity().equals(other.quantity())
            && one.statistic() == other.statistic()
            && ConditionScope.DISCHARGE.sameCase(one.conditions(), other.conditions())
            && Slips.areSwapped(one.value(), other.value())) {
          findings.add(
              finding(
                  List.of(one.id(), other.id()),
                  "The "
                      + Wording.name(one)
                      + " stands as "
                      + Wording.valuesAndPages(List.of(one, other))
                      + ", the same but for two digits that are exchanged; look which is right."));
        }
      }
    }
    return findings.stream();
  }
}
