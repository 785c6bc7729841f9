package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GivenQuantityTest {
  @ParameterizedTest
  @CsvSource({
    "10, A, 10", "10A, A, 10", "9500mA, A, 9.5", "9500 mA, A, 9.5", "0.0095 kA, A, 9.5",
    "'9,5 A', A, 9.5", "1e1, A, 10", "-20, Cel, -20", "−20 °C, Cel, -20", "77°F, Cel, 25",
    "23C, Cel, 23", "8200 mAh, A.h, 8.2", "2800mV, V, 2.8"
  })
  void aNumberMayHaveAUnit(String text, String ucum, double expected) {
    assertEquals(expected, GivenQuantity.parse(text, ucum), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "ten", "10 V", "10 Ah", "10,500 mA", "1e999", "10 10", "A10", "NaN"})
  void whatIsNoCurrentIsRefused(String text) {
    assertThrows(IllegalArgumentException.class, () -> GivenQuantity.parse(text, "A"));
  }
}
