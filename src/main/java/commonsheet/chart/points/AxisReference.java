package commonsheet.chart.points;

import java.util.List;

/**
 * A scale through marks whose place and value a person gives: a straight line, by least squares
 * where there are more than two marks.
 *
 * @param offset value at place 0; its logarithm on a logarithmic axis
 * @param slope value per unit of place; logarithm per unit on a logarithmic axis
 * @param residual greatest distance of a mark from the line, in the same terms
 */
record AxisReference(double offset, double slope, double residual, boolean logarithmic) {
  /** A mark of a scale. */
  record Mark(double place, double value) {}

  static AxisReference of(List<Mark> marks, boolean logarithmic) {
    double meanPlace = marks.stream().mapToDouble(Mark::place).average().orElseThrow();
    double meanValue = marks.stream().mapToDouble(m -> scaled(m, logarithmic)).average().orElse(0);
    double squares = 0;
    double products = 0;
    for (Mark mark : marks) {
      squares += Math.pow(mark.place() - meanPlace, 2);
      products += (mark.place() - meanPlace) * (scaled(mark, logarithmic) - meanValue);
    }
    double slope = products / squares;
    double offset = meanValue - slope * meanPlace;
    double residual = 0;
    for (Mark mark : marks) {
      double off = scaled(mark, logarithmic) - offset - slope * mark.place();
      residual = Math.max(residual, Math.abs(off));
    }
    return new AxisReference(offset, slope, residual, logarithmic);
  }

  private static double scaled(Mark mark, boolean logarithmic) {
    return logarithmic ? Math.log10(mark.value()) : mark.value();
  }

  double value(double place) {
    double scaled = offset + slope * place;
    return logarithmic ? Math.pow(10, scaled) : scaled;
  }

  /** How far the value at a place is off when the place is off by as much. */
  double error(double place, double placing) {
    double scaled = Math.hypot(slope * placing, residual);
    return logarithmic ? value(place) * (Math.pow(10, scaled) - 1) : scaled;
  }
}
