package commonsheet.chart;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.InkStyle.Dash;
import commonsheet.chart.plot.InkStyle.Marker;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.PlotInk;
import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** A plot drawn by hand for a test: 300 by 200 points, numbers 6 points high. */
final class DrawnPlot {
  static final Box FRAME = new Box(100, 100, 300, 200);
  private static final double SIZE = 6;

  private final List<Double> uprights = new ArrayList<>();
  private final List<Double> levels = new ArrayList<>();
  private final List<Trace> traces = new ArrayList<>();
  private final List<Sample> samples = new ArrayList<>();
  private final List<Pointer> pointers = new ArrayList<>();
  private final List<Word> words = new ArrayList<>();
  private boolean recognised;
  private double fromX;
  private double toX;
  private double fromY;
  private double toY;

  /** Values at the left and right ends of the frame, without ticks. */
  DrawnPlot x(double from, double to) {
    fromX = from;
    toX = to;
    return this;
  }

  /** Values at the lower and upper ends of the frame, without ticks. */
  DrawnPlot y(double from, double to) {
    fromY = from;
    toY = to;
    return this;
  }

  DrawnPlot recognised() {
    recognised = true;
    return this;
  }

  double atX(double value) {
    return FRAME.x() + (value - fromX) / (toX - fromX) * FRAME.width();
  }

  double atY(double value) {
    return FRAME.bottom() - (value - fromY) / (toY - fromY) * FRAME.height();
  }

  /** A number under the frame with a tick mark above it. */
  DrawnPlot tickX(double value, String text) {
    uprights.add(atX(value));
    return wordAround(atX(value), FRAME.bottom() + 8, text);
  }

  /**
   * A number under the frame that rises by 45 degrees and ends at its tick mark, as spreadsheets
   * set it where there is no room.
   */
  DrawnPlot slantedTickX(double value) {
    String text = plain(value);
    double side = (width(text) + 0.72 * SIZE) * Math.sqrt(0.5);
    double half = 0.36 * SIZE * Math.sqrt(0.5);
    uprights.add(atX(value));
    words.add(word(text, new Box(atX(value) + half - side, FRAME.bottom() + 5, side, side), 45));
    return this;
  }

  /** A tick mark without a number. */
  DrawnPlot mark(double value) {
    uprights.add(atX(value));
    return this;
  }

  /** A number left of the frame with a tick mark beside it. */
  DrawnPlot tickY(double value, String text) {
    levels.add(atY(value));
    double width = width(text);
    return wordAround(FRAME.x() - 4 - width / 2, atY(value), text);
  }

  DrawnPlot ticksX(double... values) {
    for (double value : values) {
      tickX(value, plain(value));
    }
    return this;
  }

  DrawnPlot ticksY(double... values) {
    for (double value : values) {
      tickY(value, plain(value));
    }
    return this;
  }

  static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) >= 10
        ? String.valueOf((long) value)
        : String.valueOf(value);
  }

  /** A second scale on the right: its values at the lower and upper ends of the frame. */
  DrawnPlot rightTicks(double from, double to, double... values) {
    for (double value : values) {
      double at = FRAME.bottom() - (value - from) / (to - from) * FRAME.height();
      String text = plain(value);
      wordAround(FRAME.right() + 4 + width(text) / 2, at, text);
    }
    return this;
  }

  DrawnPlot titleX(String text) {
    return line(text, FRAME.centreX() - width(text) / 2, FRAME.bottom() + 20);
  }

  DrawnPlot titleY(String text) {
    return turned(text, FRAME.x() - 40);
  }

  DrawnPlot rightTitle(String text) {
    return turned(text, FRAME.right() + 40);
  }

  DrawnPlot heading(String text) {
    return line(text, FRAME.x(), FRAME.y() - 14);
  }

  /** Words of one line, 6 points high, from a place on the page. */
  DrawnPlot line(String text, double x, double middle) {
    double at = x;
    for (String part : text.split(" ")) {
      words.add(word(part, new Box(at, middle - SIZE / 2, width(part), SIZE), 0));
      at += width(part) + 0.3 * SIZE;
    }
    return this;
  }

  private DrawnPlot turned(String text, double middle) {
    double at = FRAME.centreY() + width(text) / 2;
    for (String part : text.split(" ")) {
      double length = width(part);
      words.add(word(part, new Box(middle - SIZE / 2, at - length, SIZE, length), 90));
      at -= length + 0.3 * SIZE;
    }
    return this;
  }

  private DrawnPlot wordAround(double x, double y, String text) {
    words.add(word(text, new Box(x - width(text) / 2, y - SIZE / 2, width(text), SIZE), 0));
    return this;
  }

  private Word word(String text, Box box, int turn) {
    return new Word(text, box, SIZE, false, turn, 0, recognised, recognised ? 0.9 : 1);
  }

  private static double width(String text) {
    return 0.55 * SIZE * text.length();
  }

  /** A curve over part of the x axis, in values. */
  DrawnPlot curve(int rgb, double from, double to, DoubleUnaryOperator y) {
    return curve(style(rgb), from, to, y);
  }

  DrawnPlot curve(InkStyle style, double from, double to, DoubleUnaryOperator y) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 200; i++) {
      double x = from + (to - from) * i / 200;
      points.add(new Point(atX(x), atY(y.applyAsDouble(x))));
    }
    traces.add(new Trace(points, style, 0.05, 0.05, List.of()));
    return this;
  }

  /** A curve on the scale of the right axis. */
  DrawnPlot rightCurve(
      int rgb, double from, double to, double low, double high, DoubleUnaryOperator y) {
    return curve(
        rgb, from, to, x -> fromY + (y.applyAsDouble(x) - low) / (high - low) * (toY - fromY));
  }

  static InkStyle style(int rgb) {
    return new InkStyle(rgb, Dash.SOLID, Marker.NONE, 1);
  }

  /** An entry of a legend: sample and words. */
  DrawnPlot entry(InkStyle style, String text, double x, double middle) {
    samples.add(new Sample(new Box(x, middle - 0.5, 16, 1), style));
    return line(text, x + 20, middle);
  }

  /** Words with a line from them to a place in values. */
  DrawnPlot pointed(String text, double x, double middle, double valueX, double valueY) {
    pointers.add(
        new Pointer(
            new Point(x + width(text) / 2, middle + SIZE / 2 + 1),
            new Point(atX(valueX), atY(valueY)),
            true,
            0));
    return line(text, x, middle);
  }

  /** Words beside a place in values. */
  DrawnPlot label(String text, double valueX, double valueY) {
    return line(text, atX(valueX), atY(valueY));
  }

  Plot plot() {
    return new Plot(
        1,
        FRAME,
        recognised ? PlotInk.PIXELS : PlotInk.PATHS,
        recognised ? 0.48 : 0,
        uprights.stream().sorted().distinct().toList(),
        levels.stream().sorted().distinct().toList(),
        traces,
        samples,
        pointers,
        words);
  }
}
