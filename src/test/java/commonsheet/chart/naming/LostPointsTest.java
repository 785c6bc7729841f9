package commonsheet.chart.naming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.chart.text.Context;
import commonsheet.chart.text.Phrase;
import commonsheet.quantity.NumberStyle;
import commonsheet.record.Conditions;
import commonsheet.sheet.Box;
import commonsheet.sheet.Word;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How labels are printed and misread: common practice, no source. */
class LostPointsTest {
  private static final LabelReader READER =
      new LabelReader(Context.DISCHARGE, NumberStyle.DECIMAL_POINT);

  private static List<LabelMeaning> family(boolean recognised, String... texts) {
    return LostPoints.ofFamily(labels(recognised, texts), READER).stream()
        .map(CurveLabel::meaning)
        .toList();
  }

  private static List<CurveLabel> labels(boolean recognised, String... texts) {
    return Stream.of(texts)
        .map(text -> new Word(text, new Box(0, 0, 30, 8), 8, false, 0, 0, recognised, 0.99))
        .map(word -> new Phrase(List.of(word), word.box(), 0))
        .map(p -> new CurveLabel(p, READER.read(p.text()), List.of(), List.of()))
        .toList();
  }

  @Test
  void noughtBeforeADigitHadAPoint() {
    assertEquals("0.5C", LostPoints.behindNought("05C"));
    assertEquals("0.25 A", LostPoints.behindNought("025 A"));
    assertEquals("10C", LostPoints.behindNought("10C"));
    assertEquals("0.05C", LostPoints.behindNought("0.05C"));
  }

  @Test
  void aNumberFarBeyondItsFamilyGetsThePointOfTheOthersAndADoubt() {
    List<LabelMeaning> family = family(true, "1.14A", "2.28A", "456A");
    assertEquals(4.56, family.get(2).conditions().get(Conditions.DISCHARGE_CURRENT), 1e-9);
    assertFalse(family.get(2).plain());
    assertTrue(family.get(0).plain());
  }

  @Test
  void wherePointsDifferTheNumberStaysDoubted() {
    List<LabelMeaning> family = family(true, "0.228A", "1.14A", "456A");
    assertEquals(456, family.get(2).conditions().get(Conditions.DISCHARGE_CURRENT), 1e-9);
    assertFalse(family.get(2).plain());
  }

  @Test
  void aLostDegreeSignIsTakenForOneAmongTemperaturesOnly() {
    List<CurveLabel> temperatures =
        LostUnits.ofFamily(labels(true, "+25°C", "0°C", "+60d"), READER);
    LabelMeaning lost = temperatures.get(2).meaning();
    assertEquals(60, lost.conditions().get(Conditions.TEMPERATURE), 1e-9);
    assertFalse(lost.plain());
    List<CurveLabel> rates = LostUnits.ofFamily(labels(true, "0.5C", "1C", "60d"), READER);
    assertTrue(rates.get(2).meaning().isEmpty());
  }

  @Test
  void aFamilyThatGoesUpInStepsIsLeftAlone() {
    for (LabelMeaning meaning : family(true, "0.52A", "2.6A", "5.2A", "10A", "20A")) {
      assertTrue(meaning.plain());
    }
    assertTrue(family(false, "1.14A", "2.28A", "456A").get(2).plain());
  }
}
