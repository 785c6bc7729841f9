package commonsheet.compare;

import commonsheet.discharge.DischargeCurve;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BrentSolver;

/** The voltage along one digitised curve, smooth between its points. */
final class TracedProfile implements Profile {
  private final MonotoneCubic line;

  private TracedProfile(MonotoneCubic line) {
    this.line = line;
  }

  /**
   * Along a curve.
   *
   * @param end where it is to stop, within the curve, in A.h, above 0
   * @param endVoltage the voltage there, in V
   */
  static TracedProfile of(DischargeCurve curve, double end, double endVoltage) {
    double[] x = new double[curve.size() + 2];
    double[] y = new double[curve.size() + 2];
    int n = 0;
    if (curve.charge(0) > 0) {
      // Up to its first point the curve is taken as level.
      y[n++] = curve.voltage(0);
    }
    double closest = end / 1e5;
    for (int i = 0; i < curve.size() && curve.charge(i) < end - closest; i++) {
      double place = curve.charge(i);
      // Charge does not run backwards: where a trace does, its noise is left out.
      if (place >= 0 && (n == 0 || place > x[n - 1] + closest)) {
        x[n] = place;
        y[n++] = curve.voltage(i);
      }
    }
    if (n == 0) {
      y[n++] = curve.voltage(0);
    }
    x[n] = end;
    y[n++] = endVoltage;
    return new TracedProfile(new MonotoneCubic(Arrays.copyOf(x, n), Arrays.copyOf(y, n)));
  }

  @Override
  public double end() {
    return line.last();
  }

  @Override
  public double voltageAt(double charge) {
    return line.at(charge);
  }

  @Override
  public double energyTo(double charge) {
    return line.areaTo(charge);
  }

  /** Looks for the first of its points at or below the level, since traces are not quite smooth. */
  @Override
  public double chargeAt(double level, double from) {
    for (int i = 1; i < line.points(); i++) {
      if (line.x(i) > from && line.y(i) <= level) {
        double before = Math.max(from, line.x(i - 1));
        if (line.at(before) <= level) {
          return before;
        }
        return line.y(i) == level ? line.x(i) : within(level, before, line.x(i));
      }
    }
    return end();
  }

  private double within(double level, double from, double to) {
    return new BrentSolver(FOUND).solve(MOST_STEPS, q -> line.at(q) - level, from, to);
  }

  List<double[]> points() {
    return IntStream.range(0, line.points())
        .mapToObj(i -> new double[] {line.x(i), line.y(i)})
        .toList();
  }
}
