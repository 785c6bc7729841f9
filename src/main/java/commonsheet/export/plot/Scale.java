package commonsheet.export.plot;

import commonsheet.quantity.PlainNumber;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The numbers along an axis: a range that ends at ticks, and the ticks, at a step of 1, 2 or 5
 * times a power of ten.
 *
 * @param ticks at least two, ascending, evenly spaced
 */
record Scale(List<BigDecimal> ticks) {
  private static final double[] STEPS = {1, 2, 5, 10};

  /**
   * A scale over at least the range from {@code low} to {@code high}.
   *
   * @param about how many ticks are wanted; there may be up to twice as many spaces
   */
  static Scale over(double low, double high, int about) {
    double span = high > low ? high - low : Math.max(Math.abs(high), 1);
    double power = Math.pow(10, Math.floor(Math.log10(span / about)));
    double step = power;
    for (double times : STEPS) {
      step = times * power;
      if (step * about >= span * (1 - 1e-9)) {
        break;
      }
    }
    BigDecimal exact = new BigDecimal(PlainNumber.of(step, 1));
    long first = (long) Math.floor(low / step + 1e-9);
    long last = Math.max(first + 1, (long) Math.ceil(high / step - 1e-9));
    List<BigDecimal> ticks = new ArrayList<>();
    for (long n = first; n <= last; n++) {
      ticks.add(exact.multiply(BigDecimal.valueOf(n)));
    }
    return new Scale(List.copyOf(ticks));
  }

  double low() {
    return ticks.get(0).doubleValue();
  }

  double high() {
    return ticks.get(ticks.size() - 1).doubleValue();
  }

  /** Where a number stands between the ends: 0 at the low one, 1 at the high one. */
  double share(double value) {
    return (value - low()) / (high() - low());
  }

  /** As printed beside the tick, all with the same decimals. */
  String text(BigDecimal tick) {
    int decimals = Math.max(0, ticks.get(1).subtract(ticks.get(0)).stripTrailingZeros().scale());
    return tick.setScale(decimals, java.math.RoundingMode.HALF_EVEN).toPlainString();
  }
}
