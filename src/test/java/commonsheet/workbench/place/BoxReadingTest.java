package commonsheet.workbench.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import commonsheet.quantity.NumberStyle;
import commonsheet.quantity.QuantityCatalogue;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoxReadingTest {
  private static final Box ALL = new Box(0, 0, 1000, 100);

  private static List<Word> words(String text) {
    List<Word> words = new ArrayList<>();
    double x = 0;
    for (String each : text.split(" ")) {
      words.add(new Word(each, new Box(x, 0, 50, 10), 10, false, 0, 0, false, 1));
      x += 60;
    }
    return words;
  }

  private static BoxReading read(String text, String quantity) {
    return BoxReading.of(
        words(text),
        ALL,
        NumberStyle.DECIMAL_POINT,
        quantity == null ? null : QuantityCatalogue.standard().get(quantity));
  }

  @ParameterizedTest
  @CsvSource({
    "Min. 3350mAh, capacity, 3350 mAh, minimum",
    "Charge voltage 4.20V ±0.03V, chargeVoltage, 4.2 ± 0.03 V,",
    "≤ 20 mΩ, internalResistanceAC, 20 mΩ, maximum",
    "Discharge -20 to +60°C, dischargeTemperature, -20 ~ 60 °C,",
    "typ. 3.35 Ah at 0.2C to 2.5V, capacity, 3.35 Ah, typical",
    "typ. 3.35 Ah at 0.2C to 2.5V, dischargeCutoffVoltage, 2.5 V,",
  })
  void figureOfTheQuantityIsProposed(String text, String quantity, String typed, String statistic) {
    BoxReading read = read(text, quantity);
    assertEquals(text, read.text());
    assertEquals(typed, read.typed());
    assertEquals(statistic, read.statistic());
    assertEquals(quantity, read.quantity());
    assertNull(read.doubt());
  }

  @Test
  void withoutAQuantityTheFirstFigureWithAUnitIsProposed() {
    assertEquals("45 g", read("Table 3 Mass 45 g", null).typed());
  }

  @Test
  void severalFiguresAreSaid() {
    BoxReading read = read("2.5 V 4.2 V", "chargeVoltage");
    assertEquals("2.5 V", read.typed());
    assertEquals("The box holds 2 figures; this is the first one.", read.doubt());
  }

  @Test
  void whatCanBeReadInTwoWaysIsSaid() {
    assertNotNull(read("4,200 V", "chargeVoltage").doubt());
  }

  @Test
  void figureOfAnotherQuantityIsNoProposal() {
    BoxReading read = read("Mass 45 g", "capacity");
    assertNull(read.typed());
    assertEquals("The words do not say capacity.", read.doubt());
  }

  @Test
  void onlyWordsWithinTheBoxCount() {
    BoxReading read =
        BoxReading.of(
            words("Mass 45g 46g"), new Box(55, -2, 60, 14), NumberStyle.DECIMAL_POINT, null);
    assertEquals("45g", read.text());
    assertEquals("45 g", read.typed());
  }

  @Test
  void emptyBoxSaysSo() {
    BoxReading read =
        BoxReading.of(words("Mass"), new Box(500, 50, 9, 9), NumberStyle.DECIMAL_POINT, null);
    assertEquals("There are no words in this box.", read.doubt());
  }
}
