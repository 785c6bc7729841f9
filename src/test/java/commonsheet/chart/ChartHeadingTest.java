package commonsheet.chart;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Headings as invented sheets word them; common practice, no source. */
class ChartHeadingTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Fig. 3",
        "Discharge characteristics at 25 \u00B0C",
        "CYCLE LIFE",
        "\u653E\u7535\u66F2\u7EBF",
        "Entladekennlinien",
        "Storage performance",
        "Surface temperature"
      })
  void chartsAreHeadedSo(String heading) {
    assertTrue(ChartHeading.isOne(heading));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Datasheet", "Outline drawing", "Dimensions (unit: mm)", "Shorefall SF18650-26"})
  void otherDrawingsAreHeadedOtherwise(String heading) {
    assertFalse(ChartHeading.isOne(heading));
  }
}
