package commonsheet.chart.vector;

import commonsheet.chart.plot.InkStyle;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Point;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/** Curves that are drawn by markers alone. */
final class MarkerCurves {
  /** Share of the plot's width by which a series goes back when the next one begins. */
  private static final double BACK = 0.3;

  /** Markers from which a series is a curve. */
  private static final int ROW = 5;

  /** Share of a marker's size by which its place can be off. */
  private static final double ERROR = 0.02;

  private MarkerCurves() {}

  static List<Trace> of(MarkerSeries series, Box frame, List<Word> words) {
    List<Trace> traces = new ArrayList<>();
    List<Point> run = new ArrayList<>();
    Box in = Geometry.grown(frame, 1);
    for (Shape shape : series.shapes()) {
      if (!Geometry.contains(in, shape.centre())
          || LegendSamples.isBesideWord(shape.box(), words)) {
        continue;
      }
      Point centre = shape.centre();
      if (!run.isEmpty() && centre.x() < run.get(run.size() - 1).x() - BACK * frame.width()) {
        add(run, series, traces);
        run = new ArrayList<>();
      }
      run.add(centre);
    }
    add(run, series, traces);
    return traces;
  }

  private static void add(List<Point> run, MarkerSeries series, List<Trace> traces) {
    if (run.size() < ROW) {
      return;
    }
    double error = 0.02 + ERROR * series.size();
    InkStyle style = new InkStyle(series.rgb(), InkStyle.Dash.SOLID, series.marker(), 0);
    traces.add(new Trace(run, style, error, error, List.of()));
  }
}
