package commonsheet.workbench.figure;

import com.fasterxml.jackson.annotation.JsonInclude;
import commonsheet.record.Curve;
import java.util.List;

/**
 * The charts of a record as their page shows them.
 *
 * @param version of the record's file
 * @param figures page by page
 * @param measures what an axis can show
 */
record FigureView(String version, List<Chart> figures, List<Measures.Choice> measures) {
  /**
   * A chart.
   *
   * @param number among those of its page, from 1
   * @param box the plot area in points from the top left of the page
   * @param kind what it shows
   */
  record Chart(
      int number, int page, List<Double> box, String kind, List<Axis> axes, List<Line> curves) {}

  /**
   * An axis that one or several curves share.
   *
   * @param key its name within the chart
   * @param along {@code x} or {@code y}
   * @param scale {@code straight} or {@code logarithmic} where a person said so, or null
   * @param logarithmic what it is
   * @param error how far the scale can lie from the true one, in points; 0 where no tick tells it
   */
  @JsonInclude(JsonInclude.Include.ALWAYS)
  record Axis(
      String key,
      String along,
      String quantity,
      String unit,
      String scale,
      boolean logarithmic,
      double error,
      List<Curve.Tick> ticks) {}

  /**
   * A curve at its places.
   *
   * @param x key of its x axis
   * @param y key of its y axis
   * @param places in points of the page
   * @param errorX how far a place can be off across the page, in points
   * @param errorY the same down the page
   */
  record Line(
      String id, String x, String y, List<List<Double>> places, double errorX, double errorY) {}
}
