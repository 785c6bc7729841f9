package commonsheet.chart.naming;

import java.util.Arrays;

/**
 * Pairs rows with columns so that the whole costs least, each used once: the Hungarian method with
 * potentials, O(n³).
 */
final class Assignment {
  private Assignment() {}

  /**
   * The column of each row.
   *
   * @param costs a matrix with at least as many columns as rows
   */
  static int[] of(double[][] costs) {
    int rows = costs.length;
    int columns = rows == 0 ? 0 : costs[0].length;
    double[] ofRow = new double[rows + 1];
    double[] ofColumn = new double[columns + 1];
    int[] rowOf = new int[columns + 1];
    for (int row = 1; row <= rows; row++) {
      augment(costs, row, ofRow, ofColumn, rowOf);
    }
    int[] columnOf = new int[rows];
    for (int column = 1; column <= columns; column++) {
      if (rowOf[column] > 0) {
        columnOf[rowOf[column] - 1] = column - 1;
      }
    }
    return columnOf;
  }

  /** One shortest way from a free row to a free column, and the pairs along it turned over. */
  private static void augment(
      double[][] costs, int row, double[] ofRow, double[] ofColumn, int[] rowOf) {
    int columns = ofColumn.length - 1;
    int[] cameFrom = new int[columns + 1];
    double[] least = new double[columns + 1];
    boolean[] seen = new boolean[columns + 1];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    rowOf[0] = row;
    int at = 0;
    do {
      seen[at] = true;
      int next = 0;
      double step = Double.POSITIVE_INFINITY;
      for (int column = 1; column <= columns; column++) {
        if (seen[column]) {
          continue;
        }
        double cost = costs[rowOf[at] - 1][column - 1] - ofRow[rowOf[at]] - ofColumn[column];
        if (cost < least[column]) {
          least[column] = cost;
          cameFrom[column] = at;
        }
        if (least[column] < step) {
          step = least[column];
          next = column;
        }
      }
      for (int column = 0; column <= columns; column++) {
        if (seen[column]) {
          ofRow[rowOf[column]] += step;
          ofColumn[column] -= step;
        } else {
          least[column] -= step;
        }
      }
      at = next;
    } while (rowOf[at] != 0);
    while (at != 0) {
      int before = cameFrom[at];
      rowOf[at] = rowOf[before];
      at = before;
    }
  }
}
