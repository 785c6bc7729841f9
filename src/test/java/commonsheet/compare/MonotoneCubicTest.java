package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class MonotoneCubicTest {
  /** The data of Fritsch and Carlson 1980 (Table 1, RPN 14), on which plain splines swing. */
  private static final double[] X = {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20};

  private static final double[] Y = {
    0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994
  };

  @Test
  void neverFallsWherePointsRise() {
    MonotoneCubic line = new MonotoneCubic(X, Y);
    double before = line.at(X[0]);
    for (double place = X[0]; place <= 20; place += 0.01) {
      assertTrue(line.at(place) >= before - 1e-12, "at " + place);
      before = line.at(place);
    }
    for (int i = 0; i < X.length; i++) {
      assertEquals(Y[i], line.at(X[i]), 1e-12);
    }
  }

  /** Hipparchus' Gauss quadrature as the independent routine. */
  @Property(tries = 100)
  void itsAreaIsThatOfAnIndependentIntegrator(
      @ForAll @Size(min = 3, max = 8) List<@DoubleRange(min = 2.5, max = 4.2) Double> heights,
      @ForAll @DoubleRange(min = 0.1, max = 1) double share) {
    double[] x = new double[heights.size()];
    double[] y = new double[heights.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = i + 0.5 * Math.sin(i);
      y[i] = heights.get(i);
    }
    MonotoneCubic line = new MonotoneCubic(x, y);
    double end = x[0] + share * (x[x.length - 1] - x[0]);
    double area = 0;
    for (int i = 1; i < x.length && x[i - 1] < end; i++) {
      area +=
          new IterativeLegendreGaussIntegrator(5, 1e-12, 1e-12)
              .integrate(100_000, line::at, x[i - 1], Math.min(end, x[i]));
    }
    assertEquals(area, line.areaTo(end), 1e-9);
  }

  @Property(tries = 100)
  void staysBetweenNeighbours(
      @ForAll @Size(min = 2, max = 8) List<@DoubleRange(min = -10, max = 10) Double> heights,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    double[] x = new double[heights.size()];
    double[] y = new double[heights.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = i * i + i;
      y[i] = heights.get(i);
    }
    double place = share * x[x.length - 1];
    double value = new MonotoneCubic(x, y).at(place);
    int i = 1;
    while (x[i] < place) {
      i++;
    }
    assertTrue(value >= Math.min(y[i - 1], y[i]) - 1e-9);
    assertTrue(value <= Math.max(y[i - 1], y[i]) + 1e-9);
  }
}
