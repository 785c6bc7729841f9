package commonsheet.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.StringJoiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FigureParserTest {
  private final FigureParser parser = new FigureParser(NumberStyle.DECIMAL_POINT);

  /** What the trade prints and how a careful person reads it: figures.csv. */
  @ParameterizedTest
  @CsvFileSource(resources = "figures.csv", numLinesToSkip = 1, emptyValue = "")
  void readsWhatTheTradePrints(String text, String figures) {
    StringJoiner read = new StringJoiner(" | ");
    parser.find(text).forEach(figure -> read.add(inShort(figure)));
    assertEquals(figures, read.toString());
  }

  @Test
  void keepsThePlaceAndTheWordsAsPrinted() {
    String text = "Capacity： Min． ２，５５０ mAh at 0.2C";
    List<Figure> figures = parser.find(text);
    Figure capacity = figures.get(0);
    assertEquals("Min． ２，５５０ mAh", capacity.text());
    assertEquals(text.indexOf("Min"), capacity.start());
    assertEquals(capacity.text(), text.substring(capacity.start(), capacity.end()));
    assertEquals("0.2C", figures.get(1).text());
  }

  @ParameterizedTest
  @CsvSource({
    // A comma or point before three digits: the sheet's style decides unless the unit makes it
    // absurd.
    "DECIMAL_POINT, '2,550 mAh', 2550, false",
    "DECIMAL_COMMA, '2.550 mAh', 2550, false",
    "DECIMAL_COMMA, '2,550 mAh', 2550, true",
    "DECIMAL_POINT, '4,200 V', 4.2, true",
    "DECIMAL_POINT, '4.200 V', 4.2, false",
    "DECIMAL_COMMA, '4,200 V', 4.2, false",
    "DECIMAL_POINT, '1,250 mm', 1250, true",
    "DECIMAL_POINT, '2,550', 2550, false",
    "DECIMAL_COMMA, '2.550', 2550, true",
    "DECIMAL_COMMA, '3,7 V', 3.7, false",
    "DECIMAL_COMMA, '3.7 V', 3.7, false",
    "DECIMAL_POINT, '0,125 A', 0.125, false",
  })
  void readsThousandsAndDecimals(NumberStyle style, String text, double value, boolean ambiguous) {
    Figure figure = new FigureParser(style).find(text).get(0);
    assertEquals(value, figure.value());
    assertEquals(ambiguous, figure.ambiguous());
  }

  @Test
  void convertsAFigureWithItsTolerance() {
    Figure grams = parser.find("Weight: 0.048±0.001 kg").get(0).in("g");
    assertEquals(48, grams.value());
    assertEquals(47, grams.low());
    assertEquals(49, grams.high());
    assertEquals(new TradeUnit("g", Dimension.MASS), grams.unit());
    assertEquals("0.048±0.001 kg", grams.text());
  }

  @Test
  void convertsARangeWithoutValue() {
    Figure celsius = parser.find("32 to 113 °F").get(0).in("Cel");
    assertTrue(celsius.isRange());
    assertNull(celsius.value());
    assertEquals(0, celsius.low());
    assertEquals(45, celsius.high());
  }

  @Test
  void refusesToConvertAcrossDimensions() {
    Figure charge = parser.find("1050mAh").get(0);
    assertThrows(IllegalArgumentException.class, () -> charge.in("A"));
    Figure bare = parser.find("1050").get(0);
    assertThrows(IllegalArgumentException.class, () -> bare.in("A"));
  }

  @Test
  void neverTakesAJoiningHyphenForAMinus() {
    for (String text : List.of("QT102030-2000mAh", "3.7V-20℃", "(A)-10A", "cell-5V")) {
      assertFalse(
          parser.find(text).stream().anyMatch(f -> f.value() != null && f.value() < 0), text);
    }
  }

  /** A page of ornament, or of one endless number, is no figure and no trouble. */
  @ParameterizedTest
  @ValueSource(strings = {"≥", ":", "Max.:", "1.", "1,", "(", "±", "-", "1-", "~1", "9", "C/", "°"})
  void survivesLongRuns(String part) {
    String text = "Min. " + part.repeat(5000) + " 3.7V";
    assertTrue(parser.find(text).stream().allMatch(figure -> figure.text().length() < 50));
  }

  @Test
  void readsAListOfNumbers() {
    List<Figure> figures = parser.find("20,25,30,35,40,45,50,55,60 ℃");
    assertEquals(9, figures.size());
    assertEquals(new TradeUnit("Cel", Dimension.TEMPERATURE), figures.get(8).unit());
  }

  static String inShort(Figure figure) {
    StringJoiner out = new StringJoiner(" ");
    if (figure.value() != null) {
      out.add(number(figure.value()));
    }
    if (figure.low() != null) {
      out.add("[" + number(figure.low()) + " " + number(figure.high()) + "]");
    }
    out.add(figure.unit() == null ? "-" : figure.unit().ucum());
    if (figure.bound() != Bound.NONE) {
      out.add(figure.bound().name());
    }
    if (figure.qualifier() != null) {
      out.add(figure.qualifier().name());
    }
    if (figure.approximate()) {
      out.add("approximate");
    }
    if (figure.ambiguous()) {
      out.add("ambiguous");
    }
    return out.toString();
  }

  private static String number(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
