package commonsheet.check;

import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a record says of its cell as such: at ordinary temperature and load, when new. */
final class CellFacts {
  /** Loads up to this multiple of C leave the capacity near the one the cell is called by. */
  private static final double GENTLE = 1.0;

  private static final Interval ROOM = new Interval(15, 30);

  private static final Set<String> SPECIAL =
      Set.of(
          Conditions.TEMPERATURE_LOW,
          Conditions.TEMPERATURE_HIGH,
          Conditions.DURATION,
          Conditions.CYCLES,
          Conditions.RETENTION);

  private static final double MM3_PER_CM3 = 1000;

  private final CellRecord record;

  CellFacts(CellRecord record) {
    this.record = record;
  }

  /** Capacities, A.h. */
  Optional<Known> capacity() {
    return known("capacity");
  }

  /** What the sheet says of a quantity in the ordinary case; nothing where it does not. */
  Optional<Known> known(String quantity) {
    List<Statement> statements = ordinary(quantity);
    return statements.isEmpty() ? Optional.empty() : Optional.of(Known.of(statements));
  }

  /** The statements of a quantity that hold in the ordinary case and are positive. */
  List<Statement> ordinary(String quantity) {
    return Readings.of(record)
        .filter(s -> s.quantity().equals(quantity))
        .filter(s -> isOrdinary(s.conditions()))
        .filter(s -> Span.of(s).low() > 0)
        .toList();
  }

  static boolean isOrdinary(Conditions conditions) {
    Double rate = conditions.get(Conditions.DISCHARGE_RATE);
    Double temperature = conditions.get(Conditions.TEMPERATURE);
    return (rate == null || rate <= GENTLE)
        && (temperature == null || ROOM.holds(temperature))
        && SPECIAL.stream().allMatch(name -> conditions.get(name) == null);
  }

  /** Capacity times nominal voltage, W.h. */
  Optional<Known> energy() {
    return both(capacity(), known("nominalVoltage"), Interval::times);
  }

  /** Energy over mass, W.h/kg. */
  Optional<Known> specificEnergy() {
    return both(energy(), known("mass"), (energy, mass) -> energy.over(mass).times(1000));
  }

  /** Energy over volume, W.h/L. */
  Optional<Known> energyDensity() {
    return both(energy(), volume(), (energy, volume) -> energy.over(volume).times(1000));
  }

  /** Mass over volume, g/cm3. */
  Optional<Known> density() {
    return both(known("mass"), volume(), Interval::over);
  }

  /** Volume of the cylinder or box that the dimensions give, cm3. */
  Optional<Known> volume() {
    Optional<Known> diameter = known("diameter");
    Optional<Known> cylinder =
        both(diameter, known("height"), (d, h) -> d.times(d).times(h).times(Math.PI / 4));
    Optional<Known> box =
        both(
            both(known("width"), known("thickness"), Interval::times),
            known("length"),
            Interval::times);
    return (cylinder.isPresent() ? cylinder : box)
        .map(v -> new Known(v.range().times(1 / MM3_PER_CM3), v.from()));
  }

  private static Optional<Known> both(
      Optional<Known> one,
      Optional<Known> other,
      java.util.function.BinaryOperator<Interval> together) {
    if (one.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    List<String> from = new ArrayList<>(one.get().from());
    other.get().from().stream().filter(id -> !from.contains(id)).forEach(from::add);
    return Optional.of(new Known(together.apply(one.get().range(), other.get().range()), from));
  }
}
