package commonsheet.score;

import commonsheet.record.Conditions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads the chart truths of one sheet: a row per point, rows of a curve and of a chart together.
 */
final class ChartTruthReader {
  private static final List<String> COLUMNS =
      List.of(
          "page",
          "chart",
          "kind",
          "x",
          "xUnit",
          "y",
          "yUnit",
          "curve",
          "conditions",
          "xSample",
          "ySample",
          "tolerance");

  private final TruthCsv csv;
  private final Map<ChartKey, Map<CurveKey, List<CurveTruth.Sample>>> charts =
      new LinkedHashMap<>();

  private record ChartKey(int page, String name, String kind) {}

  private record CurveKey(
      String label, CurveTruth.Axis x, CurveTruth.Axis y, Conditions conditions) {}

  ChartTruthReader(Path file) {
    this.csv = new TruthCsv(file, COLUMNS);
  }

  List<ChartTruth> read() throws TruthException {
    csv.forEachRow(this::readRow);
    List<ChartTruth> read = new ArrayList<>();
    charts.forEach(
        (chart, curves) -> {
          List<CurveTruth> of = new ArrayList<>();
          curves.forEach(
              (c, samples) ->
                  of.add(new CurveTruth(c.label(), c.x(), c.y(), c.conditions(), samples)));
          read.add(new ChartTruth(chart.page(), chart.name(), chart.kind(), of));
        });
    return List.copyOf(read);
  }

  private void readRow() throws TruthException {
    ChartKey chart = new ChartKey(csv.page(), csv.needed("chart"), kind(csv.needed("kind")));
    CurveKey curve =
        new CurveKey(csv.text("curve"), axis("x", "xUnit"), axis("y", "yUnit"), csv.conditions());
    charts
        .computeIfAbsent(chart, c -> new LinkedHashMap<>())
        .computeIfAbsent(curve, c -> new ArrayList<>())
        .add(sample());
  }

  /** {@code cycleLife} and {@code cycle-life} are the same kind. */
  private static String kind(String written) {
    return written.replaceAll("([a-z])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
  }

  private CurveTruth.Axis axis(String quantity, String unit) throws TruthException {
    return new CurveTruth.Axis(csv.needed(quantity), csv.needed(unit), null, null);
  }

  private CurveTruth.Sample sample() throws TruthException {
    csv.needed("xSample");
    csv.needed("ySample");
    csv.needed("tolerance");
    double tolerance = csv.number("tolerance");
    if (!(tolerance > 0 && tolerance <= 0.5)) {
      throw csv.fault("tolerance must be a share of the scale above 0, at most 0.5");
    }
    return new CurveTruth.Sample(csv.number("xSample"), csv.number("ySample"), tolerance);
  }
}
