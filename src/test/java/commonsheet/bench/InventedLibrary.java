package commonsheet.bench;

import commonsheet.record.Cell;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Curve;
import commonsheet.record.Evidence;
import commonsheet.record.Method;
import commonsheet.record.RecordJson;
import commonsheet.record.Review;
import commonsheet.record.Source;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import commonsheet.record.WordSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Cells made up by chance, as large as records of real sheets: two dozen statements and discharge
 * curves at four rates and two other temperatures, of some forty points each.
 */
final class InventedLibrary {
  private static final double[] RATES = {0.2, 0.5, 1, 2};
  private static final double[] COLD = {0, -20};
  private static final int POINTS = 40;
  private static final List<Double> BOX = List.of(90.5, 120.25, 260.0, 180.75);

  private InventedLibrary() {}

  static void write(Path folder, int number) {
    CellRecord record = record(number);
    try {
      Files.writeString(folder.resolve(record.id() + ".json"), RecordJson.write(record));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static CellRecord record(int number) {
    Random random = new Random(number);
    double capacity = 1.5 + 3.5 * random.nextDouble();
    double resistance = 0.06 / capacity * (0.6 + random.nextDouble());
    List<Curve> curves = new ArrayList<>();
    for (double rate : RATES) {
      curves.add(curve(curves.size() + 1, rate, 25, capacity, resistance));
    }
    for (double cold : COLD) {
      curves.add(
          curve(curves.size() + 1, RATES[1], cold, capacity, resistance * (1 + (25 - cold) / 30)));
    }
    return new CellRecord(
        CellRecord.SCHEMA,
        "invented-" + number,
        new Cell("Invented", "IN-" + number, null, "NMC", "cylindrical", "21700", null),
        new Source(null, null, null, null, number + ".pdf", "0".repeat(64), 4, "en", null),
        statements(capacity, random),
        curves,
        List.of(),
        Review.DRAFT);
  }

  private static Curve curve(
      int number, double rate, double temperature, double capacity, double resistance) {
    double current = rate * capacity;
    double whole = capacity * (1.02 - 0.03 * rate) * (1 - 0.006 * Math.max(0, 20 - temperature));
    List<List<Double>> points = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      double share = (double) i / POINTS;
      double open = 4.15 - 0.75 * share - 0.9 * Math.pow(share, 12);
      points.add(List.of(rounded(share * whole), rounded(open - current * resistance)));
    }
    return new Curve(
        "c" + number,
        "discharge",
        rate + "C",
        new Conditions(
            Map.of(
                Conditions.DISCHARGE_CURRENT,
                rounded(current),
                Conditions.DISCHARGE_RATE,
                rate,
                Conditions.TEMPERATURE,
                temperature,
                Conditions.CUTOFF_VOLTAGE,
                2.5)),
        new Curve.Axis("capacity", "A.h", ticks(0, 1)),
        new Curve.Axis("voltage", "V", ticks(2, 0.5)),
        points,
        new Curve.Uncertainty(0.003, 0.002),
        Method.VECTOR_CURVE,
        new Evidence(2, BOX, rate + "C", Method.VECTOR_CURVE, null, null, null, null, null),
        Standing.READ,
        List.of());
  }

  private static List<Curve.Tick> ticks(double from, double step) {
    List<Curve.Tick> ticks = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      double value = from + i * step;
      ticks.add(new Curve.Tick(90.25 + 36.3 * i, value, Double.toString(value)));
    }
    return ticks;
  }

  private static List<Statement> statements(double capacity, Random random) {
    List<Statement> all = new ArrayList<>();
    add(all, "capacity", Statistic.NOMINAL, capacity, "A.h");
    add(all, "capacity", Statistic.MINIMUM, 0.97 * capacity, "A.h");
    add(all, "nominalVoltage", Statistic.NOMINAL, 3.6, "V");
    add(all, "dischargeCutoffVoltage", null, 2.5, "V");
    add(
        all,
        "maximumContinuousDischargeCurrent",
        Statistic.MAXIMUM,
        capacity * (2 + 6 * random.nextDouble()),
        "A");
    add(all, "mass", null, 14 * capacity * (0.9 + 0.2 * random.nextDouble()), "g");
    add(all, "diameter", Statistic.MAXIMUM, 21.6, "mm");
    add(all, "height", Statistic.MAXIMUM, 70.6, "mm");
    for (int i = 0; i < 16; i++) {
      add(all, "internalResistanceAC", Statistic.TYPICAL, 20 + i, "mOhm");
    }
    return all;
  }

  private static void add(
      List<Statement> all, String quantity, Statistic statistic, double value, String unit) {
    all.add(
        new Statement(
            "s" + (all.size() + 1),
            quantity,
            statistic,
            rounded(value),
            null,
            null,
            unit,
            Conditions.NONE,
            new Evidence(
                1,
                BOX,
                "as printed",
                Method.TABLE_CELL,
                "table/" + quantity,
                WordSource.TEXT,
                null,
                null,
                null),
            Standing.READ,
            List.of()));
  }

  private static double rounded(double value) {
    return Math.round(value * 1e4) / 1e4;
  }
}
