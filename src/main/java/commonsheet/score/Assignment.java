package commonsheet.score;

import java.util.Arrays;

/**
 * The pairing of rows with columns that costs least in all: the assignment problem, solved by
 * shortest augmenting paths (Kuhn's Hungarian method in the form of Jonker and Volgenant, Computing
 * 38, 1987, pp. 325-340), in rows² × columns steps.
 */
final class Assignment {
  private static final int NONE = -1;

  private Assignment() {}

  /**
   * Pairs as many rows with columns as there are of the fewer.
   *
   * @param cost of each row with each column; every row of the same length; finite
   * @return for each row the column paired with it, or -1
   */
  static int[] solve(double[][] cost) {
    int rows = cost.length;
    int columns = rows == 0 ? 0 : cost[0].length;
    if (rows <= columns) {
      return solveWide(cost, rows, columns);
    }
    double[][] turned = new double[columns][rows];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        turned[c][r] = cost[r][c];
      }
    }
    int[] rowOfColumn = solveWide(turned, columns, rows);
    int[] columnOfRow = new int[rows];
    Arrays.fill(columnOfRow, NONE);
    for (int c = 0; c < columns; c++) {
      columnOfRow[rowOfColumn[c]] = c;
    }
    return columnOfRow;
  }

  /** The method itself; it needs at least as many columns as rows. */
  private static int[] solveWide(double[][] cost, int rows, int columns) {
    double[] rowPrice = new double[rows];
    double[] columnPrice = new double[columns];
    int[] rowOfColumn = new int[columns];
    Arrays.fill(rowOfColumn, NONE);
    for (int start = 0; start < rows; start++) {
      double[] shortest = new double[columns];
      int[] cameFrom = new int[columns];
      boolean[] settled = new boolean[columns];
      Arrays.fill(shortest, Double.POSITIVE_INFINITY);
      Arrays.fill(cameFrom, NONE);
      int row = start;
      int last = NONE;
      double length = 0;
      while (row != NONE) {
        int nearest = NONE;
        for (int c = 0; c < columns; c++) {
          if (settled[c]) {
            continue;
          }
          double path = length + cost[row][c] - rowPrice[row] - columnPrice[c];
          if (path < shortest[c]) {
            shortest[c] = path;
            cameFrom[c] = last;
          }
          if (nearest == NONE || shortest[c] < shortest[nearest]) {
            nearest = c;
          }
        }
        length = shortest[nearest];
        settled[nearest] = true;
        last = nearest;
        row = rowOfColumn[nearest];
      }
      raisePrices(start, length, shortest, settled, rowOfColumn, rowPrice, columnPrice);
      for (int c = last; c != NONE; c = cameFrom[c]) {
        rowOfColumn[c] = cameFrom[c] == NONE ? start : rowOfColumn[cameFrom[c]];
      }
    }
    int[] columnOfRow = new int[rows];
    for (int c = 0; c < columns; c++) {
      if (rowOfColumn[c] != NONE) {
        columnOfRow[rowOfColumn[c]] = c;
      }
    }
    return columnOfRow;
  }

  private static void raisePrices(
      int start,
      double length,
      double[] shortest,
      boolean[] settled,
      int[] rowOfColumn,
      double[] rowPrice,
      double[] columnPrice) {
    rowPrice[start] += length;
    for (int c = 0; c < settled.length; c++) {
      if (settled[c] && rowOfColumn[c] != NONE) {
        rowPrice[rowOfColumn[c]] += length - shortest[c];
        columnPrice[c] -= length - shortest[c];
      }
    }
  }
}
