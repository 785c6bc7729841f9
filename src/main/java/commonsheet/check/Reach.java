package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * Something computed from what the sheet says of the whole cell that lies where it cannot: its
 * energy per mass or volume, or its density.
 */
final class Reach extends NamedRule {
  /** Outside for sure: even the nearest of what the sheet leaves open. */
  private final BiFunction<CellRecord, CellFacts, Optional<Known>> computed;

  private final BiFunction<CellRecord, CellFacts, Optional<Interval>> possible;
  private final String name;
  private final String unit;
  private final String advice;

  Reach(
      String id,
      Severity severity,
      String source,
      String name,
      String unit,
      BiFunction<CellRecord, CellFacts, Optional<Known>> computed,
      BiFunction<CellRecord, CellFacts, Optional<Interval>> possible,
      String advice) {
    super(id, severity, source);
    this.name = name;
    this.unit = unit;
    this.computed = computed;
    this.possible = possible;
    this.advice = advice;
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    CellFacts facts = new CellFacts(record);
    Optional<Known> known = computed.apply(record, facts);
    Optional<Interval> limits = possible.apply(record, facts);
    return known.isEmpty() || limits.isEmpty() || limits.get().meets(known.get().range())
        ? Stream.empty()
        : Stream.of(
            finding(
                known.get().from(),
                "The figures of the sheet make "
                    + name
                    + " of "
                    + Wording.withUnit(known.get().range().text(3), unit)
                    + ", where "
                    + limits.get().text(4)
                    + " can be; "
                    + advice
                    + "."));
  }
}
