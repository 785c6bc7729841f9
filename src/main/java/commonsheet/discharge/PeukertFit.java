package commonsheet.discharge;

import java.util.List;

/**
 * Peukert's law fitted to capacities at several currents: Q₂/Q₁ = (I₂/I₁)^(1−k). Least squares of
 * ln Q over ln I.
 *
 * @param exponent k
 * @param standardError of k, from how far the capacities lie from the line
 * @param readingError of k, from how far each capacity may be off
 */
public record PeukertFit(double exponent, double standardError, double readingError) {
  /** Two capacities would lie on the line whatever they are and say nothing of its error. */
  public static final int FEWEST = 3;

  /**
   * A capacity at a load.
   *
   * @param load current in A or rate in C; all of one fit alike
   * @param capacity in A.h
   */
  public record Sample(double load, Estimate capacity) {}

  /**
   * Fits the samples.
   *
   * @param samples at least {@value #FEWEST}, of loads that are not all equal
   */
  public static PeukertFit of(List<Sample> samples) {
    int n = samples.size();
    double meanX = samples.stream().mapToDouble(s -> Math.log(s.load())).average().orElseThrow();
    double meanY =
        samples.stream().mapToDouble(s -> Math.log(s.capacity().value())).average().orElseThrow();
    double squares = 0;
    double products = 0;
    double reading = 0;
    for (Sample sample : samples) {
      double x = Math.log(sample.load()) - meanX;
      squares += x * x;
      products += x * (Math.log(sample.capacity().value()) - meanY);
      reading += Math.pow(x * sample.capacity().relative(), 2);
    }
    double slope = products / squares;
    double residuals = 0;
    for (Sample sample : samples) {
      double x = Math.log(sample.load()) - meanX;
      residuals += Math.pow(Math.log(sample.capacity().value()) - meanY - slope * x, 2);
    }
    return new PeukertFit(
        1 - slope, Math.sqrt(residuals / (n - 2) / squares), Math.sqrt(reading) / squares);
  }

  public Estimate estimate() {
    return Estimate.within(exponent, Math.hypot(standardError, readingError));
  }
}
