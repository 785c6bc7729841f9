package commonsheet.chart.vector;

import commonsheet.chart.plot.Plot;
import commonsheet.chart.plot.Trace;
import commonsheet.sheet.Box;
import commonsheet.sheet.PageDrawing;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/** Finds the plots a page draws as paths, and what is drawn in each. */
public final class VectorPlots {
  /** Share of both sides of the page from which a box goes around the page, not around a plot. */
  private static final double PAGE = 0.9;

  private VectorPlots() {}

  /**
   * The plots of a page, from top to bottom.
   *
   * @param drawing what the page draws
   * @param words of the page, written or recognised; without any, only plots with a grid are found
   */
  public static List<Plot> find(PageDrawing drawing, List<Word> words) {
    PageInk ink = InkSorter.sort(drawing);
    if (ink.lines().isEmpty() && ink.shapes().isEmpty()) {
      return List.of();
    }
    List<Box> boxes = new ArrayList<>(FrameFinder.find(ink));
    boxes.removeIf(
        box -> box.width() > PAGE * drawing.width() && box.height() > PAGE * drawing.height());
    List<Box> frames = new PlotCheck(ink, words).plots(boxes);
    List<Plot> plots = new ArrayList<>();
    for (Box frame : frames) {
      Plot plot = new PathsOfPlot(ink, frame, others(frame, frames), words, drawing.page()).read();
      if (!plot.traces().isEmpty()) {
        plots.add(plot);
      }
    }
    return plots;
  }

  /**
   * The lines in a plot whose place is known: its curves, and what is too small or too straight to
   * be taken for one.
   *
   * @param words of the page, written or recognised; a label can hide a piece of a curve
   * @param frame the plot area, in points from the top left of the page
   */
  public static List<Trace> lines(PageDrawing drawing, List<Word> words, Box frame) {
    PageInk ink = InkSorter.sort(drawing);
    return new PathsOfPlot(ink, frame, List.of(), words, drawing.page()).lines();
  }

  private static List<Box> others(Box frame, List<Box> frames) {
    return frames.stream().filter(other -> other != frame).toList();
  }
}
