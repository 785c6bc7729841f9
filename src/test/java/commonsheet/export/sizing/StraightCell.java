package commonsheet.export.sizing;

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
import commonsheet.record.WordSource;
import java.util.ArrayList;
import java.util.List;

/**
 * An invented cell whose voltage falls in a straight line, V = 4.1 − 0.02 Ω·I − 0.5 V/A·h · q, so
 * that what it delivers is known by a formula.
 */
final class StraightCell {
  static final double[] CURRENTS = {1, 5, 10};
  static final double CUTOFF = 2.5;
  private static final double FULL = 4.1;
  private static final double RESISTANCE = 0.02;
  private static final double SLOPE = 0.5;
  private static final int POINTS = 80;

  private StraightCell() {}

  /** In A.h. */
  static double capacity(double current) {
    return (FULL - RESISTANCE * current - CUTOFF) / SLOPE;
  }

  /** In W.h: the line's mean voltage times the capacity. */
  static double energy(double current) {
    return capacity(current) * (FULL - RESISTANCE * current + CUTOFF) / 2;
  }

  static CellRecord record(String id) {
    List<Curve> curves = new ArrayList<>();
    for (double current : CURRENTS) {
      curves.add(curve("c" + (curves.size() + 1), current));
    }
    return new CellRecord(
        CellRecord.SCHEMA,
        id,
        new Cell("Lakeside Cells", "LS-32", null, "Li-ion", "cylindrical", "18650", null),
        new Source("LS-32", null, "3", null, "ls-32.pdf", "a".repeat(64), 4, "en", null),
        List.of(
            stated("s1", "capacity", Statistic.NOMINAL, 3.2, "A.h"),
            stated("s2", "dischargeCutoffVoltage", null, CUTOFF, "V"),
            stated("s3", "maximumContinuousDischargeCurrent", Statistic.MAXIMUM, 10, "A"),
            stated("s4", "mass", Statistic.TYPICAL, 46, "g")),
        curves,
        List.of(),
        Review.DRAFT);
  }

  private static Curve curve(String id, double current) {
    List<List<Double>> points = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double charge = capacity(current) * i / (POINTS - 1);
      points.add(List.of(charge, FULL - RESISTANCE * current - SLOPE * charge));
    }
    return new Curve(
        id,
        "discharge",
        current + " A",
        Conditions.NONE
            .with(Conditions.DISCHARGE_CURRENT, current)
            .with(Conditions.TEMPERATURE, 25),
        new Curve.Axis("capacity", "A.h", null),
        new Curve.Axis("voltage", "V", null),
        points,
        new Curve.Uncertainty(0.002, 0.003),
        Method.VECTOR_CURVE,
        new Evidence(
            3,
            List.of(72.0, 100.0, 300.0, 200.0),
            null,
            Method.VECTOR_CURVE,
            null,
            null,
            null,
            null,
            null),
        Standing.READ,
        null);
  }

  private static Statement stated(
      String id, String quantity, Statistic statistic, double value, String unit) {
    Evidence evidence =
        new Evidence(
            1,
            List.of(72.0, 100.0, 60.0, 10.0),
            "as printed",
            Method.TABLE_CELL,
            "table/" + quantity,
            WordSource.TEXT,
            null,
            null,
            null);
    return new Statement(
        id, quantity, statistic, value, null, null, unit, null, evidence, Standing.READ, null);
  }
}
