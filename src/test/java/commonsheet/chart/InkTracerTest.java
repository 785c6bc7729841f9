package commonsheet.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.bitmap.BitmapPlots;
import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Trace;
import commonsheet.chart.vector.VectorPlots;
import commonsheet.sheet.Box;
import commonsheet.sheet.OpenSheet;
import commonsheet.sheet.PagePixels;
import commonsheet.sheet.PlacedPicture;
import commonsheet.sheet.Point;
import commonsheet.sheet.SheetException;
import commonsheet.sheet.SheetReader;
import commonsheet.sheet.Word;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class InkTracerTest {
  private static final Path PATHS = Path.of("fixtures/sheets/ellerbeck-eb21700-48.pdf");
  private static final Path PIXELS = Path.of("fixtures/sheets/corrowmere-cm18650-30.pdf");

  @Test
  void aClickOnAPathGivesTheCurveThatIsReadByItself() throws Exception {
    try (OpenSheet open = OpenSheet.open(PATHS)) {
      List<Word> words = SheetReader.read(PATHS).pages().get(1).words();
      List<Plot> plots = VectorPlots.find(open.drawing(2), words);
      assertEquals(4, plots.size());
      clickAlong(plots, open, words);
    }
  }

  @Test
  void aClickOnPixelsGivesTheCurveThatIsReadByItself() throws Exception {
    try (OpenSheet open = OpenSheet.open(PIXELS)) {
      List<Plot> plots = new ArrayList<>();
      for (PlacedPicture picture : open.drawing(1).pictures()) {
        PagePixels pixels = open.pixels(1, picture, 24);
        plots.addAll(BitmapPlots.find(pixels, List.of()));
      }
      assertEquals(3, plots.size());
      clickAlong(plots, open, List.of());
    }
  }

  @Test
  void whereNoLineIsNothingIsFound() throws Exception {
    try (OpenSheet open = OpenSheet.open(PATHS)) {
      // In the first chart, below all curves and above the legend.
      Box frame = new Box(74.2, 101.2, 181.5, 123);
      InkTracer tracer = InkTracer.of(open, 2, List.of(), frame);
      assertEquals(Optional.empty(), tracer.at(new Point(120, 172)));
    }
  }

  private static void clickAlong(List<Plot> plots, OpenSheet open, List<Word> words)
      throws SheetException {
    for (Plot plot : plots) {
      InkTracer tracer = InkTracer.of(open, plot.page(), words, plot.frame());
      for (Trace curve : plot.traces()) {
        for (double share : new double[] {0.2, 0.5, 0.8}) {
          Point click = curve.points().get((int) (share * (curve.points().size() - 1)));
          InkTracer.Found found = tracer.at(click).orElseThrow();
          assertEquals(plot.ink(), found.ink());
          double most = Math.hypot(curve.errorX(), curve.errorY());
          double off = off(curve.points(), found.trace().points());
          assertTrue(off <= most, () -> "off by " + off + " of " + most + " points at " + click);
        }
      }
    }
  }

  /** The largest distance of points from a line. */
  private static double off(List<Point> points, List<Point> line) {
    double worst = 0;
    for (Point p : points) {
      double least = Double.MAX_VALUE;
      for (int i = 1; i < line.size(); i++) {
        Point a = line.get(i - 1);
        Point b = line.get(i);
        double length = Math.pow(a.distance(b), 2);
        double along =
            ((p.x() - a.x()) * (b.x() - a.x()) + (p.y() - a.y()) * (b.y() - a.y()))
                / Math.max(1e-12, length);
        double t = Math.max(0, Math.min(1, along));
        Point foot = new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
        least = Math.min(least, p.distance(foot));
      }
      worst = Math.max(worst, least);
    }
    return worst;
  }
}
