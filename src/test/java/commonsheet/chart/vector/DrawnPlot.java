package commonsheet.chart.vector;

import commonsheet.chart.plot.Plot;
import commonsheet.sheet.Box;
import commonsheet.sheet.DrawnPath;
import commonsheet.sheet.PageDrawing;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/** A page with a plot from (100, 100) to (300, 200), drawn for a test. */
final class DrawnPlot {
  private final List<DrawnPath> paths = new ArrayList<>();
  private final List<Word> words = new ArrayList<>();
  private int order;

  static DrawnPlot withFrame() {
    DrawnPlot plot = new DrawnPlot();
    plot.line(0, 0.5, 100, 100, 300, 100, 300, 200, 100, 200, 100, 100);
    return plot.withTicks();
  }

  static DrawnPlot withoutFrame() {
    return new DrawnPlot().withTicks();
  }

  private DrawnPlot withTicks() {
    for (int i = 0; i <= 4; i++) {
      word(98 + 50 * i, 204, String.valueOf(i));
      word(84, 197 - 25 * i, "3." + i);
    }
    return this;
  }

  DrawnPlot word(double x, double y, String text) {
    Box box = new Box(x, y, 4.5 * text.length(), 6);
    words.add(new Word(text, box, 8, false, 0, 0, false, 1));
    return this;
  }

  DrawnPlot line(int rgb, double width, double... xy) {
    return path(List.of(points(xy)), false, rgb, width, List.of());
  }

  DrawnPlot dashed(int rgb, List<Double> dash, double... xy) {
    return path(List.of(points(xy)), false, rgb, 1, dash);
  }

  DrawnPlot area(int rgb, double... xy) {
    return path(List.of(points(xy)), true, rgb, 0, List.of());
  }

  DrawnPlot path(List<List<Point>> runs, boolean filled, int rgb, double width, List<Double> dash) {
    paths.add(new DrawnPath(runs, filled, rgb, width, dash, ++order));
    return this;
  }

  static List<Point> points(double... xy) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Point(xy[i], xy[i + 1]));
    }
    return points;
  }

  /** Height of a discharge curve at x, lower by an offset. */
  static double curve(double x, double offset) {
    double share = (x - 100) / 200;
    return 115 + offset + 30 * share + 45 * Math.pow(share, 12);
  }

  /** A curve of small pieces from one x to another, as coordinates one after the other. */
  static double[] curve(double from, double to, double offset) {
    int count = (int) Math.max(1, Math.round((to - from) / 4));
    double[] xy = new double[2 * count + 2];
    for (int i = 0; i <= count; i++) {
      double x = from + (to - from) * i / count;
      xy[2 * i] = x;
      xy[2 * i + 1] = curve(x, offset);
    }
    return xy;
  }

  List<Plot> find() {
    return VectorPlots.find(new PageDrawing(1, 400, 300, paths, List.of()), words);
  }
}
