package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Packs worked by hand. */
class PackSumsTest {
  /** Two packs of 4s2p: 16 cells, four of which share the current. */
  private static final Requirement BOAT =
      new Requirement(16, 40, 2, 4, 2, Requirement.USUAL_FACTOR, 0.15, 8.0);

  private static final Condition KEEPING_A_FIFTH =
      new Condition(Load.constant(4).withPeak(10), 3.0, 23, 0.2, Condition.Tolerance.STANDARD);

  @Test
  void everyFigureIsThatOfTheCellAsOftenAsItIsThere() {
    CellFigures cell =
        Judged.cell("a", KEEPING_A_FIFTH)
            .with(Measure.CURRENT_RATING, 20)
            .with(Measure.NOMINAL_CAPACITY, 2.5)
            .with(Measure.NOMINAL_VOLTAGE, 3.6)
            .with(Measure.MASS, 45)
            .with(Measure.DELIVERED_CAPACITY, between(2.4, 2.3, 2.5))
            .with(Measure.DELIVERED_ENERGY, between(8.4, 8.0, 8.8))
            .figures();
    PackFigures packs = PackSums.of(cell, BOAT);
    assertEquals(10, packs.nominalCapacity().value(), 1e-12, "2.5 A·h times 4");
    assertEquals(144, packs.nominalEnergy().value(), 1e-9, "10 A·h times 4 times 3.6 V");
    assertEquals(7.68, packs.deliveredCapacity().value(), 1e-12, "four fifths of 2.4 A·h times 4");
    assertEquals(7.36, packs.deliveredCapacity().low(), 1e-12);
    assertEquals(8.0, packs.deliveredCapacity().high(), 1e-12);
    assertEquals(107.52, packs.deliveredEnergy().value(), 1e-9, "four fifths of 8.4 W·h times 16");
    assertEquals(0.72, packs.cellMass().value(), 1e-12, "45 g times 16");
    assertEquals(0.828, packs.mass().value(), 1e-12, "and 15 %");
    assertEquals(12, packs.lowVoltage().value(), 1e-12);
    assertEquals(0.2, packs.shareOfRatingAtAverage().value(), 1e-12, "16 A of 4 times 20 A");
    assertEquals(0.5, packs.shareOfRatingAtPeak().value(), 1e-12);
    assertEquals(0.48, packs.time().value(), 1e-12, "7.68 A·h at 16 A");
    assertEquals(3.84, packs.distance().value(), 1e-12, "0.48 h at 8 km/h");
    assertEquals(Origin.INTERPOLATED, packs.time().origin());
    assertEquals(Origin.DERIVED, packs.nominalCapacity().origin());
  }

  @Test
  void whatIsNotKnownOfTheCellIsNotKnownOfThePack() {
    PackFigures packs =
        PackSums.of(
            Judged.cell("a", KEEPING_A_FIFTH)
                .with(Measure.DELIVERED_CAPACITY, Judged.atMost(2.5))
                .figures(),
            BOAT);
    assertFalse(packs.nominalEnergy().isKnown());
    assertFalse(packs.shareOfRatingAtPeak().isKnown());
    assertFalse(packs.highVoltage().isKnown(), "no charge voltage");
    assertNull(packs.time().value());
    assertEquals(0.5, packs.time().high(), 1e-12, "four fifths of 10 A·h at 16 A");
    assertEquals(Origin.BOUNDED, packs.distance().origin());
  }

  @Test
  void withoutASpeedThereIsNoDistance() {
    Requirement still = new Requirement(16, 40, 2, 4, 2, 2, 0, null);
    Figure distance =
        PackSums.of(
                Judged.cell("a", KEEPING_A_FIFTH).with(Measure.DELIVERED_CAPACITY, 2.4).figures(),
                still)
            .distance();
    assertEquals(List.of("no cruise speed was given"), distance.notes());
  }

  private static Figure between(double value, double low, double high) {
    return new Figure(value, low, high, Origin.INTERPOLATED, List.of("c1", "c2"), List.of(), false);
  }
}
