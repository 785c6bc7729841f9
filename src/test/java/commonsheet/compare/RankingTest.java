package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class RankingTest {
  /** Worked values of the trade (common practice, no source): packs weighed against each other. */
  @Test
  void whatIsDeliveredPerMassRanksNotWhatIsPrinted() {
    // Nominal 4.2 A·h that deliver 3.8 A·h at 453 g, against 4.0 A·h at 617 g, at 14.4 V.
    CellFigures light =
        Judged.cell("z-light")
            .with(Measure.CURRENT_RATING, 35)
            .with(Measure.NOMINAL_CAPACITY, 4.2)
            .with(Measure.DELIVERED_CAPACITY, 3.8)
            .with(Measure.DELIVERED_SPECIFIC_ENERGY, 3.8 * 14.4 / 0.453)
            .figures();
    CellFigures heavy =
        Judged.cell("a-heavy")
            .with(Measure.CURRENT_RATING, 35)
            .with(Measure.NOMINAL_CAPACITY, 4.0)
            .with(Measure.DELIVERED_CAPACITY, 4.0)
            .with(Measure.DELIVERED_SPECIFIC_ENERGY, 4.0 * 14.4 / 0.617)
            .figures();
    assertEquals(
        List.of("z-light", "a-heavy"), ranked(Measure.DELIVERED_SPECIFIC_ENERGY, heavy, light));
    assertEquals(List.of("a-heavy", "z-light"), ranked(Measure.DELIVERED_CAPACITY, light, heavy));
  }

  @Test
  void theVerdictComesBeforeEveryFigure() {
    assertEquals(
        List.of("carries", "near", "unrated", "fails"),
        ranked(
            Measure.DELIVERED_ENERGY,
            cell("fails", Judged.known(2), Judged.known(40)),
            cell("unrated", Figure.absent("none"), Judged.known(30)),
            cell("near", Judged.known(9.5), Judged.known(20)),
            cell("carries", Judged.known(10), Judged.known(10))));
  }

  @Test
  void aBoundNeverOutranksWhatIsKnownAndNothingComesLast() {
    Figure rated = Judged.known(10);
    assertEquals(
        List.of("known", "at-least", "at-most", "nothing-a", "nothing-b"),
        ranked(
            Measure.DELIVERED_ENERGY,
            cell("nothing-b", rated, Figure.absent("none")),
            cell("at-most", rated, Judged.atMost(50)),
            cell("at-least", rated, Judged.atLeast(20)),
            cell("known", rated, Judged.known(5)),
            cell("nothing-a", rated, Figure.absent("none"))));
  }

  @Test
  void ofHeatTheLeastIsBest() {
    CellFigures cool =
        Judged.cell("cool").with(Measure.CURRENT_RATING, 10).with(Measure.HEAT, 1).figures();
    CellFigures hot =
        Judged.cell("ahot").with(Measure.CURRENT_RATING, 10).with(Measure.HEAT, 3).figures();
    assertEquals(List.of("cool", "ahot"), ranked(Measure.HEAT, hot, cool));
  }

  private static CellFigures cell(String id, Figure rating, Figure energy) {
    return Judged.cell(id)
        .with(Measure.CURRENT_RATING, rating)
        .with(Measure.DELIVERED_ENERGY, energy)
        .figures();
  }

  private static List<String> ranked(Measure measure, CellFigures... cells) {
    return Shortlist.ofFigures(List.of(cells), Judged.USUAL, null, measure).contenders().stream()
        .map(c -> c.cell().record().id())
        .toList();
  }
}
