package commonsheet.chart.vector;

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

/** Reads one plot: what of the page's ink is grid, curve, marker, legend or pointer. */
final class PathsOfPlot {
  private final PageInk ink;
  private final Box frame;
  private final List<Box> others;
  private final List<Word> words;
  private final int page;

  /**
   * @param others the areas of the other plots of the page, whose legends are not this one's
   */
  PathsOfPlot(PageInk ink, Box frame, List<Box> others, List<Word> words, int page) {
    this.others = others;
    this.ink = ink;
    this.frame = frame;
    this.words = words;
    this.page = page;
  }

  /** The lines in the plot: its curves, and what is too small or too straight to be one. */
  List<Trace> lines() {
    Grid grid = Grid.of(ink.rules(), ink.lines(), frame);
    Curves curves = curves(grid, Arrows.find(ink, grid, frame), wordsAround());
    List<Trace> lines = new ArrayList<>(curves.traces());
    curves.loose().forEach(stroke -> lines.add(curves.trace(stroke)));
    return lines;
  }

  private Curves curves(Grid grid, Arrows arrows, List<Word> around) {
    List<MarkerSeries> markers = MarkerSeries.find(ink.shapes(), frame);
    List<Stroke> strokes = inside(arrows.without(ink.lines()));
    strokes.addAll(grid.straightCurves());
    return Curves.of(strokes, markers, frame, ink.patches(), around);
  }

  Plot read() {
    List<Word> around = wordsAround();
    Grid grid = Grid.of(ink.rules(), ink.lines(), frame);
    Arrows arrows = Arrows.find(ink, grid, frame);
    List<Rule> loose = arrows.withoutRules(grid.loose());
    List<MarkerSeries> markers = MarkerSeries.find(ink.shapes(), frame);
    Curves curves = curves(grid, arrows, around);
    List<Trace> traces = curves.traces();
    List<Pointer> pointers = new ArrayList<>(arrows.pointers());
    pointers.addAll(Leaders.find(curves.loose(), loose, curves.strokes(), around, frame));
    List<Sample> samples =
        new LegendSamples(around, traces, curves.names())
            .find(loose, ink.shapes(), markers).stream().filter(this::isOwn).toList();
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

  /** Whether a sample stands in or beside this plot rather than another one. */
  private boolean isOwn(Sample sample) {
    Point at = Geometry.centre(sample.box());
    double own = Geometry.distance(at, frame);
    return others.stream().noneMatch(other -> Geometry.distance(at, other) < own);
  }

  /** The words no farther from the plot than half its size, or than a legend beside it. */
  private List<Word> wordsAround() {
    double across = Math.max(frame.width() / 2, LEGEND_ASIDE);
    double down = Math.max(frame.height() / 2, LEGEND_BELOW);
    Box near =
        new Box(
            frame.x() - across,
            frame.y() - down,
            frame.width() + 2 * across,
            frame.height() + 2 * down);
    return words.stream().filter(word -> Geometry.touch(near, word.box())).toList();
  }

  /** How far in points a legend can reach beside and below a small plot. */
  private static final double LEGEND_ASIDE = 100;

  private static final double LEGEND_BELOW = 75;

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
