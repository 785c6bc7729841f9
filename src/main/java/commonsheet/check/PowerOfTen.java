package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Two values of one quantity of the cell that are ten, a hundred or a thousand times each other: a
 * decimal sign lost or set wrong, a comma for a point, or a prefix such as m.
 */
final class PowerOfTen extends NamedRule {
  /** Quantities of which a cell has about one value, whatever the statistic. */
  private static final Set<String> ONE_OF_A_KIND =
      Set.of(
          "capacity",
          "energy",
          "nominalVoltage",
          "chargeVoltage",
          "dischargeCutoffVoltage",
          "mass",
          "diameter",
          "height",
          "width",
          "thickness",
          "length");

  PowerOfTen() {
    super("slip/power-of-ten", Severity.ERROR, COMMON_PRACTICE);
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    CellFacts facts = new CellFacts(record);
    return ONE_OF_A_KIND.stream()
        .sorted()
        .flatMap(quantity -> within(facts.ordinary(quantity)).stream());
  }

  private List<Finding> within(List<Statement> alike) {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < alike.size(); i++) {
      for (Statement other : alike.subList(i + 1, alike.size())) {
        Statement one = alike.get(i);
        int factor = Slips.factor(Span.of(one).middle() / Span.of(other).middle());
        if (factor > 0) {
          findings.add(
              finding(
                  List.of(one.id(), other.id()),
                  "The "
                      + Wording.name(one)
                      + " of "
                      + Wording.valueAndPage(one)
                      + " and the "
                      + Wording.name(other)
                      + " of "
                      + Wording.valueAndPage(other)
                      + " differ about "
                      + factor
                      + " times; look for a lost decimal sign, a comma read as a point, or a"
                      + " prefix such as m."));
        }
      }
    }
    return findings;
  }
}
