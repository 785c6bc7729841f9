package commonsheet.chart.overlay;

import commonsheet.record.Curve;
import java.util.List;
import java.util.Optional;

/**
 * From the values of an axis back to places on the page, by the ticks the record keeps of it. Two
 * ticks give a straight scale; of more, the better of a straight and a logarithmic one is taken.
 */
final class AxisPlaces {
  private final double offset;
  private final double slope;
  private final boolean logarithmic;
  private final double residual;

  private AxisPlaces(List<Curve.Tick> ticks, boolean logarithmic) {
    this.logarithmic = logarithmic;
    double meanValue = ticks.stream().mapToDouble(this::scaled).average().orElseThrow();
    double meanPlace = ticks.stream().mapToDouble(Curve.Tick::at).average().orElseThrow();
    double squares = 0;
    double products = 0;
    for (Curve.Tick tick : ticks) {
      double value = scaled(tick) - meanValue;
      squares += value * value;
      products += value * (tick.at() - meanPlace);
    }
    this.slope = products / squares;
    this.offset = meanPlace - slope * meanValue;
    double sum = 0;
    for (Curve.Tick tick : ticks) {
      sum += Math.pow(tick.at() - offset - slope * scaled(tick), 2);
    }
    this.residual = sum;
  }

  /** Nothing for an axis without two different ticks. */
  static Optional<AxisPlaces> of(Curve.Axis axis) {
    List<Curve.Tick> ticks = axis.ticks();
    long values = ticks.stream().map(Curve.Tick::value).distinct().count();
    if (values < 2) {
      return Optional.empty();
    }
    AxisPlaces straight = new AxisPlaces(ticks, false);
    if (values == 2 || ticks.stream().anyMatch(tick -> tick.value() <= 0)) {
      return Optional.of(straight);
    }
    AxisPlaces bent = new AxisPlaces(ticks, true);
    return Optional.of(bent.residual < straight.residual ? bent : straight);
  }

  /** In points from the left or the top of the page; beyond all paper for what has no place. */
  double place(double value) {
    return offset + slope * (logarithmic ? Math.log10(Math.max(value, Double.MIN_NORMAL)) : value);
  }

  private double scaled(Curve.Tick tick) {
    return logarithmic ? Math.log10(tick.value()) : tick.value();
  }
}
