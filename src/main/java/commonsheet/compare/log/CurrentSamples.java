package commonsheet.compare.log;

import java.util.Arrays;

/** A current over time, sample by sample; straight between samples. */
final class CurrentSamples {
  /** Ten samples a second for six days. */
  static final int MOST = 5_000_000;

  private static final int FIRST_ROOM = 4096;

  private double[] time = new double[FIRST_ROOM];
  private double[] current = new double[FIRST_ROOM];
  private int size;

  /**
   * Adds a sample.
   *
   * @param seconds not before the one added last
   */
  void add(double seconds, double amperes) {
    if (size == time.length) {
      time = Arrays.copyOf(time, 2 * size);
      current = Arrays.copyOf(current, 2 * size);
    }
    time[size] = seconds;
    current[size] = amperes;
    size++;
  }

  int size() {
    return size;
  }

  /** In s. */
  double time(int sample) {
    return time[sample];
  }

  /** In A. */
  double current(int sample) {
    return current[sample];
  }

  /** The same samples with their currents multiplied. */
  CurrentSamples times(double factor) {
    CurrentSamples scaled = new CurrentSamples();
    scaled.time = time;
    scaled.current = Arrays.stream(current, 0, size).map(c -> c * factor).toArray();
    scaled.size = size;
    return scaled;
  }

  /** The time between a sample and the one before it that stands in the middle of all, in s. */
  double middleStep() {
    double[] steps = new double[Math.max(1, size - 1)];
    for (int i = 1; i < size; i++) {
      steps[i - 1] = time[i] - time[i - 1];
    }
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }
}
