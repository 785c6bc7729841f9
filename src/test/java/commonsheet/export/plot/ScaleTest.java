package commonsheet.export.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ScaleTest {
  @Test
  void ticksAreRoundNumbersWithEqualDecimals() {
    assertEquals(
        List.of("3.0", "3.2", "3.4", "3.6", "3.8", "4.0", "4.2"), texts(Scale.over(3.0, 4.15, 7)));
    assertEquals(
        List.of("0", "5", "10", "15", "20", "25", "30", "35"), texts(Scale.over(0, 34, 7)));
    assertEquals(List.of("0", "500", "1000"), texts(Scale.over(0, 1000, 3)));
    assertEquals(List.of("-0.4", "-0.2", "0.0", "0.2"), texts(Scale.over(-0.3, 0.2, 3)));
  }

  @Test
  void oneNumberAloneHasAScaleToo() {
    Scale scale = Scale.over(3, 3, 7);
    assertTrue(scale.low() <= 3 && scale.high() > 3);
  }

  @Property
  void theScaleHoldsItsRangeWithFewTicks(
      @ForAll @DoubleRange(min = -1e4, max = 1e4) double low,
      @ForAll @DoubleRange(min = 0.01, max = 1e4) double span) {
    Scale scale = Scale.over(low, low + span, 7);
    double step = (scale.high() - scale.low()) / (scale.ticks().size() - 1);
    assertTrue(scale.low() <= low + step * 1e-6);
    assertTrue(scale.high() >= low + span - step * 1e-6);
    assertTrue(scale.ticks().size() >= 2 && scale.ticks().size() <= 9, scale.toString());
  }

  private static List<String> texts(Scale scale) {
    return scale.ticks().stream().map(scale::text).toList();
  }
}
