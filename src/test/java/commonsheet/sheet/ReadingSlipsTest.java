package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Slips seen on scans, and words that only look like one. */
class ReadingSlipsTest {
  private static List<Word> row(String text) {
    List<Word> words = new ArrayList<>();
    double x = 50;
    for (String word : text.split(" ")) {
      Box box = new Box(x, 100, 5 * word.length(), 8);
      words.add(new Word(word, box, 9, false, 0, 0, true, 0.95));
      x = box.right() + 3;
    }
    return words;
  }

  private static String mended(String text) {
    return String.join(" ", ReadingSlips.mended(row(text)).stream().map(Word::text).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.2CsA|0.2C5A",
        "O ℃ to 15℃|0 ℃ to 15℃",
        "O.2C|0.2C",
        "1O0 mA|100 mA",
        "l.5 A|1.5 A",
        "I8650|18650",
        "0.2C to2.5V.25℃|0.2C to 2.5V, 25℃",
        "Internal resistance 24 ms|Internal resistance 24 mΩ",
        "内阻 60mQ|内阻 60mΩ",
        "0.2Cwith2.oV|0.2C with 2.0V",
        "at25℃|at 25℃",
        "CC-CV0.5C,|CC-CV 0.5C,",
        "2.0Vcut-off|2.0V cut-off",
        "Max.50.5mm|Max. 50.5mm",
        "+10to +45C|+10 to +45℃",
        "store at 25+2 ℃|store at 25±2 ℃",
        "55土2℃|55±2℃",
        "23±2C,|23±2℃,",
        "30 s, 50% S0C,|30 s, 50% SOC,",
        "1c|1C",
        "Lithium lon|Lithium Ion",
        "Li-lon|Li-Ion",
        "2.5V, 23 *C)|2.5V, 23 ℃)",
        "23±5*C|23±5℃",
        "Impedance'4|Impedance*4",
        "596Wh/1|596Wh/l",
        "35 A 5 S|35 A 5 s",
        "550mAto|550mA to"
      })
  void mends(String seen, String printed) {
    assertEquals(printed, mended(seen));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pulse 500 ms",
        "SOC 50 %",
        "NiCoMn O",
        "5l",
        "2.5V.",
        "Issue 4. March",
        "to 45",
        "LiFePO4",
        "ICR18650",
        "A18650",
        "AT21700",
        "CC18650",
        "2.5+1",
        "10C",
        "-0.5C",
        "lon",
        "Cat.2",
        "20 to 45",
        "Series S",
        "Note *C",
        "0.5C"
      })
  void leavesAlone(String text) {
    assertEquals(text, mended(text));
  }

  @Test
  void whatWasMendedIsNotSure() {
    List<Word> words = ReadingSlips.mended(row("O ℃"));
    assertEquals(0.5, words.get(0).confidence());
    assertEquals(0.95, words.get(1).confidence());
  }

  @Test
  void aSpacePutInLeavesAWordAsSureAsItWas() {
    assertEquals(0.95, ReadingSlips.mended(row("to2.5V")).get(0).confidence());
  }

  @Test
  void whatIsWrittenIsNotTouched() {
    Word written = new Word("O.2C", new Box(50, 100, 20, 8), 9, false, 0, 0, false, 1);
    assertTrue(ReadingSlips.mended(List.of(written)).contains(written));
  }
}
