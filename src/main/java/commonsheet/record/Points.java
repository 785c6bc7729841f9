package commonsheet.record;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;

/** The points of a curve: pairs of x and y that take 16 bytes each. */
final class Points extends AbstractList<List<Double>> implements RandomAccess {
  /** x and y in turn. */
  private final double[] numbers;

  private Points(double[] numbers) {
    this.numbers = numbers;
  }

  /**
   * Points of numbers that nobody else holds.
   *
   * @param numbers x and y in turn
   */
  static Points of(double[] numbers) {
    return new Points(numbers);
  }

  /** The same points, which no one can change; pairs in this form, anything else as it is. */
  static List<List<Double>> of(List<List<Double>> points) {
    if (points instanceof Points) {
      return points;
    }
    double[] numbers = new double[2 * points.size()];
    int next = 0;
    for (List<Double> point : points) {
      if (point.size() != 2) {
        return points.stream().map(List::copyOf).toList();
      }
      numbers[next++] = point.get(0);
      numbers[next++] = point.get(1);
    }
    return new Points(numbers);
  }

  /** The x (0) or y (1) of all points. */
  static double[] along(List<List<Double>> points, int axis) {
    double[] along = new double[points.size()];
    if (points instanceof Points pairs) {
      for (int i = 0; i < along.length; i++) {
        along[i] = pairs.numbers[2 * i + axis];
      }
    } else {
      Arrays.setAll(along, i -> points.get(i).get(axis));
    }
    return along;
  }

  @Override
  public List<Double> get(int index) {
    return List.of(numbers[2 * index], numbers[2 * index + 1]);
  }

  @Override
  public int size() {
    return numbers.length / 2;
  }
}
