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

  /** The same record under another id. */
  public CellRecord named(String other) {
    return new CellRecord(schema, other, cell, source, statements, curves, findings, review);
  }

  /** The same record about a cell told otherwise. */
  public CellRecord with(Cell other) {
    return new CellRecord(schema, id, other, source, statements, curves, findings, review);
  }

  /** The same record with another review. */
  public CellRecord with(Review other) {
    return new CellRecord(schema, id, cell, source, statements, curves, findings, other);
  }

  /** The same record with other statements. */
  public CellRecord withStatements(List<Statement> others) {
    return new CellRecord(schema, id, cell, source, others, curves, findings, review);
  }

  /** The same record with other curves. */
  public CellRecord withCurves(List<Curve> others) {
    return new CellRecord(schema, id, cell, source, statements, others, findings, review);
  }

  /** The same record with other findings. */
  public CellRecord withFindings(List<Finding> others) {
    return new CellRecord(schema, id, cell, source, statements, curves, others, review);
  }

  /** The statement of an id, or null. */
  public Statement statement(String wanted) {
    return statements.stream().filter(s -> s.id().equals(wanted)).findFirst().orElse(null);
  }

  /** The curve of an id, or null. */
  public Curve curve(String wanted) {
    return curves.stream().filter(c -> c.id().equals(wanted)).findFirst().orElse(null);
  }
}
