package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GivenLoadTest {
  @Test
  void aMixIsReadInAnyOrderAndUnit() {
    Load load = GivenLoad.parse("30A:10%, 13000 mA : 0.9");
    assertEquals(2, load.shares().size());
    assertEquals(new Load.Share(13, 0.9), load.shares().get(0));
    assertEquals(30, load.peak());
    assertEquals(14.7, load.averageCurrent(), 1e-12);
    assertEquals(15, load.sharedAmong(2).peak());
  }

  @Test
  void aCurrentGivenTwiceIsOne() {
    assertEquals(Load.constant(5), GivenLoad.parse("5A:50%,5000mA:50%"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "13A | lacks its share",
        "13A:90%,30A | lacks its share",
        "13A:90%,30A:20% | must add up to 100 %, and give 110 %",
        "13A:90% | must add up to 100 %, and give 90 %",
        "-5A:100% | from 0 to 100000 A",
        "1e9:100% | from 0 to 100000 A",
        "13V:100% | is not in a unit",
        "many:100% | is no number",
        "13A:all | is no number",
        "13A:90 | is no share; write one such as 90% or 0.9",
        "0A:100% | asks nothing"
      })
  void whatIsNoMixIsToldWhy(String text, String reason) {
    String said =
        assertThrows(IllegalArgumentException.class, () -> GivenLoad.parse(text)).getMessage();
    assertTrue(said.contains(reason), said);
  }
}
