package commonsheet.record;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * One member of a family of curves on a chart.
 *
 * @param kind discharge, charge, cycle-life, capacity-over-temperature, …
 * @param points x and y pairs in the units of the axes
 * @param uncertainty half-widths for x and y in the units of the axes
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Curve(
    String id,
    String kind,
    String label,
    Conditions conditions,
    Axis x,
    Axis y,
    List<List<Double>> points,
    Uncertainty uncertainty,
    Method method,
    Evidence evidence,
    Standing standing) {
  /** What an axis shows, with its UCUM unit. */
  public record Axis(String quantity, String unit) {}

  /** Half-widths in the units of the axes. */
  public record Uncertainty(double x, double y) {}

  public Curve {
    conditions = conditions == null ? Conditions.NONE : conditions;
    points = points == null ? List.of() : points.stream().map(List::copyOf).toList();
  }
}
