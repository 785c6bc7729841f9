package commonsheet.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is worth a second reading: places are those of the words the test lays out. */
class SecondReadingTest {
  private static Word word(String text, Box box, int turn, double confidence) {
    return new Word(text, box, 10, false, turn, 0, true, confidence);
  }

  private static Word level(String text, double x) {
    return word(text, new Box(x, 100, 6 * text.length(), 8), 0, 0.99);
  }

  @Test
  void numbersUnitsAndRelationsAreReadTwice() {
    for (String text : List.of("2600", "2.5V", "mAh", "\u2264", "18650")) {
      assertTrue(SecondReading.isNeeded(level(text, 0)), text);
    }
    assertFalse(SecondReading.isNeeded(level("capacity", 0)));
  }

  @Test
  void aNumberAndItsUnitAreOnePlaceAndProseIsNone() {
    List<Word> line =
        List.of(
            level("Nominal", 60), level("capacity", 108), level("2600", 200), level("mAh", 227));
    assertEquals(List.of(new TextPlace(new Box(200, 100, 45, 8), 0)), SecondReading.places(line));
  }

  @Test
  void figuresOfTwoColumnsAreTwoPlaces() {
    assertEquals(2, SecondReading.places(List.of(level("3.6", 60), level("3.7", 120))).size());
  }

  @Test
  void wordsOnTheirSideJoinAlongTheirOwnDirection() {
    Word number = word("20", new Box(40, 100, 8, 12), 90, 0.99);
    Word unit = word("mm", new Box(40, 84, 8, 13), 90, 0.99);
    assertEquals(
        List.of(new TextPlace(new Box(40, 84, 8, 28), 90)),
        SecondReading.places(List.of(number, unit)));
  }
}
