package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** A printed figure that does not follow from the printed figures it follows from. */
final class ComputedAgainstPrinted extends NamedRule {
  private final String quantity;
  private final double tolerance;
  private final String way;
  private final Function<CellFacts, Optional<Known>> computed;

  /**
   * A rule.
   *
   * @param tolerance how far the two may be apart, as a share
   * @param way how it is computed, in words
   */
  ComputedAgainstPrinted(
      String id,
      String quantity,
      double tolerance,
      String way,
      String source,
      Function<CellFacts, Optional<Known>> computed) {
    super(id, Severity.WARNING, source);
    this.quantity = quantity;
    this.tolerance = tolerance;
    this.way = way;
    this.computed = computed;
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    CellFacts facts = new CellFacts(record);
    Optional<Known> made = computed.apply(facts);
    return made.stream()
        .flatMap(
            known ->
                facts.ordinary(quantity).stream()
                    .filter(printed -> !agrees(known, printed))
                    .map(printed -> finding(known, printed)));
  }

  private boolean agrees(Known known, Statement printed) {
    Span span = Span.of(printed);
    return known.range().widened(tolerance).meets(new Interval(span.low(), span.high()));
  }

  private Finding finding(Known known, Statement printed) {
    List<String> about = new ArrayList<>(List.of(printed.id()));
    about.addAll(known.from());
    double middle = (known.range().low() + known.range().high()) / 2;
    return finding(
        about,
        "The "
            + Wording.name(printed)
            + " of "
            + Wording.valueAndPage(printed)
            + " does not follow from the other figures: "
            + way
            + " is "
            + Wording.withUnit(known.range().text(4), printed.unit())
            + "; "
            + Slips.hint(Span.of(printed).middle() / middle, "compare them with the sheet")
            + ".");
  }
}
