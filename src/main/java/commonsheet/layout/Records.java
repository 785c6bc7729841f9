package commonsheet.layout;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Evidence;
import commonsheet.record.Finding;
import commonsheet.record.Method;
import commonsheet.record.RecordIds;
import commonsheet.record.Review;
import commonsheet.record.Severity;
import commonsheet.record.Source;
import commonsheet.record.Statement;
import commonsheet.record.WordSource;
import commonsheet.sheet.Box;
import commonsheet.sheet.Page;
import commonsheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Makes the records of a sheet: one, or one per model where the sheet describes several in columns.
 */
final class Records {
  /**
   * A sheet that says less than this about capacity, voltage and current is no cell's datasheet.
   */
  private static final int FEWEST_STATEMENTS = 3;

  private static final String PRACTICE = "common practice, no source";

  private final Sheet sheet;
  private final Source source;
  private final QuantityCatalogue quantities;
  private final List<String> sizes;
  private final List<Identity.Found> modelNames;

  Records(
      Sheet sheet,
      Source source,
      QuantityCatalogue quantities,
      List<String> sizes,
      List<Identity.Found> modelNames) {
    this.sheet = sheet;
    this.source = source;
    this.quantities = quantities;
    this.sizes = sizes;
    this.modelNames = modelNames;
  }

  /** The records of a sheet about one cell, or of its several models. */
  List<CellRecord> of(Cell cell, List<Candidate> candidates, List<Entry> entries) {
    List<CellRecord> records = new ArrayList<>();
    List<String> models =
        candidates.stream().map(Candidate::model).filter(Objects::nonNull).distinct().toList();
    if (models.isEmpty()) {
      records.add(record(cell, candidates, modelNames.size() > 1));
    }
    for (String model : models) {
      List<Candidate> own =
          candidates.stream().filter(c -> c.model() == null || c.model().equals(model)).toList();
      records.add(record(named(cell, model, entries), own, false));
    }
    records.removeIf(r -> !isCell(r));
    return records;
  }

  private CellRecord record(Cell cell, List<Candidate> candidates, boolean twoNames) {
    List<Statement> statements = new Reconciler(quantities).decide(candidates);
    String id = RecordIds.of(cell.maker(), cell.model(), sheet.file());
    return new CellRecord(
        CellRecord.SCHEMA,
        id,
        cell,
        source,
        statements,
        List.of(),
        findings(twoNames),
        Review.DRAFT);
  }

  private static boolean isCell(CellRecord record) {
    long core =
        record.statements().stream()
            .map(Statement::quantity)
            .filter(q -> q.equals("capacity") || q.endsWith("oltage") || q.endsWith("Current"))
            .distinct()
            .count();
    return core >= FEWEST_STATEMENTS;
  }

  /** What holds for one model of several: its name, and the size its column or row gives. */
  private Cell named(Cell cell, String model, List<Entry> entries) {
    Map<String, Evidence> evidence = new HashMap<>(cell.evidence());
    evidence.remove("model");
    evidence.remove("sizeCode");
    String size = null;
    for (Entry entry : entries) {
      for (Entry.Value value : entry.values()) {
        if (value.role() == Role.MODEL && value.heading().shown().equals(model)) {
          evidence.putIfAbsent("model", evidence("model", value.heading()));
          if (size == null && sizes.contains(value.text().shown())) {
            size = value.text().shown();
            evidence.put("sizeCode", evidence("sizeCode", value.text()));
          }
        }
      }
    }
    return new Cell(
        cell.maker(), model, cell.designation(), cell.chemistry(), cell.form(), size, evidence);
  }

  private static Evidence evidence(String member, Passage passage) {
    Box box = passage.box();
    List<Double> place =
        box == null ? List.of() : List.of(box.x(), box.y(), box.width(), box.height());
    return new Evidence(
        passage.page(),
        place,
        passage.shown(),
        Method.TABLE_CELL,
        "identity/" + member,
        WordSource.TEXT,
        null,
        null,
        null);
  }

  private List<Finding> findings(boolean twoNames) {
    List<Finding> findings = new ArrayList<>();
    if (twoNames) {
      findings.add(finding("sheet/several-model-names", Severity.WARNING, severalNames()));
    }
    for (Page page : sheet.pages()) {
      switch (page.kind()) {
        case PICTURE ->
            findings.add(
                finding(
                    "sheet/picture-page",
                    Severity.WARNING,
                    "page " + page.number() + " is a picture: no words to read"));
        case PARTLY_PICTURE ->
            findings.add(
                finding(
                    "sheet/picture-on-page",
                    Severity.NOTE,
                    "page "
                        + page.number()
                        + " holds a picture; its words were recognised, drawn figures may be missing"));
        default -> {}
      }
    }
    return findings;
  }

  private String severalNames() {
    List<String> places = modelNames.stream().map(n -> n.text() + " on page " + n.page()).toList();
    return "the sheet names its model differently: "
        + String.join(", ", places)
        + "; find out which cell its figures are for";
  }

  private static Finding finding(String rule, Severity severity, String message) {
    return new Finding(rule, severity, List.of(), message, PRACTICE);
  }
}
