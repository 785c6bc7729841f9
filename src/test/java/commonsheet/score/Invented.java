package commonsheet.score;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.record.WordSource;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Truth rows and statements of invented cells, in one line each. */
final class Invented {
  private Invented() {}

  static TruthRow capacityRow(Statistic statistic, double value, Object... conditions) {
    return row("capacity", statistic, value, null, null, "A.h", conditions);
  }

  static TruthRow row(
      String quantity,
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      String unit,
      Object... conditions) {
    return new TruthRow(
        quantity, statistic, value, low, high, unit, conditions(conditions), 1, "as printed");
  }

  static Statement capacity(String id, Statistic statistic, double value, Object... conditions) {
    return statement(id, "capacity", statistic, value, null, null, "A.h", conditions);
  }

  static Statement statement(
      String id,
      String quantity,
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      String unit,
      Object... conditions) {
    return new Statement(
        id,
        quantity,
        statistic,
        value,
        low,
        high,
        unit,
        conditions(conditions),
        new Evidence(
            1,
            List.of(),
            "as printed",
            Method.TABLE_CELL,
            "table/" + quantity,
            WordSource.TEXT,
            null,
            null,
            null),
        Standing.READ,
        List.of());
  }

  static Statement standing(Standing standing, Statement s) {
    return new Statement(
        s.id(),
        s.quantity(),
        s.statistic(),
        s.value(),
        s.low(),
        s.high(),
        s.unit(),
        s.conditions(),
        s.evidence(),
        standing,
        standing == Standing.UNSURE ? List.of("The unit is not printed.") : List.of());
  }

  static Truth truth(TruthRow... rows) {
    return new Truth("heron-18650", null, List.of(rows), List.of());
  }

  static CellRecord record(Statement... statements) {
    return record(
        new Cell("Tarn Cells", "Heron 26", null, "Li-ion", null, "18650", null), statements);
  }

  static CellRecord record(Cell cell, Statement... statements) {
    return new CellRecord(
        CellRecord.SCHEMA,
        "tarn-heron-26",
        cell,
        null,
        List.of(statements),
        List.of(),
        List.of(),
        Review.DRAFT);
  }

  /** The record of a reader that makes no mistake, its statements in reverse order. */
  static CellRecord readPerfectly(Truth truth) {
    List<Statement> statements = new ArrayList<>();
    for (TruthRow row : truth.rows()) {
      Statement statement =
          statement(
              "s" + (statements.size() + 1),
              row.quantity(),
              row.statistic(),
              row.value(),
              row.low(),
              row.high(),
              row.unit(),
              row.conditions().values().entrySet().stream()
                  .flatMap(condition -> Stream.of(condition.getKey(), condition.getValue()))
                  .toArray());
      statements.add(0, statement);
    }
    return record(statements.toArray(new Statement[0]));
  }

  private static Conditions conditions(Object... namesAndValues) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      values.put((String) namesAndValues[i], ((Number) namesAndValues[i + 1]).doubleValue());
    }
    return new Conditions(values);
  }
}
