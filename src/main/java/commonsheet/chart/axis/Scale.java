package commonsheet.chart.axis;

import java.util.function.DoubleUnaryOperator;

/**
 * From places along an axis to values in the printed unit.
 *
 * @param logarithmic whether equal steps multiply instead of add
 * @param offset value, or its logarithm to base 10, at place 0
 * @param slope the same per point
 * @param error how far the scale can lie from the true one anywhere between its ends, in points
 */
public record Scale(boolean logarithmic, double offset, double slope, double error) {
  public double value(double place) {
    double straight = offset + slope * place;
    return logarithmic ? Math.pow(10, straight) : straight;
  }

  /** The place of a value; NaN for one a logarithmic scale does not have. */
  public double place(double value) {
    double straight = logarithmic ? Math.log10(value) : value;
    return (straight - offset) / slope;
  }

  /** How much a value near a place changes over some points. */
  public double valueOf(double points, double place) {
    double step = Math.abs(slope) * points;
    return logarithmic ? value(place) * Math.log(10) * step : step;
  }

  /** The values in another unit, by a straight conversion. */
  public Scale converted(DoubleUnaryOperator conversion) {
    double shift = conversion.applyAsDouble(0);
    double factor = conversion.applyAsDouble(1) - shift;
    return logarithmic
        ? new Scale(true, offset + Math.log10(factor), slope, error)
        : new Scale(false, offset * factor + shift, slope * factor, error);
  }
}
