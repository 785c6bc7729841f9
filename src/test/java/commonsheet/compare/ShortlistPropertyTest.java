package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.quantity.GivenQuantity;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for any cells and any machine. */
class ShortlistPropertyTest {
  @Property(tries = 300)
  void theOrderOfTheCellsGivenDoesNotMatter(
      @ForAll("cells") List<CellFigures> cells, @ForAll long seed, @ForAll Measure measure) {
    List<CellFigures> shuffled = new ArrayList<>(cells);
    Collections.shuffle(shuffled, new Random(seed));
    assertEquals(shortlist(cells, measure), shortlist(shuffled, measure));
  }

  @Property(tries = 300)
  void anotherCellChangesNeitherTheFiguresNorTheOrderOfTheOthers(
      @ForAll("cells") List<CellFigures> cells,
      @ForAll @IntRange(max = 7) int without,
      @ForAll Measure measure) {
    String left = "cell-" + without;
    List<CellFigures> fewer = cells.stream().filter(c -> !c.record().id().equals(left)).toList();
    List<Contender> all = shortlist(cells, measure).contenders();
    assertEquals(
        all.stream().filter(c -> !c.cell().record().id().equals(left)).toList(),
        shortlist(fewer, measure).contenders());
  }

  @Property(tries = 300)
  void thoseThatCarryStandBeforeThoseThatDoNot(@ForAll("cells") List<CellFigures> cells) {
    List<Contender> all = shortlist(cells, Measure.DELIVERED_ENERGY).contenders();
    for (int i = 1; i < all.size(); i++) {
      assertTrue(all.get(i - 1).verdict().compareTo(all.get(i).verdict()) <= 0);
    }
  }

  @Property(tries = 300)
  void morePacksNeverLowerTheMargin(
      @ForAll @DoubleRange(min = 0.1, max = 200) double average,
      @ForAll @DoubleRange(min = 1, max = 5) double peakOverAverage,
      @ForAll @IntRange(min = 1, max = 20) int packs,
      @ForAll @DoubleRange(min = 0.1, max = 100) double rating) {
    CellFigures cell = Judged.rated("a", rating);
    double few = margin(cell, average, average * peakOverAverage, packs);
    double more = margin(cell, average, average * peakOverAverage, packs + 1);
    assertTrue(more > few, few + " and " + more);
  }

  @Property(tries = 300)
  void amperesAndMilliamperesAskTheSame(@ForAll @IntRange(min = 1, max = 99_999) int milliampere) {
    String ampere = java.math.BigDecimal.valueOf(milliampere, 3).toPlainString();
    double bare = GivenQuantity.parse(ampere, "A");
    assertEquals(bare, GivenQuantity.parse(milliampere + "mA", "A"));
    assertEquals(bare, GivenQuantity.parse(ampere + " A", "A"));
    Load mix = GivenLoad.parse(ampere + "A:25%,200A:75%");
    assertEquals(mix, GivenLoad.parse(milliampere + " mA:0.25,200000mA:0.75"));
    assertEquals(mix, GivenLoad.parse("0.2kA:75 %," + ampere + ":25 %"));
  }

  private static double margin(CellFigures cell, double average, double peak, int packs) {
    Requirement machine = new Requirement(average, peak, packs, 1, 1, 2, 0, null);
    return Judge.of(cell.condition(), machine).judge(cell).margin();
  }

  private static Shortlist shortlist(List<CellFigures> cells, Measure measure) {
    return Shortlist.ofFigures(
        cells, Judged.USUAL, new Requirement(10, 20, 1, 4, 2, 2, 0.1, 5.0), measure);
  }

  /** Up to eight cells with figures that are often equal, bounded or missing. */
  @Provide
  Arbitrary<List<CellFigures>> cells() {
    Arbitrary<Figure> figure =
        Arbitraries.oneOf(
            Arbitraries.integers().between(5, 15).map(Judged::known),
            Arbitraries.integers().between(5, 15).map(Judged::atMost),
            Arbitraries.integers().between(5, 15).map(Judged::atLeast),
            Arbitraries.just(Figure.absent("nothing is known")));
    Arbitrary<CellFigures> cell =
        Combinators.combine(Arbitraries.integers().between(0, 7), figure, figure, figure)
            .as(
                (id, rating, energy, heat) ->
                    Judged.cell("cell-" + id)
                        .with(Measure.CURRENT_RATING, rating)
                        .with(Measure.DELIVERED_ENERGY, energy)
                        .with(Measure.HEAT, heat)
                        .figures());
    return cell.list().ofMaxSize(8).uniqueElements(c -> c.record().id());
  }
}
