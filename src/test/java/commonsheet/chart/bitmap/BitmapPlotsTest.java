package commonsheet.chart.bitmap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Plots drawn here, so that where every line lies is known exactly. */
class BitmapPlotsTest {
  private static final int LEFT = 80;
  private static final int TOP = 40;
  private static final int RIGHT = 560;
  private static final int BOTTOM = 340;

  /** A cell's voltage as it falls in discharge, as a row of the picture. */
  private static DoubleUnaryOperator fall(double start, double end) {
    return x -> start + 0.12 * (x - LEFT) + 60 * Math.pow((x - LEFT) / (end - LEFT), 12);
  }

  @Test
  void colouredCurvesOnAGreyGrid() {
    Picture picture = new Picture().grid().frame();
    picture.curve(new Color(0x1F77B4), fall(90, 500), 500);
    picture.curve(new Color(0xD62728), fall(120, 470), 470);
    Plot plot = picture.onlyPlot();
    assertEquals(2, plot.traces().size());
    assertOn(plot.traces(), 0x1F77B4, fall(90, 500));
    assertOn(plot.traces(), 0xD62728, fall(120, 470));
    assertEquals(LEFT + 0.5, plot.frame().x(), 0.3);
    assertEquals(BOTTOM + 0.5, plot.frame().bottom(), 0.3);
    assertEquals(7, plot.uprights().size());
    assertEquals(5, plot.levels().size());
  }

  @Test
  void twoAxesWithoutAFrame() {
    Picture picture = new Picture();
    picture.line(LEFT, TOP, LEFT, BOTTOM, Color.BLACK, 1);
    picture.line(LEFT, BOTTOM, RIGHT, BOTTOM, Color.BLACK, 1);
    for (int x = LEFT; x <= RIGHT; x += 80) {
      picture.line(x, BOTTOM, x, BOTTOM + 5, Color.BLACK, 1);
    }
    picture.curve(new Color(0x2CA02C), fall(90, 500), 500);
    Plot plot = picture.onlyPlot();
    assertEquals(1, plot.traces().size());
    assertEquals(7, plot.uprights().size());
    assertEquals(RIGHT, plot.frame().right(), 1.5);
    assertEquals(TOP, plot.frame().y(), 1.5);
  }

  @Test
  void aCurveHiddenWhereAnotherCrossesItGoesOn() {
    Picture picture = new Picture().frame();
    picture.curve(Color.BLUE, x -> 80 + 0.4 * (x - LEFT), 540);
    picture.curve(Color.RED, x -> 300 - 0.4 * (x - LEFT), 540);
    Plot plot = picture.onlyPlot();
    assertEquals(2, plot.traces().size());
    assertOn(plot.traces(), 0x0000FF, x -> 80 + 0.4 * (x - LEFT));
  }

  @Test
  void blackCurvesThatCrossKeepTheirWay() {
    Picture picture = new Picture().frame();
    DoubleUnaryOperator down = x -> 80 + 0.4 * (x - LEFT);
    DoubleUnaryOperator up = x -> 300 - 0.3 * (x - LEFT) - 20 * Math.sin((x - LEFT) / 90);
    picture.curve(Color.BLACK, down, 540);
    picture.curve(Color.BLACK, up, 540);
    Plot plot = picture.onlyPlot();
    assertEquals(2, plot.traces().size());
    for (Trace trace : plot.traces()) {
      assertTrue(worst(trace, down) < 1.5 || worst(trace, up) < 1.5);
    }
  }

  @Test
  void aDashedCurveIsOne() {
    Picture picture = new Picture().frame();
    picture.stroke(new BasicStroke(2, BasicStroke.CAP_BUTT, 0, 1, new float[] {9, 5}, 0));
    picture.curve(Color.BLACK, fall(90, 500), 500);
    Plot plot = picture.onlyPlot();
    assertEquals(1, plot.traces().size());
    assertEquals(InkStyle.Dash.DASHED, plot.traces().get(0).style().dash());
    assertTrue(worst(plot.traces().get(0), fall(90, 500)) < 1.2);
  }

  @Test
  void theNearlyUprightEndOfADischargeIsFollowed() {
    Picture picture = new Picture().frame();
    DoubleUnaryOperator steep = x -> 100 + 0.1 * (x - LEFT) + 160 * Math.pow((x - LEFT) / 400, 60);
    picture.curve(Color.RED, steep, 480);
    Trace trace = picture.onlyPlot().traces().get(0);
    double lowest = trace.points().stream().mapToDouble(Point::y).max().orElse(0);
    assertEquals(steep.applyAsDouble(480), lowest, 3);
  }

  @Test
  void wordsAndTheSidesOfABoxOverTheFrameAreNoCurves() {
    Picture picture = new Picture().grid().frame();
    picture.curve(new Color(0x1F77B4), fall(120, 500), 500);
    picture.box(140, 20, 340, 50, "Charge: CC-CV 0.5C 4.20V", "Discharge: CC to 2.50V");
    Plot plot = picture.onlyPlot();
    assertEquals(1, plot.traces().size());
    assertEquals(TOP + 0.5, plot.frame().y(), 1);
  }

  @Test
  void aLineFromALabelToACurveIsAPointer() {
    Picture picture = new Picture().frame();
    picture.curve(new Color(0x1F77B4), fall(90, 500), 500);
    picture.line(200, 260, 260, fall(90, 500).applyAsDouble(260), Color.BLACK, 1);
    Plot plot = picture.onlyPlot();
    assertEquals(1, plot.traces().size());
    assertEquals(1, plot.pointers().size());
    assertEquals(260, plot.pointers().get(0).to().x(), 6);
  }

  @Test
  void leadersOfLabelsThatCrossCurvesOfTheirColourLeadToTheirOwn() {
    Picture picture = new Picture().frame();
    DoubleUnaryOperator upper = fall(70, 520);
    DoubleUnaryOperator lower = fall(120, 500);
    picture.curve(Color.BLACK, upper, 520);
    picture.curve(Color.BLACK, lower, 500);
    picture.line(162, 258, 240, upper.applyAsDouble(240), Color.BLACK, 1);
    picture.line(162, 278, 300, lower.applyAsDouble(300), Color.BLACK, 1);
    picture.text("1C", 142, 262);
    picture.text("2C", 142, 282);
    List<Word> words = List.of(word("1C", 142, 252, 17, 10), word("2C", 142, 272, 17, 10));
    Plot plot = BitmapPlots.find(pixels(picture.image), words).get(0);
    assertEquals(2, plot.traces().size());
    for (Trace trace : plot.traces()) {
      assertTrue(worst(trace, upper) < 1.5 || worst(trace, lower) < 1.5);
    }
    assertTrue(plot.pointers().stream().anyMatch(p -> p.to().distance(at(240, upper)) < 4));
    assertTrue(plot.pointers().stream().anyMatch(p -> p.to().distance(at(300, lower)) < 4));
  }

  private static Point at(double x, DoubleUnaryOperator row) {
    return new Point(x, row.applyAsDouble(x));
  }

  private static Word word(String text, double x, double y, double width, double height) {
    return new Word(text, new Box(x, y, width, height), height, false, 0, 0, true, 0.9);
  }

  @Test
  void samplesOfALegendBesideThePlot() {
    Picture picture = new Picture().frame();
    picture.curve(new Color(0x1F77B4), fall(90, 500), 500);
    picture.line(580, 100, 610, 100, new Color(0x1F77B4), 2);
    Plot plot = picture.onlyPlot();
    assertEquals(1, plot.traces().size());
    assertEquals(1, plot.samples().size());
    assertEquals(595, plot.samples().get(0).box().centreX(), 1.5);
  }

  @Test
  void samplesWithMarkersOfALegendInTheInkOfTheCurves() {
    Picture picture = new Picture().frame();
    picture.curve(Color.BLACK, fall(90, 500), 500);
    picture.line(580, 100, 620, 100, Color.BLACK, 2);
    picture.graphics.fillRect(595, 95, 10, 10);
    picture.line(580, 130, 620, 130, Color.BLACK, 2);
    picture.graphics.fillOval(595, 125, 10, 10);
    List<Sample> samples = picture.onlyPlot().samples();
    assertEquals(
        List.of(InkStyle.Marker.SQUARE, InkStyle.Marker.CIRCLE),
        samples.stream()
            .sorted(Comparator.comparingDouble(sample -> sample.box().y()))
            .map(sample -> sample.style().marker())
            .toList());
  }

  @Test
  void aRuledTableIsNoPlot() {
    Picture picture = new Picture().frame();
    for (int y = TOP; y <= BOTTOM; y += 30) {
      picture.line(LEFT, y, RIGHT, y, Color.BLACK, 1);
      picture.text("Nominal capacity    2500 mAh    at 0.2C", LEFT + 8, y + 20);
    }
    picture.line(240, TOP, 240, BOTTOM, Color.BLACK, 1);
    assertEquals(List.of(), picture.plots());
  }

  @Test
  void nothingIsFoundWhereNothingIs() {
    BufferedImage white = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
    assertEquals(List.of(), BitmapPlots.find(pixels(white), List.of()));
    BufferedImage noise = new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(1);
    for (int y = 0; y < 300; y++) {
      for (int x = 0; x < 400; x++) {
        noise.setRGB(x, y, random.nextInt(0x1000000));
      }
    }
    assertEquals(List.of(), BitmapPlots.find(pixels(noise), List.of()));
    BufferedImage dot = new BufferedImage(1, 1, BufferedImage.TYPE_BYTE_GRAY);
    assertEquals(List.of(), BitmapPlots.find(pixels(dot), List.of()));
  }

  @Test
  void aPictureOfAHundredMegapixelsIsLookedAtSmaller() {
    BufferedImage image = new BufferedImage(10_000, 10_000, BufferedImage.TYPE_BYTE_BINARY);
    Raster raster = Raster.of(image);
    assertTrue(Math.max(raster.width, raster.height) <= Raster.LONGEST);
    assertEquals(List.of(), BitmapPlots.find(pixels(image), List.of()));
  }

  private static void assertOn(List<Trace> traces, int rgb, DoubleUnaryOperator curve) {
    Trace trace = traces.stream().filter(t -> near(t.style().rgb(), rgb)).findFirst().orElseThrow();
    assertTrue(worst(trace, curve) < 1.5, () -> "off by " + worst(trace, curve));
  }

  private static boolean near(int a, int b) {
    int red = Math.abs((a >> 16) - (b >> 16));
    int green = Math.abs((a >> 8 & 0xFF) - (b >> 8 & 0xFF));
    return red + green + Math.abs((a & 0xFF) - (b & 0xFF)) < 60;
  }

  /** How far a trace is from where it was drawn at most, across the line, in pixels. */
  private static double worst(Trace trace, DoubleUnaryOperator curve) {
    double worst = 0;
    for (Point point : trace.points()) {
      double slope = curve.applyAsDouble(point.x() + 0.5) - curve.applyAsDouble(point.x() - 0.5);
      double off = Math.abs(point.y() - curve.applyAsDouble(point.x()));
      worst = Math.max(worst, off / Math.hypot(1, slope));
    }
    return worst;
  }

  private static PagePixels pixels(BufferedImage image) {
    return new PagePixels(1, new Box(0, 0, image.getWidth(), image.getHeight()), image);
  }

  /** A picture of a plot that is drawn step by step. */
  private static final class Picture {
    private final BufferedImage image = new BufferedImage(640, 400, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D graphics = image.createGraphics();
    private BasicStroke stroke = new BasicStroke(2);

    Picture() {
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, 640, 400);
      graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      graphics.setRenderingHint(
          RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
      graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
    }

    Picture grid() {
      for (int x = LEFT; x <= RIGHT; x += 80) {
        line(x + 0.5, TOP, x + 0.5, BOTTOM, new Color(0xC0C0C0), 1);
      }
      for (int y = TOP; y <= BOTTOM; y += 75) {
        line(LEFT, y + 0.5, RIGHT, y + 0.5, new Color(0xC0C0C0), 1);
      }
      return this;
    }

    Picture frame() {
      graphics.setColor(Color.BLACK);
      graphics.setStroke(new BasicStroke(1));
      graphics.draw(new Rectangle2D.Double(LEFT + 0.5, TOP + 0.5, RIGHT - LEFT, BOTTOM - TOP));
      return this;
    }

    void stroke(BasicStroke next) {
      stroke = next;
    }

    void line(double x0, double y0, double x1, double y1, Color color, float width) {
      graphics.setColor(color);
      graphics.setStroke(new BasicStroke(width));
      graphics.draw(new Line2D.Double(x0, y0, x1, y1));
    }

    void curve(Color color, DoubleUnaryOperator row, double end) {
      Path2D path = new Path2D.Double();
      path.moveTo(LEFT + 1, row.applyAsDouble(LEFT + 1));
      for (double x = LEFT + 1; x <= end; x += 0.5) {
        path.lineTo(x, row.applyAsDouble(x));
      }
      graphics.setColor(color);
      graphics.setStroke(stroke);
      graphics.draw(path);
    }

    void text(String text, int x, int y) {
      graphics.setColor(Color.BLACK);
      graphics.drawString(text, x, y);
    }

    void box(int x, int y, int width, int height, String... lines) {
      graphics.setColor(Color.WHITE);
      graphics.fillRect(x, y, width, height);
      graphics.setColor(Color.DARK_GRAY);
      graphics.setStroke(new BasicStroke(2));
      graphics.drawRect(x, y, width, height);
      for (int i = 0; i < lines.length; i++) {
        text(lines[i], x + 8, y + 18 + 18 * i);
      }
    }

    List<Plot> plots() {
      return BitmapPlots.find(pixels(image), List.of());
    }

    Plot onlyPlot() {
      List<Plot> plots = plots();
      assertEquals(1, plots.size());
      return plots.get(0);
    }
  }
}
