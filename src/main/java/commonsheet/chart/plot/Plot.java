package commonsheet.chart.plot;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.List;

/**
 * One plot as it is drawn on a page, before anything is known of what it means. However it was
 * found, in paths or in pixels, it looks the same from here on. Everything is in points from the
 * top left of the page as displayed.
 *
 * @param page from 1
 * @param frame the plot area: between the axes, not around their labels
 * @param ink how it was found
 * @param pixel side of a pixel in points; 0 for paths
 * @param uprights x of the tick marks and grid lines that stand upright, ascending, each once
 * @param levels y of the tick marks and grid lines that lie level, ascending, each once
 * @param traces the curves, and whatever could not be told from one
 * @param samples short pieces of line or single markers that can be the samples of a legend
 * @param pointers lines that can lead from a label to a curve
 * @param words the words in and around the plot, up to half its size away, written or recognised
 */
public record Plot(
    int page,
    Box frame,
    PlotInk ink,
    double pixel,
    List<Double> uprights,
    List<Double> levels,
    List<Trace> traces,
    List<Sample> samples,
    List<Pointer> pointers,
    List<Word> words) {
  public Plot {
    uprights = List.copyOf(uprights);
    levels = List.copyOf(levels);
    traces = List.copyOf(traces);
    samples = List.copyOf(samples);
    pointers = List.copyOf(pointers);
    words = List.copyOf(words);
  }

  /** The same plot with other words. */
  public Plot withWords(List<Word> others) {
    return new Plot(page, frame, ink, pixel, uprights, levels, traces, samples, pointers, others);
  }

  /** The same plot with other pointers. */
  public Plot withPointers(List<Pointer> others) {
    return new Plot(page, frame, ink, pixel, uprights, levels, traces, samples, others, words);
  }
}
