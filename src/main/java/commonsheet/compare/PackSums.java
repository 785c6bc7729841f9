package commonsheet.compare;

import commonsheet.record.CellRecord;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import commonsheet.record.Statistic;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The figures of all packs of a machine, from those of one cell. */
final class PackSums {
  private static final double GRAMS = 1000;

  private final CellFigures cell;
  private final Requirement requirement;
  private final double kept;

  private PackSums(CellFigures cell, Requirement requirement) {
    this.cell = cell;
    this.requirement = requirement;
    this.kept = 1 - cell.condition().reserve();
  }

  static PackFigures of(CellFigures cell, Requirement requirement) {
    return new PackSums(cell, requirement).figures();
  }

  private PackFigures figures() {
    int sharing = requirement.sharing();
    int series = requirement.series();
    Figure rating = cell.figure(Measure.CURRENT_RATING);
    Figure nominal = scaled(cell.figure(Measure.NOMINAL_CAPACITY), sharing);
    Figure delivered = scaled(cell.figure(Measure.DELIVERED_CAPACITY), kept * sharing);
    Figure energy = scaled(cell.figure(Measure.DELIVERED_ENERGY), kept * sharing * series);
    Figure mass = scaled(cell.figure(Measure.MASS), sharing * series / GRAMS);
    Figure time = scaled(delivered, 1 / requirement.averageCurrent());
    return new PackFigures(
        nominal,
        product(nominal, scaled(cell.figure(Measure.NOMINAL_VOLTAGE), series)),
        delivered,
        reserved(energy),
        mass,
        scaled(mass, 1 + requirement.massAllowance()),
        cutoff(series),
        scaled(chargeVoltage(cell.record()), series),
        share(requirement.averageCurrent() / sharing, rating),
        share(requirement.peakCurrent() / sharing, rating),
        time,
        requirement.cruiseSpeed() == null
            ? Figure.absent("no cruise speed was given")
            : scaled(time, requirement.cruiseSpeed()));
  }

  /** The energy above the reserve: the rest stands at a lower voltage, so that it is no less. */
  private Figure reserved(Figure energy) {
    if (kept == 1 || energy.origin() == Origin.ABSENT) {
      return energy;
    }
    return noted(energy, "the reserve is taken off in proportion to the charge");
  }

  private Figure cutoff(int series) {
    double voltage = cell.condition().cutoffVoltage() * series;
    return new Figure(
        voltage,
        voltage,
        voltage,
        Origin.DERIVED,
        List.of(),
        List.of("the cut-off of the comparison"),
        false);
  }

  /**
   * To what a cell is charged. A maximum is the limit in abuse where the sheet gives a usual value
   * beside it.
   */
  private static Figure chargeVoltage(CellRecord record) {
    Optional<Statement> stated =
        StatedChoice.printed(record, "chargeVoltage").stream()
            .min(
                Comparator.<Statement>comparingInt(s -> StatedChoice.rank(s.standing()))
                    .thenComparing(s -> s.statistic() == Statistic.MAXIMUM)
                    .thenComparing(Statement::value));
    return stated
        .map(
            s ->
                new Figure(
                    s.value(),
                    s.low(),
                    s.high(),
                    Origin.STATED,
                    List.of(s.id()),
                    s.doubts(),
                    s.standing() == Standing.UNSURE))
        .orElseGet(() -> Figure.absent("the sheet gives no charge voltage"));
  }

  private static Figure share(double current, Figure rating) {
    Double least = Judge.least(rating);
    if (least == null || least == 0) {
      return Figure.absent("the sheet gives no current rating");
    }
    return new Figure(
        current / least, null, null, Origin.DERIVED, rating.from(), List.of(), rating.unsure());
  }

  /** A figure so many times; where it comes from stays the same unless it was stated. */
  private static Figure scaled(Figure figure, double factor) {
    return new Figure(
        times(figure.value(), factor),
        times(figure.low(), factor),
        times(figure.high(), factor),
        figure.origin() == Origin.STATED ? Origin.DERIVED : figure.origin(),
        figure.from(),
        figure.notes(),
        figure.unsure());
  }

  private static Figure product(Figure first, Figure second) {
    if (!first.isKnown() || !second.isKnown()) {
      return Figure.absent("the sheet gives no nominal capacity or no nominal voltage");
    }
    List<String> from = new ArrayList<>(first.from());
    from.addAll(second.from());
    List<String> notes = new ArrayList<>(first.notes());
    notes.addAll(second.notes());
    return new Figure(
        first.value() * second.value(),
        times(first.low(), second.low() == null ? second.value() : second.low()),
        times(first.high(), second.high() == null ? second.value() : second.high()),
        Origin.DERIVED,
        from,
        notes,
        first.unsure() || second.unsure());
  }

  private static Double times(Double number, double factor) {
    return number == null ? null : Double.valueOf(number * factor);
  }

  private static Figure noted(Figure figure, String note) {
    List<String> notes = new ArrayList<>(figure.notes());
    notes.add(note);
    return new Figure(
        figure.value(),
        figure.low(),
        figure.high(),
        figure.origin(),
        figure.from(),
        notes,
        figure.unsure());
  }
}
