package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberStyleTest {
  @ParameterizedTest
  @CsvSource({
    "'', DECIMAL_POINT",
    "'Nominal voltage 3.7V', DECIMAL_POINT",
    "'Nennspannung 3,7 V, Ladestrom 0,5C', DECIMAL_COMMA",
    "'Capacity 2,550mAh', DECIMAL_POINT",
    "'Kapazität 2.550 mAh', DECIMAL_COMMA",
    "'1.000 Zyklen', DECIMAL_COMMA",
    // A few stray commas do not turn a sheet around.
    "'3.70V 4.20V 2.75V 0.2C tolerance 0,3 mm', DECIMAL_POINT",
    // Neither section numbers nor dates speak.
    "'2.10 Storage, 27.08.2015, 3,7 V', DECIMAL_COMMA",
    "'12,500 and 3.7', DECIMAL_POINT",
  })
  void decidesFromUnambiguousNumbers(String sheet, NumberStyle style) {
    assertEquals(style, NumberStyle.of(sheet));
  }
}
