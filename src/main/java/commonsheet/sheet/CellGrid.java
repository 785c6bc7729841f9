package commonsheet.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Rectangles on a common grid: the lines of the grid are all their edges, and each rectangle covers
 * one or more of its places. A cell that is taller than its neighbours, because no border divides
 * it, thereby spans rows.
 */
final class CellGrid {
  /** Points within which edges are the same line of the grid. */
  private static final double SAME_EDGE = 3;

  /** A rectangle's first row and column and how many of them it covers. */
  record Place(Box box, int row, int column, int rows, int columns) {}

  private final double[] xs;
  private final double[] ys;
  private final List<Place> places = new ArrayList<>();

  CellGrid(List<Box> boxes) {
    xs = edges(boxes.stream().flatMap(b -> List.of(b.x(), b.right()).stream()).toList());
    ys = edges(boxes.stream().flatMap(b -> List.of(b.y(), b.bottom()).stream()).toList());
    for (Box box : boxes) {
      int column = nearest(xs, box.x());
      int row = nearest(ys, box.y());
      int columns = nearest(xs, box.right()) - column;
      int rows = nearest(ys, box.bottom()) - row;
      if (columns > 0 && rows > 0) {
        places.add(new Place(box, row, column, rows, columns));
      }
    }
    places.sort(Comparator.comparingInt(Place::row).thenComparingInt(Place::column));
  }

  int rows() {
    return Math.max(0, ys.length - 1);
  }

  int columns() {
    return Math.max(0, xs.length - 1);
  }

  List<Place> places() {
    return places;
  }

  /** The box of places of the grid. */
  Box box(int row, int column, int rows, int columns) {
    return new Box(
        xs[column], ys[row], xs[column + columns] - xs[column], ys[row + rows] - ys[row]);
  }

  private static double[] edges(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(v -> v).sorted().toArray();
    double[] out = new double[sorted.length];
    int n = 0;
    double sum = 0;
    int count = 0;
    for (double value : sorted) {
      if (count > 0 && value - sum / count > SAME_EDGE) {
        out[n++] = sum / count;
        sum = 0;
        count = 0;
      }
      sum += value;
      count++;
    }
    if (count > 0) {
      out[n++] = sum / count;
    }
    return Arrays.copyOf(out, n);
  }

  private static int nearest(double[] sorted, double value) {
    int best = 0;
    for (int i = 1; i < sorted.length; i++) {
      if (Math.abs(sorted[i] - value) < Math.abs(sorted[best] - value)) {
        best = i;
      }
    }
    return best;
  }
}
