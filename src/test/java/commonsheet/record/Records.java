package commonsheet.record;

import java.util.List;
import java.util.Map;

/** Small valid records for tests. */
public final class Records {
  /** Some valid hash. */
  public static final String SHA256 =
      "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08";

  private Records() {}

  /** A draft of one cell with these statements. */
  public static CellRecord with(Statement... statements) {
    return new CellRecord(
        CellRecord.SCHEMA,
        "tarn-cells-tc-26e",
        new Cell("Tarn Cells", "TC-26E", null, null, null, null, Map.of()),
        source("tc-26e.pdf", SHA256),
        List.of(statements),
        List.of(),
        List.of(),
        Review.DRAFT);
  }

  public static Source source(String file, String sha256) {
    return new Source(null, null, null, null, file, sha256, 9, null, null);
  }

  /** A statement as read from a table. */
  public static Statement statement(
      String id,
      String quantity,
      Statistic statistic,
      double value,
      String unit,
      Conditions conditions,
      int page) {
    return new Statement(
        id,
        quantity,
        statistic,
        value,
        null,
        null,
        unit,
        conditions,
        evidence(page, "as printed"),
        Standing.READ,
        List.of());
  }

  public static Evidence evidence(int page, String text) {
    return new Evidence(
        page,
        List.of(72.0, 100.0, 60.0, 11.0),
        text,
        Method.TABLE_CELL,
        null,
        WordSource.TEXT,
        null,
        null,
        List.of());
  }

  /** The same statement with another standing; unsure brings a doubt along. */
  public static Statement standing(Statement statement, Standing standing) {
    return new Statement(
        statement.id(),
        statement.quantity(),
        statement.statistic(),
        statement.value(),
        statement.low(),
        statement.high(),
        statement.unit(),
        statement.conditions(),
        statement.evidence(),
        standing,
        standing == Standing.UNSURE ? List.of("The unit is not printed.") : List.of());
  }

  /** The same statement with bounds. */
  public static Statement between(Statement statement, Double value, double low, double high) {
    return new Statement(
        statement.id(),
        statement.quantity(),
        statement.statistic(),
        value,
        low,
        high,
        statement.unit(),
        statement.conditions(),
        statement.evidence(),
        statement.standing(),
        statement.doubts());
  }
}
