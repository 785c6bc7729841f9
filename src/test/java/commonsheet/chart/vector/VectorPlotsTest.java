package commonsheet.chart.vector;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.plot.InkStyle.Dash;
import commonsheet.chart.plot.InkStyle.Marker;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plots drawn piece by piece, each named after what makes it hard. */
class VectorPlotsTest {
  private static final int RED = 0xD00000;

  private static Plot only(DrawnPlot drawn) {
    List<Plot> plots = drawn.find();
    assertEquals(1, plots.size());
    return plots.get(0);
  }

  private static void assertOnCurve(Trace trace, double from, double to, double offset) {
    assertEquals(from, trace.points().get(0).x(), 0.3);
    assertEquals(to, trace.points().get(trace.points().size() - 1).x(), 0.3);
    for (Point p : trace.points()) {
      assertEquals(DrawnPlot.curve(p.x(), offset), p.y(), 0.15);
    }
  }

  @Test
  void frameTicksAndCurve() {
    DrawnPlot drawn = DrawnPlot.withFrame().line(RED, 1, DrawnPlot.curve(100, 300, 0));
    drawn.line(0, 0.5, 150, 200, 150, 203).line(0, 0.5, 98, 150, 100, 150);
    Plot plot = only(drawn);
    assertEquals(new Box(100, 100, 200, 100), plot.frame());
    assertEquals(List.of(100.0, 150.0, 300.0), plot.uprights());
    assertEquals(List.of(100.0, 150.0, 200.0), plot.levels());
    assertEquals(1, plot.traces().size());
    assertOnCurve(plot.traces().get(0), 100, 300, 0);
    assertEquals(RED, plot.traces().get(0).style().rgb());
  }

  /** As a typesetter draws it: each piece by itself, its ends rounded to a tenth of a point. */
  @Test
  void curveOfSinglePiecesWithRoundedEnds() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    double[] xy = DrawnPlot.curve(100, 300, 0);
    for (int i = 0; i + 3 < xy.length; i += 2) {
      double rounded = Math.round(xy[i + 3] * 10) / 10.0 - 0.1 * (i / 2 % 2);
      drawn.line(RED, 1, xy[i], Math.round(xy[i + 1] * 10) / 10.0, xy[i + 2], rounded);
    }
    Plot plot = only(drawn);
    assertEquals(1, plot.traces().size());
    assertOnCurve(plot.traces().get(0), 100, 300, 0);
  }

  @Test
  void twoAxesWithoutFrame() {
    DrawnPlot drawn = DrawnPlot.withoutFrame().line(0, 0.5, 100, 100, 100, 200, 300, 200);
    Plot plot = only(drawn.line(RED, 1, DrawnPlot.curve(100, 300, 0)));
    assertEquals(new Box(100, 100, 200, 100), plot.frame());
    assertEquals(1, plot.traces().size());
  }

  @Test
  void plotInPanel() {
    DrawnPlot drawn = DrawnPlot.withFrame().line(0, 1, 60, 60, 340, 60, 340, 240, 60, 240, 60, 60);
    Plot plot = only(drawn.line(RED, 1, DrawnPlot.curve(100, 300, 0)));
    assertEquals(new Box(100, 100, 200, 100), plot.frame());
  }

  @Test
  void tableOfNumbersIsNoPlot() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    for (int i = 1; i < 4; i++) {
      drawn.line(0, 0.5, 100 + 50 * i, 100, 100 + 50 * i, 200);
      drawn.line(0, 0.5, 100, 100 + 25 * i, 300, 100 + 25 * i);
      drawn.word(110, 112 + 25 * i, "3.7");
    }
    assertEquals(List.of(), drawn.find());
  }

  @Test
  void drawingWithDimensionsIsNoPlot() {
    DrawnPlot drawn = new DrawnPlot();
    drawn.line(0, 0.5, 100, 100, 300, 100, 300, 200, 100, 200, 100, 100);
    drawn.line(0, 0.5, DrawnPlot.curve(120, 260, 20)).word(200, 206, "65.2").word(80, 150, "18.6");
    assertEquals(List.of(), drawn.find());
  }

  @Test
  void curveOfOnePathPerPiece() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    double[] xy = DrawnPlot.curve(100, 300, 0);
    for (int i = 2; i < xy.length; i += 2) {
      drawn.line(RED, 1, xy[i - 2], xy[i - 1], xy[i], xy[i + 1]);
    }
    List<Trace> traces = only(drawn).traces();
    assertEquals(1, traces.size());
    assertOnCurve(traces.get(0), 100, 300, 0);
  }

  @Test
  void dashesDrawnOneByOne() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    for (double x = 100; x < 300; x += 6) {
      drawn.line(0, 1, x, DrawnPlot.curve(x, 0), x + 3, DrawnPlot.curve(x + 3, 0));
    }
    List<Trace> traces = only(drawn).traces();
    assertEquals(1, traces.size());
    assertEquals(Dash.DASHED, traces.get(0).style().dash());
  }

  @Test
  void levelBeginningOfDashedCurve() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    for (double x = 110; x < 290; x += 6) {
      double from = 130 + Math.max(0, x - 200) * 0.7;
      double to = 130 + Math.max(0, x + 3 - 200) * 0.7;
      drawn.line(0, 1, x, from, x + 3, to);
    }
    List<Trace> traces = only(drawn).traces();
    assertEquals(1, traces.size());
    assertEquals(110, traces.get(0).points().get(0).x(), 0.1);
  }

  @Test
  void lineDrawnAsThinArea() {
    double[] upper = DrawnPlot.curve(100, 280, 0);
    double[] outline = new double[2 * upper.length + 2];
    int n = upper.length / 2;
    for (int i = 0; i < n; i++) {
      outline[2 * i] = upper[2 * i];
      outline[2 * i + 1] = upper[2 * i + 1] - 0.5;
      outline[2 * (2 * n - 1 - i)] = upper[2 * i];
      outline[2 * (2 * n - 1 - i) + 1] = upper[2 * i + 1] + 0.5;
    }
    outline[4 * n] = outline[0];
    outline[4 * n + 1] = outline[1];
    List<Trace> traces = only(DrawnPlot.withFrame().area(RED, outline)).traces();
    assertEquals(1, traces.size());
    assertOnCurve(traces.get(0), 100, 280, 0);
  }

  @Test
  void curvesOfOneColourStayApartWhereTheyCross() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    drawn.line(0, 1, 100, 110, 150, 130, 200, 150, 250, 170, 290, 185);
    drawn.line(0, 1, 100, 185, 150, 168, 200, 149, 250, 131, 290, 112);
    List<Trace> traces = only(drawn).traces();
    assertEquals(2, traces.size());
    assertEquals(185, traces.get(0).points().get(traces.get(0).points().size() - 1).y(), 1e-6);
  }

  @Test
  void curvesThatBeginAtOnePlace() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    drawn.line(0, 1, 100, 110, 101, 116, 150, 130, 200, 150, 290, 185);
    drawn.line(0, 1, 100, 110, 105, 112, 150, 120, 200, 130, 290, 140);
    assertEquals(2, only(drawn).traces().size());
  }

  @Test
  void curveBehindLabelIsOne() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    drawn.line(RED, 1, DrawnPlot.curve(100, 160, 0)).line(RED, 1, DrawnPlot.curve(184, 300, 0));
    double y = DrawnPlot.curve(172, 0);
    drawn.area(0xFFFFFF, 160, y - 8, 184, y - 8, 184, y + 8, 160, y + 8, 160, y - 8);
    drawn.word(163, y - 3, "0.2C");
    List<Trace> traces = only(drawn).traces();
    assertEquals(1, traces.size());
    assertOnCurve(traces.get(0), 100, 300, 0);
  }

  @Test
  void legendSamplesHaveTheDashesOfTheirCurves() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    List<List<Double>> dashes = List.of(List.of(4.0, 2.0), List.of(6.0, 2.0), List.of(8.0, 2.0));
    for (int i = 0; i < 3; i++) {
      drawn.dashed(0, dashes.get(i), DrawnPlot.curve(100, 280, 8 * i));
      drawn.dashed(0, dashes.get(i), 110, 165 + 9 * i, 130, 165 + 9 * i);
      drawn.word(134, 162 + 9 * i, i + "C");
    }
    Plot plot = only(drawn);
    assertEquals(3, plot.traces().size());
    assertEquals(3, plot.samples().size());
    assertEquals(3, plot.traces().stream().map(trace -> trace.style().dash()).distinct().count());
    for (int i = 0; i < 3; i++) {
      assertEquals(plot.traces().get(i).style().dash(), plot.samples().get(i).style().dash());
    }
  }

  @Test
  void markersOnCurveTellWhatTheyAre() {
    DrawnPlot drawn = DrawnPlot.withFrame().line(0, 1, DrawnPlot.curve(100, 280, 0));
    for (double x = 110; x < 280; x += 20) {
      double y = DrawnPlot.curve(x, 0);
      drawn.area(0, x, y - 2, x + 2, y, x, y + 2, x - 2, y, x, y - 2);
    }
    List<Trace> traces = only(drawn).traces();
    assertEquals(1, traces.size());
    assertEquals(Marker.DIAMOND, traces.get(0).style().marker());
  }

  @Test
  void markersAloneAreACurve() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    for (double x = 110; x < 280; x += 15) {
      double y = DrawnPlot.curve(x, 0);
      drawn.area(0, x - 2, y - 2, x + 2, y - 2, x + 2, y + 2, x - 2, y + 2, x - 2, y - 2);
    }
    List<Trace> traces = only(drawn).traces();
    assertEquals(1, traces.size());
    assertEquals(Marker.SQUARE, traces.get(0).style().marker());
    assertOnCurve(traces.get(0), 110, 275, 0);
  }

  @Test
  void longLeaderIsNoCurve() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    drawn.line(0, 1, DrawnPlot.curve(100, 280, 0)).line(0, 1, DrawnPlot.curve(100, 260, 12));
    drawn.word(112, 180, "0.2C").line(0, 0.4, 131, 182, 210, DrawnPlot.curve(210, 12));
    Plot plot = only(drawn);
    assertEquals(2, plot.traces().size());
    assertEquals(1, plot.pointers().size());
    assertEquals(new Point(131, 182), plot.pointers().get(0).from());
  }

  @Test
  void arrowPointsWithItsTip() {
    DrawnPlot drawn = DrawnPlot.withFrame().line(0, 1, DrawnPlot.curve(100, 280, 0));
    drawn.line(0, 0.5, 150, 180, 150, 140).area(0, 150, 136, 152, 141, 148, 141, 150, 136);
    Plot plot = only(drawn);
    assertEquals(1, plot.traces().size());
    assertTrue(plot.pointers().get(0).arrow());
    assertEquals(new Point(150, 136), plot.pointers().get(0).to());
  }

  @Test
  void plotsAboveEachOtherStayApart() {
    DrawnPlot drawn = DrawnPlot.withFrame().line(RED, 1, DrawnPlot.curve(100, 280, 0));
    for (int i = 0; i <= 4; i++) {
      drawn.word(98 + 50 * i, 54, String.valueOf(i)).word(84, 47 - 8 * i, "3." + i);
    }
    drawn.line(0, 0.5, 100, 15, 300, 15, 300, 50, 100, 50, 100, 15);
    drawn.line(RED, 1, 100, 20, 150, 22, 200, 26, 250, 35, 290, 48);
    assertEquals(2, drawn.find().size());
  }

  @Test
  void stepsAreACurve() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    drawn.line(
        0, 1, 100, 120, 140, 120, 140, 140, 200, 140, 200, 160, 250, 160, 250, 190, 290, 190);
    assertEquals(1, only(drawn).traces().size());
  }

  @Test
  void hundredThousandPiecesAreBorne() {
    DrawnPlot drawn = DrawnPlot.withFrame();
    List<List<Point>> hatch = new ArrayList<>();
    for (int i = 0; i < 100_000; i++) {
      double x = 100 + (i * 37 % 19_000) / 100.0;
      double y = 100 + (i * 91 % 9_000) / 100.0;
      hatch.add(DrawnPlot.points(x, y, x + 1.3, y + 0.9));
    }
    drawn.path(hatch, false, 0x00AA00, 0.3, List.of());
    drawn.line(RED, 1, DrawnPlot.curve(100, 300, 0));
    assertTrue(only(drawn).traces().stream().anyMatch(trace -> trace.style().rgb() == RED));
  }
}
