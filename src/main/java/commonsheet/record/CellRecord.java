package commonsheet.record;

import java.util.List;

/** One cell as one datasheet describes it: the content of one record file. */
public record CellRecord(
    String schema,
    String id,
    Cell cell,
    Source source,
    List<Statement> statements,
    List<Curve> curves,
    List<Finding> findings,
    Review review) {
  /** The name and version of the record's schema. */
  public static final String SCHEMA = "commonsheet/cell-record/1";

  public CellRecord {
    statements = statements == null ? List.of() : List.copyOf(statements);
    curves = curves == null ? List.of() : List.copyOf(curves);
    findings = findings == null ? List.of() : List.copyOf(findings);
  }
}
