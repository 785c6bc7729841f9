package commonsheet.chart.plot;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ThinningTest {
  /** No point left out lies farther from the thinned curve than the tolerance. */
  @Property(tries = 50)
  void keepsWithinItsTolerance(
      @ForAll @DoubleRange(min = 0.5, max = 20) double bend,
      @ForAll @DoubleRange(min = 0.01, max = 1) double tolerance) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i <= 2000; i++) {
      double x = i / 2000.0;
      points.add(new double[] {x, Math.sin(bend * x)});
    }
    Thinning.Thinned thinned = Thinning.of(points, 0.01, 0.01, tolerance);
    assertTrue(thinned.points().size() <= 400);
    for (double[] point : points) {
      assertTrue(nearest(point, thinned.points()) <= thinned.off() + 1e-9);
    }
  }

  private static double nearest(double[] point, List<double[]> curve) {
    double least = Double.MAX_VALUE;
    for (int i = 1; i < curve.size(); i++) {
      double[] from = curve.get(i - 1);
      double[] to = curve.get(i);
      double dx = (to[0] - from[0]) / 0.01;
      double dy = (to[1] - from[1]) / 0.01;
      double px = (point[0] - from[0]) / 0.01;
      double py = (point[1] - from[1]) / 0.01;
      double along = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
      least = Math.min(least, Math.hypot(px - along * dx, py - along * dy));
    }
    return least;
  }
}
