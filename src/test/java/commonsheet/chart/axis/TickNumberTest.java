package commonsheet.chart.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TickNumberTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.5|2.5",
        "1,000|1000",
        "1 000|1000",
        "−20|-20",
        "–10|-10",
        "100%|100",
        "0.0|0",
        "1E3|1000",
        "１２００|1200",
        "10^2|100",
        ".5|0.5",
        "4.2V|4.2",
        "+60|60",
        "20℃|20"
      })
  void readsNumbersOfAxes(String text, double value) {
    assertEquals(value, TickNumber.of(text, false).value());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "V", "0.2C (550mA)", "CC 2C", "1.2.3", "25-30", "Fig.1"})
  void leavesOtherWords(String text) {
    assertNull(TickNumber.of(text, false));
  }

  @Test
  void readsDecimalCommas() {
    assertEquals(2.5, TickNumber.of("2,5", true).value());
  }

  @Test
  void takesGluedNumbersApart() {
    assertEquals(List.of("0.0", "0.5", "1.0", "1.5"), GluedNumbers.of("0.00.51.01.5"));
    assertEquals(List.of("0", "100", "200", "300"), GluedNumbers.of("0100200300"));
    assertEquals(List.of(), GluedNumbers.of("2024"));
    assertEquals(List.of(), GluedNumbers.of("1000"));
  }
}
