package commonsheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.quantity.QuantityCatalogue;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.RecordJson;
import commonsheet.record.RecordValidator;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever stands in a table: it is read without a fault, and what is read has its evidence. */
class ArbitraryTablesTest {
  private static final QuantityCatalogue QUANTITIES = QuantityCatalogue.standard();

  private static final String[] WORDS = {
    "Item",
    "Value",
    "Min.",
    "Typ",
    "Max",
    "Unit",
    "Condition",
    "Model",
    "LM18-26",
    "LM603048",
    "No.",
    "1",
    "2.1",
    "",
    "",
    "^",
    "<",
    "Nominal capacity",
    "Capacity",
    "Charge",
    "Discharge current",
    "Max. charge current",
    "Cut-off voltage",
    "Storage temperature",
    "Operating temperature",
    "Cycle life",
    "Capacity retention",
    "Internal resistance",
    "Weight",
    "T × W × L",
    "Diameter",
    "Standard charge",
    "Short circuit",
    "*1",
    "¹",
    "(1)",
    "*1 At 0.2C to 2.75 V",
    "mAh",
    "V",
    "°C",
    "2600 mAh",
    "2.6 Ah",
    "3.6 V",
    "4.20 ± 0.05 V",
    "0.2C",
    "1C/1C",
    "1.3 A",
    "≤ 25 mΩ",
    "46.5 g",
    "-20 ~ 60 °C",
    "1 month",
    "0 °C 25 °C 60 °C",
    "95 % 90 % 80 %",
    "≥ 80 %",
    "500 cycles",
    "5.0 × 34 × 50 mm",
    "-",
    "(",
    ")",
    "±",
    "标称容量",
    "2500mAh（0.2C放电）",
    "Nennspannung",
    "3,6 V",
    "Charge: 0~45℃\nDischarge: -20~60℃",
    "CC/CV 4.2 V, 0.05C cut-off",
    "𝟚𝟞",
    "\u00A0",
    "…………… 3"
  };

  @Provide
  Arbitrary<Pages> pages() {
    Arbitrary<String> text =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(9, Arbitraries.of(WORDS)),
            net.jqwik.api.Tuple.of(
                1, Arbitraries.strings().ofMaxLength(12).map(s -> s.replace('|', '/'))));
    Arbitrary<List<String>> texts = text.list().ofSize(60);
    return Combinators.combine(
            texts,
            Arbitraries.integers().between(1, 6),
            Arbitraries.integers().between(1, 8),
            Arbitraries.of(true, false))
        .as(ArbitraryTablesTest::page);
  }

  private static Pages page(List<String> texts, int columns, int rows, boolean ruled) {
    List<String> written = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      List<String> cells = new ArrayList<>(texts.subList(row * columns, (row + 1) * columns));
      for (int column = 0; column < columns; column++) {
        boolean free = cells.get(column).equals("^") && row == 0;
        if (free || cells.get(column).equals("<") && (column == 0 || row > 0)) {
          cells.set(column, "");
        }
      }
      written.add(String.join(" | ", cells));
    }
    Pages page = Pages.page().line(texts.get(58)).heading(texts.get(59));
    String[] all = written.toArray(String[]::new);
    return ruled ? page.table(all) : page.columns(all);
  }

  @Property
  void everyStatementHasEvidenceUnitAndReasons(
      @ForAll("pages") Pages first, @ForAll("pages") Pages second) {
    Reading reading = Said.on(first, second, Pages.rest()).reading();
    assertEquals(reading.records().isEmpty(), reading.reason() != null);
    for (CellRecord record : reading.records()) {
      assertEquals(List.of(), RecordValidator.problems(RecordJson.write(record)));
      record.statements().forEach(ArbitraryTablesTest::isWellFounded);
    }
  }

  private static void isWellFounded(Statement s) {
    String what = s.toString();
    assertEquals(QUANTITIES.get(s.quantity()).unit(), s.unit(), what);
    assertTrue(s.evidence().page() >= 1 && s.evidence().page() <= 3, what);
    assertEquals(4, s.evidence().box().size(), what);
    assertFalse(s.evidence().text().isBlank(), what);
    assertFalse(s.evidence().rule().isBlank(), what);
    assertTrue(s.value() != null || s.low() != null || s.high() != null, what);
    assertTrue(s.low() == null || s.high() == null || s.low() <= s.high(), what);
    assertTrue(Conditions.NAMES.containsAll(s.conditions().values().keySet()), what);
    assertEquals(s.standing() == Standing.UNSURE, !s.doubts().isEmpty(), what);
  }
}
