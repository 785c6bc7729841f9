package commonsheet.chart.bitmap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.Point;
import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Charts of open measurements as five renderers draw them, against the measurements (sources and
 * licences in {@code charts/SOURCE.md}).
 */
class RendererPicturesTest {
  /** Bars of the project: error over full scale in the middle and of 95 of 100 points. */
  private static final double MEDIAN = 0.003;

  private static final double ALMOST_ALL = 0.01;

  /** The same where a pixel is more than half a percent of the scale: one pixel, and two. */
  private static final double PIXELS = 1;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "r-rate.png",
        "gnuplot-temperature.jpg",
        "office-rate.png",
        "matplotlib-rate.png",
        "jfreechart-rate.jpg"
      })
  void everyCurveIsFoundWhereItWasDrawn(String picture) throws IOException {
    BufferedImage image;
    try (InputStream in = getClass().getResourceAsStream("/charts/" + picture)) {
      image = ImageIO.read(in);
    }
    Box area = new Box(0, 0, image.getWidth(), image.getHeight());
    List<Plot> plots = BitmapPlots.find(new PagePixels(1, area, image), List.of());
    assertEquals(1, plots.size());
    Plot plot = plots.get(0);
    Map<String, List<Point>> curves = curves(picture, plot.frame());
    assertEquals(curves.size(), plot.traces().size());
    for (Map.Entry<String, List<Point>> curve : curves.entrySet()) {
      double[] errors = errors(curve.getValue(), plot);
      double pixel = PIXELS / plot.frame().height();
      assertTrue(
          errors[errors.length / 2] <= Math.max(MEDIAN, pixel),
          () -> curve.getKey() + " is off by " + errors[errors.length / 2]);
      assertTrue(
          errors[errors.length * 95 / 100] <= Math.max(ALMOST_ALL, 2 * pixel),
          () -> curve.getKey() + " is off by " + errors[errors.length * 95 / 100]);
    }
  }

  /**
   * Distances of the points of the nearest trace from a curve, ascending, as shares of the frame.
   */
  private static double[] errors(List<Point> curve, Plot plot) {
    double[] best = {1};
    for (Trace trace : plot.traces()) {
      double[] errors =
          trace.points().stream()
              .mapToDouble(p -> distance(p, curve, plot.frame()))
              .sorted()
              .toArray();
      if (errors[errors.length / 2] < best[best.length / 2]) {
        best = errors;
      }
    }
    return best;
  }

  private static double distance(Point point, List<Point> curve, Box frame) {
    double least = Double.MAX_VALUE;
    for (int i = 1; i < curve.size(); i++) {
      Point a = curve.get(i - 1);
      Point b = curve.get(i);
      double dx = (b.x() - a.x()) / frame.width();
      double dy = (b.y() - a.y()) / frame.height();
      double px = (point.x() - a.x()) / frame.width();
      double py = (point.y() - a.y()) / frame.height();
      double share = (px * dx + py * dy) / Math.max(1e-18, dx * dx + dy * dy);
      double t = Math.max(0, Math.min(1, share));
      least = Math.min(least, Math.hypot(px - t * dx, py - t * dy));
    }
    return least;
  }

  /** The curves of a picture, placed in the frame found. */
  private Map<String, List<Point>> curves(String picture, Box frame) throws IOException {
    Map<String, List<Point>> curves = new LinkedHashMap<>();
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                getClass().getResourceAsStream("/charts/curves.csv"), StandardCharsets.UTF_8))) {
      for (String line : lines.lines().skip(1).toList()) {
        String[] cells = line.split(",", -1);
        if (cells[0].equals(picture)) {
          double[] n =
              Arrays.stream(cells, 2, cells.length).mapToDouble(Double::parseDouble).toArray();
          double x = frame.x() + (n[4] - n[0]) / (n[1] - n[0]) * frame.width();
          double y = frame.bottom() - (n[5] - n[2]) / (n[3] - n[2]) * frame.height();
          curves.computeIfAbsent(cells[1], c -> new ArrayList<>()).add(new Point(x, y));
        }
      }
    }
    return curves;
  }
}
