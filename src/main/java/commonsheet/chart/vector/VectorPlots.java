package commonsheet.chart.vector;

import commonsheet.chart.plot.Plot;
import commonsheet.sheet.Box;
import commonsheet.sheet.PageDrawing;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;

/** Finds the plots a page draws as paths, and what is drawn in each. */
public final class VectorPlots {
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
    List<Box> frames = new PlotCheck(ink, words).plots(FrameFinder.find(ink));
    List<Plot> plots = new ArrayList<>();
    for (Box frame : frames) {
      Plot plot = new PlotReader(ink, frame, others(frame, frames), words, drawing.page()).read();
      if (!plot.traces().isEmpty()) {
        plots.add(plot);
      }
    }
    return plots;
  }

  private static List<Box> others(Box frame, List<Box> frames) {
    return frames.stream().filter(other -> other != frame).toList();
  }
}
