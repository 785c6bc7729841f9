package commonsheet.compare;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Records of an invented cell, put together curve by curve and statement by statement. */
final class CellOfCurves {
  static final Curve.Uncertainty EXACT = new Curve.Uncertainty(0, 0);

  private final String id;
  private final List<Statement> statements = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();

  CellOfCurves(String id) {
    this.id = id;
  }

  CellOfCurves curve(double current, double temperature, List<List<Double>> points) {
    return curve(
        Map.of(Conditions.DISCHARGE_CURRENT, current, Conditions.TEMPERATURE, temperature),
        points,
        EXACT,
        Standing.READ);
  }

  CellOfCurves curve(
      Map<String, Double> conditions,
      List<List<Double>> points,
      Curve.Uncertainty uncertainty,
      Standing standing) {
    curves.add(
        new Curve(
            "c" + (curves.size() + 1),
            "discharge",
            null,
            new Conditions(conditions),
            new Curve.Axis("capacity", "A.h", List.of()),
            new Curve.Axis("voltage", "V", List.of()),
            points,
            uncertainty,
            Method.VECTOR_CURVE,
            new Evidence(1, null, null, Method.VECTOR_CURVE, null, null, null, null, null),
            standing,
            standing == Standing.UNSURE ? List.of("its name is in doubt.") : List.of()));
    return this;
  }

  CellOfCurves states(String quantity, Statistic statistic, double value, String unit) {
    return states(quantity, statistic, value, unit, Map.of());
  }

  CellOfCurves states(
      String quantity,
      Statistic statistic,
      double value,
      String unit,
      Map<String, Double> conditions) {
    statements.add(
        new Statement(
            "s" + (statements.size() + 1),
            quantity,
            statistic,
            value,
            null,
            null,
            unit,
            new Conditions(conditions),
            new Evidence(1, null, null, Method.TABLE_CELL, null, null, null, null, null),
            Standing.READ,
            List.of()));
    return this;
  }

  CellRecord record() {
    return new CellRecord(
        CellRecord.SCHEMA,
        id,
        new Cell("Tarnwick", id, null, null, null, null, null),
        new Source(null, null, null, null, id + ".pdf", "0".repeat(64), 4, "en", null),
        statements,
        curves,
        List.of(),
        Review.DRAFT);
  }

  CellFigures under(double current, double cutoff) {
    return under(Load.constant(current), cutoff, 23);
  }

  CellFigures under(Load load, double cutoff, double temperature) {
    Condition condition = new Condition(load, cutoff, temperature, 0, Condition.Tolerance.STANDARD);
    return DischargeFamily.of(record(), condition).under(load);
  }
}
