package commonsheet.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import commonsheet.compare.Figure;
import commonsheet.compare.Origin;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureTextTest {
  /** No finer than it is known, and never coarser than its whole number. */
  @ParameterizedTest
  @CsvSource({
    "3.8123, 3.80, 3.83, 3.81~",
    "3.8123, 3.7, 3.9, 3.8~",
    "3.8123, 3.8121, 3.8125, 3.812~",
    "216.4, 200, 232, 216~",
    "4.0, 3.98, 4.02, 4.00~",
    "0.05, 0.04, 0.06, 0.05~"
  })
  void aNumberHasTheDigitsThatItIsKnownTo(double value, double low, double high, String text) {
    assertEquals(text, FigureText.of(figure(value, low, high, Origin.INTERPOLATED, false)));
  }

  @Test
  void marksTellWhereItComesFrom() {
    assertEquals("14.4", FigureText.of(figure(14.4, null, null, Origin.STATED, false)));
    assertEquals("14.4?", FigureText.of(figure(14.4, null, null, Origin.STATED, true)));
    assertEquals("3.65=", FigureText.of(figure(3.65, null, null, Origin.CURVE, false)));
    assertEquals("2.5*?", FigureText.of(figure(2.5, null, null, Origin.MODELLED, true)));
    assertEquals("-", FigureText.of(Figure.absent("no curve")));
  }

  @Test
  void aBoundIsRoundedAwayFromWhatIsKnown() {
    assertEquals("≤ 3.09", FigureText.of(figure(null, null, 3.0812, Origin.BOUNDED, false)));
    assertEquals("≥ 3.08", FigureText.of(figure(null, 3.0892, null, Origin.BOUNDED, false)));
  }

  @Test
  void theLegendExplainsWhatOccursAndNothingElse() {
    assertEquals(
        List.of(
            "no mark: stated by the sheet",
            "? rests on something that is in doubt or on an assumption; compare the sheet"),
        FigureText.legend(List.of(figure(1.0, null, null, Origin.STATED, true))));
  }

  private static Figure figure(
      Double value, Double low, Double high, Origin origin, boolean unsure) {
    return new Figure(value, low, high, origin, List.of(), List.of(), unsure);
  }
}
