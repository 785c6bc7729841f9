package commonsheet.roundtrip;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import commonsheet.record.Conditions;
import commonsheet.score.ChartTruth;
import commonsheet.score.CurveTruth;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One chart that was drawn from known data, see src/bench/charts/README.md.
 *
 * @param sheet the page it stands on
 * @param form {@code vector} or {@code bitmap}
 * @param style {@code colour}, or one of the monochrome ones
 * @param dpi of a bitmap, 0 for a vector chart
 * @param file {@code png} or {@code jpg} of a bitmap, null for a vector chart
 * @param truth as the score wants it, with points spread over each curve
 * @param lines the curves as drawn, in the order of the truth's curves
 */
record DrawnChart(
    Path sheet,
    String form,
    String renderer,
    String style,
    int dpi,
    String file,
    String legend,
    String what,
    ChartTruth truth,
    List<TrueLine> lines) {
  private static final String SUFFIX = ".truth.json";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Points of each curve that a read curve is held against. */
  private static final int SAMPLES = 60;

  /** A curve within so much of the scales of its own line is that line. */
  private static final double SAME = 0.01;

  /** The least tolerance: below it, tolerance would measure the drawing. */
  private static final double LEAST = 0.003;

  String name() {
    String name = sheet.getFileName().toString();
    return name.substring(0, name.length() - ".pdf".length());
  }

  boolean monochrome() {
    return !style.equals("colour");
  }

  /** All charts of a folder, by name. */
  static List<DrawnChart> of(Path folder) throws IOException {
    List<Path> truths;
    try (Stream<Path> files = Files.list(folder)) {
      truths = files.filter(f -> f.toString().endsWith(SUFFIX)).sorted().toList();
    }
    List<DrawnChart> charts = new ArrayList<>();
    for (Path truth : truths) {
      charts.add(read(truth));
    }
    return charts;
  }

  private static DrawnChart read(Path file) throws IOException {
    JsonNode root = MAPPER.readTree(file.toFile());
    JsonNode chart = root.get("charts").get(0);
    List<TrueLine> lines = new ArrayList<>();
    chart.get("curves").forEach(curve -> lines.add(line(curve)));
    double least = LEAST;
    if (root.get("dpi").asInt() > 0) {
      // Two thirds of a pixel of a plot that takes about 0.7 of the figure's height.
      least =
          Math.max(
              LEAST,
              0.67 * 72 / root.get("dpi").asDouble() / (0.7 * chart.at("/box/3").asDouble()));
    }
    List<CurveTruth> curves = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      JsonNode curve = chart.get("curves").get(i);
      Map<String, Double> conditions = conditions(chart.get("conditions"));
      conditions.putAll(conditions(curve.get("conditions")));
      double tolerance = Math.min(SAME, Math.max(least, 0.4 * gap(lines, i)));
      curves.add(
          new CurveTruth(
              curve.get("label").textValue(),
              axis(curve.get("x")),
              axis(curve.get("y")),
              new Conditions(conditions),
              lines.get(i).spread(SAMPLES).stream()
                  .map(p -> new CurveTruth.Sample(p[0], p[1], tolerance))
                  .toList()));
    }
    String name = file.getFileName().toString();
    return new DrawnChart(
        file.resolveSibling(name.substring(0, name.length() - SUFFIX.length()) + ".pdf"),
        root.get("form").asText(),
        root.get("renderer").asText(),
        root.get("style").asText(),
        root.get("dpi").asInt(),
        root.get("file").textValue(),
        root.get("legend").asText(),
        chart.get("what").asText(),
        new ChartTruth(
            chart.get("page").asInt(),
            chart.get("title").asText(),
            chart.get("kind").asText(),
            curves),
        lines);
  }

  /** How far the next curve is away along most of this one, as a share of the scales. */
  private static double gap(List<TrueLine> lines, int index) {
    double least = 1;
    for (int other = 0; other < lines.size(); other++) {
      if (other != index && lines.get(other).sameScales(lines.get(index))) {
        TrueLine line = lines.get(other);
        double[] gaps =
            lines.get(index).spread(SAMPLES).stream()
                .mapToDouble(p -> line.distance(p[0], p[1]))
                .sorted()
                .toArray();
        least = Math.min(least, gaps[gaps.length / 2]);
      }
    }
    return least;
  }

  private static TrueLine line(JsonNode curve) {
    JsonNode points = curve.get("points");
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = points.get(i).get(0).asDouble();
      y[i] = points.get(i).get(1).asDouble();
    }
    CurveTruth.Axis xAxis = axis(curve.get("x"));
    CurveTruth.Axis yAxis = axis(curve.get("y"));
    return new TrueLine(
        x, y, xAxis.high() - xAxis.low(), yAxis.high() - yAxis.low(), yAxis.quantity());
  }

  private static CurveTruth.Axis axis(JsonNode axis) {
    return new CurveTruth.Axis(
        axis.get("quantity").asText(),
        axis.get("unit").asText(),
        axis.get("low").asDouble(),
        axis.get("high").asDouble());
  }

  private static Map<String, Double> conditions(JsonNode node) {
    Map<String, Double> conditions = new LinkedHashMap<>();
    node.fields().forEachRemaining(e -> conditions.put(e.getKey(), e.getValue().asDouble()));
    return conditions;
  }
}
