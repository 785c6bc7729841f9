package commonsheet.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class AssignmentTest {
  @Example
  void takingTheCheapestFirstIsNotTheCheapestInAll() {
    assertArrayEquals(new int[] {1, 0}, Assignment.solve(new double[][] {{1, 2}, {2, 10}}));
  }

  @Example
  void nothingToPair() {
    assertArrayEquals(new int[] {}, Assignment.solve(new double[][] {}));
    assertArrayEquals(new int[] {-1, -1}, Assignment.solve(new double[][] {{}, {}}));
  }

  /** Against the definition: the least of the costs of all pairings, tried one by one. */
  @Property(tries = 300)
  void noOtherPairingCostsLess(@ForAll("costs") double[][] cost) {
    int[] paired = Assignment.solve(cost);
    int columns = cost[0].length;
    long distinct = Arrays.stream(paired).filter(c -> c >= 0).distinct().count();
    assertEquals(Math.min(cost.length, columns), distinct);
    assertEquals(distinct, Arrays.stream(paired).filter(c -> c >= 0).count());
    double sum = 0;
    for (int r = 0; r < cost.length; r++) {
      sum += paired[r] < 0 ? 0 : cost[r][paired[r]];
    }
    int free = Math.max(0, cost.length - columns);
    assertEquals(least(cost, 0, free, new boolean[columns]), sum, 1e-9);
  }

  private static double least(double[][] cost, int row, int free, boolean[] taken) {
    if (row == cost.length) {
      return 0;
    }
    double least = free > 0 ? least(cost, row + 1, free - 1, taken) : Double.POSITIVE_INFINITY;
    for (int c = 0; c < taken.length; c++) {
      if (!taken[c]) {
        taken[c] = true;
        least = Math.min(least, cost[row][c] + least(cost, row + 1, free, taken));
        taken[c] = false;
      }
    }
    return least;
  }

  @Provide
  Arbitrary<double[][]> costs() {
    Arbitrary<Integer> size = Arbitraries.integers().between(1, 5);
    Arbitrary<Double> one = Arbitraries.integers().between(-20, 20).map(i -> i / 4.0);
    return size.flatMap(
        rows ->
            size.flatMap(
                columns ->
                    one.array(double[].class)
                        .ofSize(columns)
                        .array(double[][].class)
                        .ofSize(rows)));
  }
}
