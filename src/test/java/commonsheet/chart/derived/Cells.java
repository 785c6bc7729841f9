package commonsheet.chart.derived;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.RecordJson;
import commonsheet.record.RecordValidator;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.List;

/** Records of an invented cell, with curves. */
final class Cells {
  static final List<Double> PLOT = List.of(90.0, 120.0, 260.0, 180.0);
  static final Curve.Uncertainty EXACT = new Curve.Uncertainty(0, 0);

  private Cells() {}

  static CellRecord with(List<Statement> statements, List<Curve> curves) {
    return new CellRecord(
        CellRecord.SCHEMA,
        "tarnwick-tw-26",
        new Cell("Tarnwick", "TW-26", null, null, null, null, null),
        new Source(null, null, null, null, "tw-26.pdf", "0".repeat(64), 4, "en", null),
        statements,
        curves,
        List.of(),
        Review.DRAFT);
  }

  /** The record with what its curves give, which has to be a valid record. */
  static CellRecord derived(CellRecord record) {
    CellRecord derived = DerivedFigures.applied(record);
    List<String> problems = RecordValidator.problems(RecordJson.write(derived));
    if (!problems.isEmpty()) {
      throw new AssertionError(problems.toString());
    }
    return derived;
  }

  static Curve curve(
      String id, Conditions conditions, List<List<Double>> points, Curve.Uncertainty uncertainty) {
    return new Curve(
        id,
        "discharge",
        null,
        conditions,
        new Curve.Axis("capacity", "A.h", List.of()),
        new Curve.Axis("voltage", "V", List.of()),
        points,
        uncertainty,
        Method.VECTOR_CURVE,
        new Evidence(2, PLOT, null, Method.VECTOR_CURVE, null, null, null, null, null),
        Standing.READ,
        List.of());
  }

  static Curve standing(Curve curve, Standing standing, String... doubts) {
    return new Curve(
        curve.id(),
        curve.kind(),
        curve.label(),
        curve.conditions(),
        curve.x(),
        curve.y(),
        curve.points(),
        curve.uncertainty(),
        curve.method(),
        curve.evidence(),
        standing,
        List.of(doubts));
  }

  static Curve over(Curve curve, String quantity, String unit) {
    return new Curve(
        curve.id(),
        curve.kind(),
        curve.label(),
        curve.conditions(),
        new Curve.Axis(quantity, unit, List.of()),
        curve.y(),
        curve.points(),
        curve.uncertainty(),
        curve.method(),
        curve.evidence(),
        curve.standing(),
        curve.doubts());
  }

  static Conditions rate(double rate) {
    return Conditions.NONE.with(Conditions.DISCHARGE_RATE, rate);
  }

  static Conditions to(double cutOff, Conditions conditions) {
    return conditions.with(Conditions.CUTOFF_VOLTAGE, cutOff);
  }

  static Statement printed(
      String id, String quantity, Statistic statistic, double value, Conditions conditions) {
    String unit =
        switch (quantity) {
          case "capacity" -> "A.h";
          case "capacityRetention" -> "%";
          default -> "V";
        };
    Evidence evidence =
        new Evidence(
            1,
            List.of(72.0, 100.0, 60.0, 11.0),
            "as printed",
            Method.TABLE_CELL,
            null,
            null,
            null,
            null,
            null);
    return new Statement(
        id,
        quantity,
        statistic,
        value,
        null,
        null,
        unit,
        conditions,
        evidence,
        Standing.READ,
        List.of());
  }

  static List<Statement> of(CellRecord record, String quantity) {
    return record.statements().stream()
        .filter(s -> s.quantity().equals(quantity))
        .filter(DerivedFigures::isFromCurves)
        .toList();
  }
}
