package commonsheet.chart.vector;

import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.PlotInk;
import commonsheet.chart.plot.Pointer;
import commonsheet.chart.plot.Sample;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/** Reads one plot: what of the page's ink is grid, curve, marker, legend or pointer. */
final class PlotReader {
  private final PageInk ink;
  private final Box frame;
  private final List<Word> words;
  private final int page;

  PlotReader(PageInk ink, Box frame, List<Word> words, int page) {
    this.ink = ink;
    this.frame = frame;
    this.words = words;
    this.page = page;
  }

  Plot read() {
    List<Word> around = wordsAround();
    Grid grid = Grid.of(ink.rules(), frame);
    Arrows arrows = Arrows.find(ink, grid, frame);
    List<Rule> loose = arrows.withoutRules(grid.loose());
    List<MarkerSeries> markers = MarkerSeries.find(ink.shapes(), frame);
    List<Stroke> strokes = inside(arrows.without(ink.lines()));
    strokes.addAll(grid.straightCurves());
    Curves curves = Curves.of(strokes, markers, frame, ink.patches(), around);
    List<Trace> traces = curves.traces();
    List<Pointer> pointers = new ArrayList<>(arrows.pointers());
    pointers.addAll(Leaders.find(curves.loose(), loose, traces, around, frame));
    List<Sample> samples = new LegendSamples(around, traces).find(loose, markers);
    return new Plot(
        page,
        frame,
        PlotInk.PATHS,
        0,
        grid.uprights(),
        grid.levels(),
        traces,
        samples,
        pointers,
        around);
  }

  /** The words no farther from the plot than half its longer side. */
  private List<Word> wordsAround() {
    double reach = Math.max(frame.width(), frame.height()) / 2;
    Box near =
        new Box(
            frame.x() - reach,
            frame.y() - reach,
            frame.width() + 2 * reach,
            frame.height() + 2 * reach);
    return words.stream().filter(word -> Geometry.touch(near, word.box())).toList();
  }

  /** The strokes in the plot, cut to it. */
  private List<Stroke> inside(List<Stroke> lines) {
    List<Stroke> inside = new ArrayList<>();
    for (Stroke line : lines) {
      if (Geometry.touch(line.box(), frame)) {
        inside.addAll(Cutting.cut(line, frame));
      }
    }
    return inside;
  }
}
