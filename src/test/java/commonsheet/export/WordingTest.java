package commonsheet.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.Conditions;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How single words and numbers look in a comparison. */
class WordingTest {
  @ParameterizedTest
  @CsvSource({
    "duration, 10, for 10 s",
    "duration, 60, for 60 s",
    "duration, 600, for 10 min",
    "duration, 7200, for 2 h",
    "duration, 2592000, for 30 d",
    "duration, 90061, for 90061 s",
    "frequency, 1000, 1 kHz",
    "frequency, 50, 50 Hz",
    "dischargeCurrent, 0.43, 0.43 A discharge",
    "chargeVoltage, 4.2, charged to 4.2 V",
    "temperatureLow, -20, from -20 °C",
    "temperatureHigh, 45, up to 45 °C",
    "dischargeRate, 0.333333333, 0.33333 C discharge",
    "cycles, 1234567, after 1234567 cycles"
  })
  void aConditionIsSaidInTheTradesWords(String name, double value, String words) {
    assertEquals(words, ConditionText.of(new Conditions(Map.of(name, value))));
  }

  @Test
  void everyConditionHasWordsOfItsOwn() {
    for (String name : Conditions.NAMES) {
      String words = ConditionText.of(new Conditions(Map.of(name, 7.0)));
      assertNotEquals(name + " 7", words);
    }
  }

  @ParameterizedTest
  @CsvSource({"0.1,0.1", "-0.0,0", "4.2,4.2", "0.0018,0.0018", "2592000,2592000", "1e-7,0.0000001"})
  void aNumberIsWrittenPlainly(double number, String text) {
    assertEquals(text, Printed.number(number));
  }

  @Test
  void aToleranceShowsNoBinaryNoise() {
    assertEquals("0.05", Printed.distance(4.2, 4.25));
    assertEquals("0", Printed.distance(0.1 + 0.2, 0.3));
  }

  @Test
  void wordsFromASheetCannotSteerATerminalOrTurnTheWriting() {
    assertEquals("[2J a b", Printed.clean("\u001b[2J\ta\r\nb \u009b"));
    assertEquals("50 Ah", Printed.clean("\u202e50 \u2066Ah"));
    assertEquals("", Printed.clean(null));
  }

  @Test
  void pagesAreListedAsInAnIndex() {
    assertEquals("1, 3-5, 9", PageRanges.text(List.of(1, 3, 4, 5, 9)));
    assertEquals("", PageRanges.text(List.of()));
  }

  @Test
  void wideCharactersTakeTwoColumns() {
    assertEquals(8, Wrapping.width("湖光电池"));
    assertEquals(7, Wrapping.width("mΩ ±1 ×"));
    assertEquals(List.of("湖光", "  电", "  池"), Wrapping.wrapHanging("湖光电池", 5));
  }

  @Property(tries = 200)
  void wrappingLosesNothingAndFits(@ForAll String any, @ForAll @IntRange(min = 4, max = 60) int w) {
    String text = Printed.clean(any);
    List<String> lines = Wrapping.wrapHanging(text, w);
    lines.forEach(line -> assertTrue(Wrapping.width(line) <= w, line));
    assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
  }

  @Test
  void everyNeededQuantityIsCompared() {
    ComparisonLayout layout = ComparisonLayout.standard();
    Set<String> compared =
        layout.columns().stream().map(Column::quantity).collect(Collectors.toSet());
    layout.columns().forEach(column -> assertNotNull(layout.unit(column), column.id()));
    layout
        .needed()
        .forEach(need -> need.anyOf().forEach(set -> assertTrue(compared.containsAll(set))));
  }
}
