package commonsheet.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import commonsheet.record.CellRecord;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for every cell whose curves are in the order of their currents. */
class DischargePropertiesTest {
  private static final int POINTS = 30;

  /**
   * An invented cell.
   *
   * @param currents ascending, in A
   */
  record Made(double capacity, double resistance, double knee, List<Double> currents) {
    CellRecord record(String id) {
      CellOfCurves cell = new CellOfCurves(id);
      currents.forEach(current -> cell.curve(current, 25, points(current)));
      return cell.record();
    }

    private List<List<Double>> points(double current) {
      List<List<Double>> points = new ArrayList<>();
      for (int i = 0; i <= POINTS; i++) {
        double share = (double) i / POINTS;
        double open = 4.2 - 0.6 * share - 0.7 * Math.pow(share, knee);
        points.add(List.of(share * capacity, open - current * resistance * (1 + share)));
      }
      return points;
    }
  }

  @Provide
  Arbitrary<Made> cells() {
    Arbitrary<List<Double>> currents =
        Arbitraries.doubles()
            .between(0.2, 20)
            .list()
            .ofMinSize(2)
            .ofMaxSize(5)
            .map(DischargePropertiesTest::apart)
            .filter(list -> list.size() >= 2);
    return Combinators.combine(
            Arbitraries.doubles().between(1, 6),
            Arbitraries.doubles().between(0.002, 0.02).ofScale(4),
            Arbitraries.doubles().between(2, 20),
            currents)
        .as(Made::new);
  }

  private static List<Double> apart(List<Double> currents) {
    List<Double> kept = new ArrayList<>();
    for (double current : currents.stream().sorted().toList()) {
      if (kept.isEmpty() || current > kept.get(kept.size() - 1) * 1.05) {
        kept.add(current);
      }
    }
    return kept;
  }

  private static CellFigures under(CellRecord record, double current) {
    return DischargeFamily.of(record, Condition.usual(Load.constant(current)))
        .under(Load.constant(current));
  }

  @Property(tries = 200)
  void moreCurrentNeverGivesMore(
      @ForAll("cells") Made made,
      @ForAll @DoubleRange(min = 0, max = 1) double one,
      @ForAll @DoubleRange(min = 0, max = 1) double other) {
    CellRecord record = made.record("tw-26");
    double less = within(made, Math.min(one, other));
    double more = within(made, Math.max(one, other));
    for (Measure measure : List.of(Measure.DELIVERED_CAPACITY, Measure.DELIVERED_ENERGY)) {
      double first = under(record, less).figure(measure).value();
      double second = under(record, more).figure(measure).value();
      assertTrue(second <= first * (1 + 1e-9), measure + " " + first + " then " + second);
    }
  }

  @Property(tries = 100)
  void aValueLiesBetweenItsBounds(
      @ForAll("cells") Made made, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    CellFigures figures = under(made.record("tw-26"), within(made, share));
    for (Measure measure : Measure.values()) {
      Figure figure = figures.figure(measure);
      if (figure.isKnown()) {
        assertTrue(
            figure.low() <= figure.value() && figure.value() <= figure.high(), measure.label());
      }
    }
  }

  @Property(tries = 100)
  void theMeanVoltageIsEnergyOverCapacity(
      @ForAll("cells") Made made, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    CellFigures figures = under(made.record("tw-26"), within(made, share));
    assertEquals(
        figures.figure(Measure.DELIVERED_ENERGY).value(),
        figures.figure(Measure.MEAN_VOLTAGE).value()
            * figures.figure(Measure.DELIVERED_CAPACITY).value(),
        1e-9);
  }

  @Property(tries = 50)
  void outsideTheCurvesNothingIsProlonged(
      @ForAll("cells") Made made, @ForAll @DoubleRange(min = 1.01, max = 5) double times) {
    CellRecord record = made.record("tw-26");
    double highest = made.currents().get(made.currents().size() - 1);
    Figure above = under(record, highest * times).figure(Measure.DELIVERED_CAPACITY);
    Figure atHighest = under(record, highest).figure(Measure.DELIVERED_CAPACITY);
    assertEquals(Origin.BOUNDED, above.origin());
    assertEquals(atHighest.high(), above.high());
    double lowest = made.currents().get(0);
    Figure below = under(record, lowest / times).figure(Measure.DELIVERED_CAPACITY);
    assertEquals(Origin.BOUNDED, below.origin());
    assertEquals(under(record, lowest).figure(Measure.DELIVERED_CAPACITY).low(), below.low());
  }

  @Property(tries = 50)
  void otherRecordsAndTheirOrderChangeNothing(
      @ForAll("cells") Made one, @ForAll("cells") Made two, @ForAll("cells") Made three) {
    List<CellRecord> records =
        new ArrayList<>(List.of(one.record("a"), two.record("b"), three.record("c")));
    Condition condition = Condition.usual(Load.constant(2));
    List<Figure> alone = energies(records.subList(0, 1), condition).get("a");
    Collections.shuffle(records, new Random(1));
    assertEquals(alone, energies(records, condition).get("a"));
  }

  private static Map<String, List<Figure>> energies(List<CellRecord> records, Condition condition) {
    return Shortlist.of(records, condition, null, Measure.DELIVERED_ENERGY).contenders().stream()
        .map(Contender::cell)
        .collect(
            Collectors.toMap(
                cell -> cell.record().id(), cell -> List.copyOf(cell.figures().values())));
  }

  /** Milliamperes are made amperes before anything is computed; nothing else may depend on them. */
  @Property(tries = 50)
  void currentsSharedAmongCellsAreThoseOfOneCell(
      @ForAll("cells") Made made, @ForAll @DoubleRange(min = 0, max = 1) double share) {
    double current = within(made, share);
    Load whole = Load.constant(current * 8).sharedAmong(8);
    Condition condition = Condition.usual(whole);
    assertEquals(
        under(made.record("tw-26"), current).figures().get(Measure.DELIVERED_ENERGY),
        DischargeFamily.of(made.record("tw-26"), condition)
            .under(whole)
            .figure(Measure.DELIVERED_ENERGY));
  }

  private static double within(Made made, double share) {
    double low = made.currents().get(0);
    return low + share * (made.currents().get(made.currents().size() - 1) - low);
  }
}
