package commonsheet.chart.points;

import java.util.Arrays;

/** The samples of a measured log in canonical units, in the order of time. */
final class LogSamples {
  /** Ten samples a second for six days. */
  static final int MOST = 5_000_000;

  private static final int FIRST_ROOM = 4096;

  private double[] time = new double[FIRST_ROOM];
  private double[] current = new double[FIRST_ROOM];
  private double[] voltage = new double[FIRST_ROOM];
  private double[] ambient = new double[FIRST_ROOM];
  private int size;

  /**
   * Adds a sample.
   *
   * @param seconds not before the one added last
   * @param celsius of the surroundings; not a number where the log has none
   */
  void add(double seconds, double amperes, double volts, double celsius) {
    if (size == time.length) {
      int room = 2 * size;
      time = Arrays.copyOf(time, room);
      current = Arrays.copyOf(current, room);
      voltage = Arrays.copyOf(voltage, room);
      ambient = Arrays.copyOf(ambient, room);
    }
    time[size] = seconds;
    current[size] = amperes;
    voltage[size] = volts;
    ambient[size] = celsius;
    size++;
  }

  int size() {
    return size;
  }

  /** In s. */
  double time(int sample) {
    return time[sample];
  }

  /** In A, with the sign the log gives it. */
  double current(int sample) {
    return current[sample];
  }

  /** In V. */
  double voltage(int sample) {
    return voltage[sample];
  }

  /** In °C, or not a number. */
  double ambient(int sample) {
    return ambient[sample];
  }
}
