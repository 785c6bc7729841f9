package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CharactersTest {
  /**
   * Codes of the Symbol font by PDF 32000-1, annex D.5; radicals by the Unicode Character Database.
   */
  @ParameterizedTest
  @CsvSource({
    "F0B0, 00B0", "F0B1, 00B1", "F057, 03A9", "F06D, 03BC", "F0A3, 2264", "F0B3, 2265",
    "F07E, 007E", "F02B, 002B", "F02D, 2212", "2126, 03A9", "00B5, 03BC", "2ED3, 957F",
    "2F64, 7528", "2ECB, 8F66", "F900, 8C48", "00A0, 0020", "3000, 0020", "FF12, FF12",
    "FB01, FB01", "2103, 2103"
  })
  void characterComesInItsCommonForm(String code, String expected) {
    String given = Character.toString(Integer.parseInt(code, 16));
    assertEquals(
        Character.toString(Integer.parseInt(expected, 16)), Characters.normalise(given, false));
  }

  @ParameterizedTest
  @CsvSource({"00AD", "200B", "FEFF", "0001"})
  void silentCharacterGoes(String code) {
    assertEquals("", Characters.normalise(Character.toString(Integer.parseInt(code, 16)), false));
  }
}
