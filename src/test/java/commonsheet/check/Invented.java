package commonsheet.check;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.Records;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.score.Truth;
import commonsheet.score.TruthField;
import commonsheet.score.TruthRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Records of invented cells, put together in few words. */
final class Invented {
  private final Map<String, String> cell = new HashMap<>();
  private final List<Statement> statements = new ArrayList<>();
  private final List<Curve> curves = new ArrayList<>();
  private String file = "tc-26e.pdf";
  private String sha256 = Records.SHA256;

  /** A sound 18650 of 2.6 Ah. */
  static Invented sound() {
    return new Invented()
        .is("model", "TC-26E")
        .is("form", "cylindrical")
        .is("sizeCode", "18650")
        .is("chemistry", "NMC")
        .says("capacity", Statistic.NOMINAL, 2.6)
        .says("nominalVoltage", Statistic.NOMINAL, 3.6)
        .says("chargeVoltage", null, 4.2)
        .says("dischargeCutoffVoltage", null, 2.75)
        .says("standardChargeCurrent", Statistic.STANDARD, 1.3)
        .says("maximumContinuousDischargeCurrent", Statistic.MAXIMUM, 5.2)
        .says("internalResistanceAC", Statistic.MAXIMUM, 35)
        .says("mass", null, 45)
        .says("diameter", null, 18.3)
        .says("height", null, 65);
  }

  Invented is(String member, String text) {
    cell.put(member, text);
    return this;
  }

  Invented from(String otherFile, String otherSha256) {
    file = otherFile;
    sha256 = otherSha256;
    return this;
  }

  /** A value in the place of what was said of the quantity before. */
  Invented butSays(String quantity, Statistic statistic, double value, Object... conditions) {
    statements.removeIf(s -> s.quantity().equals(quantity));
    return says(quantity, statistic, value, conditions);
  }

  Invented says(String quantity, Statistic statistic, double value, Object... conditions) {
    return add(quantity, statistic, value, null, null, "as printed", conditions);
  }

  Invented printed(String text, String quantity, Statistic statistic, double value) {
    return add(quantity, statistic, value, null, null, text);
  }

  Invented range(String quantity, double low, double high) {
    return add(quantity, null, null, low, high, "as printed");
  }

  private Invented add(
      String quantity,
      Statistic statistic,
      Double value,
      Double low,
      Double high,
      String text,
      Object... conditions) {
    statements.add(
        new Statement(
            "s" + (statements.size() + 101),
            quantity,
            statistic,
            value,
            low,
            high,
            commonsheet.quantity.QuantityCatalogue.standard().get(quantity).unit(),
            conditions(conditions),
            Records.evidence(1, text),
            Standing.READ,
            List.of()));
    return this;
  }

  /** A discharge curve over A.h; {@code points} are charge, voltage, charge, voltage … */
  Invented discharge(double rate, double temperature, double... points) {
    List<List<Double>> pairs = new ArrayList<>();
    for (int i = 0; i < points.length; i += 2) {
      pairs.add(List.of(points[i], points[i + 1]));
    }
    curves.add(
        new Curve(
            "c" + (curves.size() + 1),
            "discharge",
            rate + "C",
            conditions("dischargeRate", rate, "temperature", temperature, "cutoffVoltage", 2.75),
            new Curve.Axis("capacity", "A.h", List.of()),
            new Curve.Axis("voltage", "V", List.of()),
            pairs,
            new Curve.Uncertainty(0.005, 0.004),
            Method.VECTOR_CURVE,
            new Evidence(
                2,
                List.of(1.0, 1.0, 9.0, 9.0),
                null,
                Method.VECTOR_CURVE,
                null,
                null,
                null,
                null,
                null),
            Standing.READ,
            List.of()));
    return this;
  }

  CellRecord record() {
    CellRecord record = Records.with(statements.toArray(Statement[]::new));
    return new CellRecord(
        record.schema(),
        record.id(),
        new Cell(
            cell.get("maker"),
            cell.get("model"),
            cell.get("designation"),
            cell.get("chemistry"),
            cell.get("form"),
            cell.get("sizeCode"),
            null),
        Records.source(file, sha256),
        record.statements(),
        curves,
        List.of(),
        record.review());
  }

  /** The record of a reader that makes no mistake. */
  static CellRecord of(Truth truth) {
    Invented record = new Invented();
    for (TruthField field : truth.fields()) {
      record.is(field.name().substring("cell.".length()), field.expected());
    }
    for (TruthRow row : truth.rows()) {
      Double low = row.low();
      Double high = row.high();
      record.statements.add(
          new Statement(
              "s" + (record.statements.size() + 1),
              row.quantity(),
              row.statistic(),
              row.value(),
              low == null || high == null ? null : low,
              low == null || high == null ? null : high,
              row.unit(),
              row.conditions(),
              Records.evidence(row.page() == null ? 1 : row.page(), row.text()),
              Standing.READ,
              List.of()));
    }
    return record.record();
  }

  private static Conditions conditions(Object... namesAndValues) {
    Conditions conditions = Conditions.NONE;
    for (int i = 0; i < namesAndValues.length; i += 2) {
      conditions =
          conditions.with(
              (String) namesAndValues[i], ((Number) namesAndValues[i + 1]).doubleValue());
    }
    return conditions;
  }
}
