package commonsheet.chart.axis;

import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.List;
import java.util.Set;

/**
 * The axes of a plot.
 *
 * @param x null where none has a scale
 * @param ys those with a scale, the left ones first
 * @param claimed the words that are numbers or titles of the axes
 * @param whole the plot with those words
 * @param faults why an axis has no scale, one sentence each
 * @param outvoted what was read beside an axis and does not fit its scale, one sentence each
 */
public record PlotAxes(
    ReadAxis x,
    List<ReadAxis> ys,
    Set<Word> claimed,
    Box whole,
    List<String> faults,
    List<String> outvoted) {
  public PlotAxes {
    ys = List.copyOf(ys);
    claimed = Set.copyOf(claimed);
    faults = List.copyOf(faults);
    outvoted = List.copyOf(outvoted);
  }
}
