package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Finding;
import commonsheet.record.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the designation says of size, form and chemistry against what the sheet says of them. */
final class DesignationAgainstCell extends NamedRule {
  /** The standard rounds up; a maker may count the sleeve or not. */
  private static final double MARGIN = 1.0;

  DesignationAgainstCell() {
    super("size/designation", Severity.WARNING, "IEC 61960-3, designation of cells");
  }

  @Override
  public Stream<Finding> examine(CellRecord record) {
    Optional<Designation> found = Designation.of(record.cell().designation());
    if (found.isEmpty()) {
      return Stream.empty();
    }
    Designation designation = found.get();
    List<Finding> findings = new ArrayList<>();
    size(record, designation.round() ? "diameter" : "thickness", designation.first(), findings);
    size(record, designation.round() ? "height" : "length", designation.height(), findings);
    if (designation.width() != null) {
      size(record, "width", designation.width(), findings);
    }
    String form = record.cell().form();
    if (form != null && form.equals("cylindrical") != designation.round()) {
      findings.add(finding(List.of(), said(record) + "is of a cell that is not " + form + "."));
    }
    Optional<Chemistry> chemistry = Chemistry.of(record);
    if (chemistry.isPresent() && !designation.letterFits(chemistry.get())) {
      findings.add(
          finding(
              List.of(),
              said(record)
                  + "does not name "
                  + chemistry.get().name()
                  + ", which the sheet does; look at both."));
    }
    return findings.stream();
  }

  private static String said(CellRecord record) {
    return "The designation " + record.cell().designation() + " ";
  }

  private void size(CellRecord record, String quantity, double most, List<Finding> findings) {
    new CellFacts(record)
        .known(quantity)
        .filter(
            known ->
                known.range().high() > most + 0.01 || known.range().high() <= most - 1 - MARGIN)
        .ifPresent(
            known ->
                findings.add(
                    finding(
                        known.from(),
                        said(record)
                            + "says a greatest "
                            + quantity
                            + " of at most "
                            + Wording.withUnit(Wording.number(most), "mm")
                            + ", rounded up; the sheet's is "
                            + Wording.withUnit(Wording.number(known.range().high()), "mm")
                            + "; look at both.")));
  }
}
