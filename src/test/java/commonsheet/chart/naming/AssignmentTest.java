package commonsheet.chart.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class AssignmentTest {
  /** Against every way of pairing, tried one by one. */
  @Property(tries = 100)
  void costsNoMoreThanAnyOtherPairing(
      @ForAll @IntRange(min = 1, max = 6) int rows,
      @ForAll @IntRange(max = 2) int more,
      @ForAll long seed) {
    Random random = new Random(seed);
    double[][] costs = new double[rows][rows + more];
    for (double[] row : costs) {
      for (int j = 0; j < row.length; j++) {
        row[j] = random.nextDouble();
      }
    }
    int[] columns = Assignment.of(costs);
    double total = 0;
    for (int i = 0; i < rows; i++) {
      total += costs[i][columns[i]];
    }
    assertEquals(least(costs, 0, new boolean[rows + more]), total, 1e-9);
  }

  private static double least(double[][] costs, int row, boolean[] taken) {
    if (row == costs.length) {
      return 0;
    }
    double least = Double.MAX_VALUE;
    for (int j = 0; j < taken.length; j++) {
      if (!taken[j]) {
        taken[j] = true;
        least = Math.min(least, costs[row][j] + least(costs, row + 1, taken));
        taken[j] = false;
      }
    }
    return least;
  }
}
