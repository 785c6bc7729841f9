package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PlainNumberTest {
  @Test
  void noExponentAndNoZerosAtTheEnd() {
    assertEquals("2.5", PlainNumber.of(2.50, 8));
    assertEquals("0.00001", PlainNumber.of(1e-5, 8));
    assertEquals("0", PlainNumber.of(-0.0, 8));
  }

  @Test
  void wholeDigitsAreNeverRoundedAway() {
    assertEquals("31536000", PlainNumber.of(31_536_000, 6));
    assertEquals("12345679", PlainNumber.of(12_345_678.9, 6));
  }

  @Test
  void whatIsNoNumberIsRefused() {
    assertThrows(NumberFormatException.class, () -> PlainNumber.of(Double.NaN, 6));
  }

  @Property
  void readingItAgainDiffersByNoMoreThanTheDigitsLeftOut(
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
    double again = new BigDecimal(PlainNumber.of(value, 8)).doubleValue();
    assertEquals(value, again, Math.abs(value) * 5.1e-8 + Double.MIN_NORMAL);
  }
}
