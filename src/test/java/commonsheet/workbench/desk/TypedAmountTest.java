package commonsheet.workbench.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.export.AmountText;
import commonsheet.record.Statistic;
import commonsheet.review.ReviewException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type; conversions by the definitions of the units (SI Brochure, NIST SP 811). */
class TypedAmountTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3350 mAh | A.h | 3.35 | | | ",
        "3.35 Ah | A.h | 3.35 | | | ",
        "3.350 A·h | A.h | 3.35 | | | ",
        "3,35 Ah | A.h | 3.35 | | | ",
        "3.35 | A.h | 3.35 | | | ",
        "2.875 Ah | A.h | 2.875 | | | ",
        "45 ± 1 g | g | 45 | 44 | 46 | ",
        "45 ±1 | g | 45 | 44 | 46 | ",
        "0.045 kg ± 1 g | g | 45 | 44 | 46 | ",
        "18.3 +0.1/-0.2 mm | mm | 18.3 | 18.1 | 18.4 | ",
        "2.5 to 4.2 V | V | | 2.5 | 4.2 | ",
        "2500 to 4200 mV | V | | 2.5 | 4.2 | ",
        "-20 to 60 °C | Cel | | -20 | 60 | ",
        "-20 ~ +60℃ | Cel | | -20 | 60 | ",
        "−20 to 60 | Cel | | -20 | 60 | ",
        "-20..60 °C | Cel | | -20 | 60 | ",
        "32 °F | Cel | 0 | | | ",
        "25 C | Cel | 25 | | | ",
        "≤ 20 mΩ | mOhm | 20 | | | MAXIMUM",
        "0.02 Ω max. | mOhm | 20 | | | MAXIMUM",
        "min. 3350 mAh | A.h | 3.35 | | | MINIMUM",
        "3350 mAh min. | A.h | 3.35 | | | MINIMUM",
        "typ. 3400 mAh | A.h | 3.4 | | | TYPICAL",
        "50, 47 to 49 g | g | 50 | 47 | 49 | ",
        "300 cycles | 1 | 300 | | | ",
        "80 % | % | 80 | | | ",
        "1.5 oz | g | 42.52428 | | | ",
      })
  void isUnderstood(
      String typed, String ucum, Double value, Double low, Double high, Statistic statistic)
      throws ReviewException {
    TypedAmount amount = TypedAmount.of(typed, ucum);
    near(value, amount.value(), typed);
    near(low, amount.low(), typed);
    near(high, amount.high(), typed);
    assertEquals(statistic, amount.statistic(), typed);
  }

  private static void near(Double expected, Double found, String typed) {
    if (expected == null || found == null) {
      assertEquals(expected, found, typed);
    } else {
      assertEquals(expected, found, 1e-5, typed);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3,350 mAh | A.h",
        "1,000 | A.h",
        "3350 V | A.h",
        "0.5 C | A",
        "about so | A.h",
        "3.35 Ah or 3.4 Ah | A.h",
        "3.35 Ah (new) | A.h",
        "<b>3</b> | A.h",
        "1e999 | A.h",
        "NaN | A.h",
        "45 g ± 1 V | g",
        "3.35.1 Ah | A.h",
        "-- | A.h",
        "' ' | A.h",
      })
  void isRefusedWithASentence(String typed, String ucum) {
    ReviewException refused =
        assertThrows(ReviewException.class, () -> TypedAmount.of(typed, ucum), typed);
    assertTrue(refused.getMessage().length() > 20, refused.getMessage());
  }

  /** The edit field begins with the value as it is: leaving it there must not change a digit. */
  @Test
  void whatTheFieldBeginsWithIsTheValueItself() throws ReviewException {
    Random random = new Random(7);
    for (String unit : List.of("A.h", "V", "A", "g", "mm", "mOhm", "Cel", "%", "1", "W.h/kg")) {
      for (int i = 0; i < 400; i++) {
        double value = sixDigits(random.nextDouble() * Math.pow(10, random.nextInt(6) - 2));
        double below = sixDigits(value - value * random.nextDouble());
        double above = sixDigits(value * (1 + random.nextDouble()));
        same(value, null, null, unit);
        same(value, below, above, unit);
        same(null, below, above, unit);
        same(null, -above, below, unit);
        same(above, below, value, unit);
      }
    }
  }

  private static double sixDigits(double number) {
    return new BigDecimal(number).round(new MathContext(6)).doubleValue();
  }

  private static void same(Double value, Double low, Double high, String unit)
      throws ReviewException {
    String typed = AmountText.exact(value, low, high, unit);
    TypedAmount amount = TypedAmount.of(typed, unit);
    double size =
        Math.max(Math.abs(value == null ? low : value), Math.abs(high == null ? 0 : high));
    equal(value, amount.value(), size, typed);
    equal(low, amount.low(), size, typed);
    equal(high, amount.high(), size, typed);
  }

  private static void equal(Double expected, Double found, double size, String typed) {
    if (expected == null || found == null) {
      assertEquals(expected, found, typed);
    } else {
      assertEquals(expected, found, 1e-7 * size, typed);
    }
  }
}
