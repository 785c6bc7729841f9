package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import commonsheet.record.Statement;
import java.util.List;
import java.util.stream.Stream;

/** A resistance to direct current below that to alternating current, of one statistic. */
final class DcBelowAc extends NamedRule {
  /** How the two are measured differs; a share. */
  private static final double MARGIN = 0.1;

  DcBelowAc() {
    super(
        "resistance/dc-below-ac",
        Severity.WARNING,
        "resistance grows with the time of the current (1.3 times from 0.5 to 10 s, doi"
            + " 10.5281/zenodo.2580327); margin by judgement");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    CellFacts facts = new CellFacts(record);
    List<Statement> ac = facts.ordinary("internalResistanceAC");
    return facts.ordinary("internalResistanceDC").stream()
        .flatMap(
            dc ->
                ac.stream()
                    .filter(a -> a.statistic() == dc.statistic())
                    .filter(a -> a.conditions().agreeWith(dc.conditions()))
                    .filter(a -> Span.of(dc).high() < Span.of(a).low() * (1 - MARGIN))
                    .map(a -> finding(dc, a)));
  }

  private Finding finding(Statement dc, Statement ac) {
    return finding(
        List.of(dc.id(), ac.id()),
        "The "
            + Wording.name(dc)
            + " of "
            + Wording.valueAndPage(dc)
            + " is below the "
            + Wording.name(ac)
            + " of "
            + Wording.valueAndPage(ac)
            + ", which a cell's is not; look whether the two were exchanged.");
  }
}
