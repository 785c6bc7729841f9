package commonsheet.score;

import commonsheet.record.Conditions;
import java.util.List;

/**
 * One curve of a chart, as a careful person reads it.
 *
 * @param label as printed; null where the curve has none
 * @param conditions what the chart states for this curve, by its label and for all curves
 * @param samples points that lie on the curve; at least one
 */
public record CurveTruth(
    String label, Axis x, Axis y, Conditions conditions, List<Sample> samples) {
  /**
   * What an axis shows.
   *
   * @param quantity such as {@code capacity}
   * @param unit UCUM code of the canonical unit
   * @param low lower end of the printed scale in that unit; null where it is not known
   * @param high upper end of the printed scale in that unit; null where it is not known
   */
  public record Axis(String quantity, String unit, Double low, Double high) {}

  /**
   * A point of the curve.
   *
   * @param x in the unit of the x axis
   * @param y in the unit of the y axis
   * @param tolerance how far a read curve may pass by it, as a share of the scales
   */
  public record Sample(double x, double y, double tolerance) {}

  public CurveTruth {
    samples = List.copyOf(samples);
  }
}
