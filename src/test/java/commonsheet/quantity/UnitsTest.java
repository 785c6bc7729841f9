package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.format.UnitFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import systems.uom.ucum.format.UCUMFormat;

/**
 * The unit table is a copy of what the UCUM library (JSR-385) says, made because the library starts
 * slowly.
 */
class UnitsTest {
  private static final UnitFormat UCUM = UCUMFormat.getInstance(UCUMFormat.Variant.CASE_SENSITIVE);

  private static final Map<Dimension, String> FIRST_OF_DIMENSION = new HashMap<>();

  static Collection<UnitTable.Entry> entries() {
    for (UnitTable.Entry entry : UnitTable.standard().entries()) {
      FIRST_OF_DIMENSION.putIfAbsent(entry.unit().dimension(), entry.unit().ucum());
    }
    return UnitTable.standard().entries();
  }

  @ParameterizedTest
  @MethodSource("entries")
  void everyUnitIsAUcumCodeAndAsLargeAsUcumSays(UnitTable.Entry entry)
      throws IncommensurableException {
    String code = entry.unit().ucum();
    Unit<?> unit = UCUM.parse(code);
    if (entry.unit().dimension() == Dimension.OTHER) {
      return;
    }
    String base = FIRST_OF_DIMENSION.get(entry.unit().dimension());
    for (double number : new double[] {0, 1, 37.25, -40}) {
      double expected =
          unit.getConverterToAny(UCUM.parse(base)).convert(Double.valueOf(number)).doubleValue();
      double converted = Units.convert(number, code, base);
      assertEquals(expected, converted, 1e-9 * Math.max(1, Math.abs(expected)), code);
      assertEquals(number, Units.convert(converted, base, code), 1e-9, code);
    }
  }

  /**
   * Definitions of the units: SI brochure; international inch, pound and ounce; the Fahrenheit
   * scale.
   */
  @ParameterizedTest
  @CsvSource({
    "2550, mA.h, A.h, 2.55",
    "0.02, Ohm, mOhm, 20",
    "50, mV, V, 0.05",
    "1, [in_i], mm, 25.4",
    "1, [lb_av], g, 453.59237",
    "68, [degF], Cel, 20",
    "-40, Cel, [degF], -40",
    "0, Cel, K, 273.15",
    "90, min, h, 1.5",
    "1, kHz, Hz, 1000",
    "3.2, W.h, mW.h, 3200",
    "1, 30.d, s, 2592000",
    "1, 365.d, s, 31536000",
  })
  void convertsExactly(double number, String from, String to, double expected) {
    assertEquals(expected, Units.convert(number, from, to));
  }

  @ParameterizedTest
  @CsvSource({"A.h, A", "W.h, A.h", "%, 1", "N, kN", "h-1, A", "A.h, furlong", "furlong, m"})
  void refusesWhatDoesNotConvert(String from, String to) {
    assertThrows(IllegalArgumentException.class, () -> Units.convert(1, from, to));
  }

  @Test
  void convertsAToleranceByItsSizeOnly() {
    Figure figure =
        new FigureParser(NumberStyle.DECIMAL_POINT).find("77 °F ± 9 °F").get(0).in("Cel");
    assertEquals(25, figure.value());
    assertEquals(20, figure.low());
    assertEquals(30, figure.high());
  }
}
