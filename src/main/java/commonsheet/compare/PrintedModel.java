package commonsheet.compare;

import static commonsheet.compare.StatedFigures.number;

import commonsheet.compare.PrintedCapacities.Sample;
import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a cell without curves gives, from what its sheet prints: capacities by current and, between
 * two of them, Peukert's law; its energy by the nominal voltage less what a stated DC resistance
 * takes.
 */
final class PrintedModel {
  /** As between two curves: how far a value between two may be off, as a share of their gap. */
  private static final double SHARE_OF_GAP = 0.4;

  /**
   * What the resistance along a whole discharge may be over that of a short pulse: 30 s against 0.5
   * s of the cell of nissan_leaf_ornl, 1.6.
   */
  private static final double MORE_THAN_PULSE = 1.6;

  /**
   * How far the mean voltage at low rates may be from the nominal one, in V: by chemistry makers
   * print 3.6 or 3.7, 3.7 or 3.8, 3.2 or 3.3 V.
   */
  private static final double NOMINAL = 0.1;

  private static final double MILLIOHM = 1000;

  private final CellRecord record;
  private final Condition condition;

  PrintedModel(CellRecord record, Condition condition) {
    this.record = record;
    this.condition = condition;
  }

  /**
   * At a current in A; absent where what is printed does not serve.
   *
   * @param none why no curve serves
   */
  Delivery at(double current, String none) {
    Figure capacity = printed("capacity", current, none);
    Figure printedEnergy = printed("energy", current, none);
    Figure voltage = meanVoltage(current);
    if (printedEnergy.isKnown() && capacity.isKnown()) {
      return new Delivery(capacity, printedEnergy, ratio(printedEnergy, capacity), null, none);
    }
    if (!capacity.isKnown() || !voltage.isKnown()) {
      Figure energy =
          printedEnergy.origin() != Origin.ABSENT || !capacity.isKnown()
              ? printedEnergy
              : Figure.absent(none + "; " + voltage.notes().get(0));
      return new Delivery(
          capacity, energy, capacity.isKnown() ? voltage : Figure.absent(none), null, none);
    }
    return new Delivery(capacity, product(capacity, voltage), voltage, null, none);
  }

  private Figure printed(String quantity, double current, String none) {
    List<PrintedCapacities> sets = PrintedCapacities.of(record, quantity, condition);
    for (PrintedCapacities set : sets) {
      Optional<Figure> found = within(set, current, none);
      if (found.isPresent()) {
        return found.get();
      }
    }
    return atMost(sets.get(0), current, none)
        .or(() -> sets.stream().flatMap(s -> atLeast(s, current, none).stream()).findFirst())
        .orElseGet(
            () ->
                Figure.absent(
                    none
                        + ", and no printed "
                        + quantity
                        + " serves at "
                        + number(current)
                        + " A"));
  }

  private Optional<Figure> within(PrintedCapacities set, double current, String none) {
    List<Sample> samples = set.to(condition);
    for (Sample sample : samples) {
      if (CurveChoice.sameCurrent(sample.current(), current)) {
        List<String> notes = new ArrayList<>();
        notes.add(none + "; printed " + (set.least() ? "as a minimum " : "") + "for this current");
        notes.addAll(sample.doubts());
        return Optional.of(
            new Figure(
                sample.value(),
                set.least() ? sample.value() : null,
                null,
                Origin.STATED,
                sample.from(),
                notes,
                !sample.doubts().isEmpty()));
      }
    }
    for (int i = 1; i < samples.size(); i++) {
      if (samples.get(i - 1).current() < current && current < samples.get(i).current()) {
        return Optional.of(peukert(samples.get(i - 1), samples.get(i), current, set.least(), none));
      }
    }
    return Optional.empty();
  }

  /** Q = Q₁ (I/I₁)^(1−k), with k from the two neighbours. */
  private static Figure peukert(
      Sample one, Sample two, double current, boolean least, String none) {
    double share = Math.log(current / one.current()) / Math.log(two.current() / one.current());
    double value = one.value() * Math.pow(two.value() / one.value(), share);
    double exponent =
        1 - Math.log(two.value() / one.value()) / Math.log(two.current() / one.current());
    double open = SHARE_OF_GAP * 4 * share * (1 - share) * Math.abs(one.value() - two.value());
    List<String> notes = new ArrayList<>();
    notes.add(
        none
            + "; Peukert's law with k = "
            + number(exponent)
            + " between "
            + (least ? "the minima" : "the values")
            + " printed for "
            + number(one.current())
            + " A and "
            + number(two.current())
            + " A");
    notes.addAll(LoadFigures.joined(one.doubts(), two.doubts()));
    return new Figure(
        value,
        Math.max(value - open, Math.min(one.value(), two.value())),
        least ? null : Math.min(value + open, Math.max(one.value(), two.value())),
        Origin.MODELLED,
        LoadFigures.joined(one.from(), two.from()),
        notes,
        !notes.subList(1, notes.size()).isEmpty());
  }

  /** A value for as much current or less, to this cut-off or a lower one, is not exceeded. */
  private Optional<Figure> atMost(PrintedCapacities usual, double current, String none) {
    return usual.toOrBelow(condition).stream()
        .filter(s -> s.current() <= current * (1 + CurveChoice.SAME_CURRENT))
        .min(Comparator.comparingDouble(Sample::value))
        .map(
            s ->
                bound(
                    s,
                    null,
                    s.value(),
                    none
                        + "; not known above "
                        + number(s.current())
                        + " A; at most what is printed"
                        + " for that, to "
                        + number(s.cutoff())
                        + " V"));
  }

  /** A value for as much current or more, to this cut-off, is reached. */
  private Optional<Figure> atLeast(PrintedCapacities set, double current, String none) {
    return set.to(condition).stream()
        .filter(s -> s.current() >= current)
        .findFirst()
        .map(
            s ->
                bound(
                    s,
                    s.value(),
                    null,
                    none
                        + "; not known below "
                        + number(s.current())
                        + " A; at least what is printed for that"));
  }

  private static Figure bound(Sample sample, Double low, Double high, String note) {
    List<String> notes = new ArrayList<>(List.of(note));
    notes.addAll(sample.doubts());
    return new Figure(
        null, low, high, Origin.BOUNDED, sample.from(), notes, !sample.doubts().isEmpty());
  }

  private Figure meanVoltage(double current) {
    List<Statement> nominal = valued("nominalVoltage");
    List<Statement> resistance =
        valued("internalResistanceDC").stream()
            .filter(s -> s.statistic() != Statistic.MINIMUM)
            .toList();
    if (nominal.isEmpty() || resistance.isEmpty()) {
      return Figure.absent(
          nominal.isEmpty()
              ? "no nominal voltage to model the mean voltage from"
              : "no DC resistance to model the mean voltage with");
    }
    Statement voltage = StatedChoice.surest(nominal);
    Statement ohms = StatedChoice.surest(resistance);
    double drop = current * ohms.value() / MILLIOHM;
    boolean unsure = voltage.standing() == Standing.UNSURE || ohms.standing() == Standing.UNSURE;
    return new Figure(
        voltage.value() - drop,
        voltage.value() - MORE_THAN_PULSE * drop - NOMINAL,
        voltage.value() + NOMINAL,
        Origin.MODELLED,
        List.of(voltage.id(), ohms.id()),
        List.of(
            "nominal voltage "
                + number(voltage.value())
                + " V less "
                + number(current)
                + " A times "
                + number(ohms.value())
                + " mΩ"),
        unsure);
  }

  private List<Statement> valued(String quantity) {
    return StatedChoice.printed(record, quantity);
  }

  private static Figure product(Figure capacity, Figure voltage) {
    List<String> notes =
        new ArrayList<>(List.of("capacity times mean voltage; " + voltage.notes().get(0)));
    notes.addAll(capacity.notes());
    return new Figure(
        capacity.value() * voltage.value(),
        capacity.low() == null ? null : capacity.low() * voltage.low(),
        capacity.high() == null ? null : capacity.high() * voltage.high(),
        Origin.MODELLED,
        LoadFigures.joined(capacity.from(), voltage.from()),
        notes,
        capacity.unsure() || voltage.unsure());
  }

  private static Figure ratio(Figure energy, Figure capacity) {
    return new Figure(
        energy.value() / capacity.value(),
        null,
        null,
        Origin.DERIVED,
        LoadFigures.joined(energy.from(), capacity.from()),
        List.of("printed energy over printed capacity"),
        energy.unsure() || capacity.unsure());
  }
}
