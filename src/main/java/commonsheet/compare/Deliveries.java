package commonsheet.compare;

import static commonsheet.compare.StatedFigures.number;

import commonsheet.discharge.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a cell gives under any one current, from its discharges. */
final class Deliveries {
  private static final String NO_MEAN = "where the discharge ends under this current is not known";

  private final Discharges discharges;
  private final PrintedModel printed;
  private final RateFamily family;

  Deliveries(Discharges discharges, PrintedModel printed) {
    this.discharges = discharges;
    this.printed = printed;
    this.family = discharges.reaching().isEmpty() ? null : new RateFamily(discharges.reaching());
  }

  /** The discharges that reach the cut-off, by current; nothing where none does. */
  Optional<RateFamily> family() {
    return Optional.ofNullable(family);
  }

  /**
   * At a current.
   *
   * @param current in A, above 0
   */
  Delivery at(double current) {
    if (family == null || family.isBelow(current) || family.isAbove(current)) {
      Optional<Delivery> least = atLeast(current);
      if (family == null) {
        return least.orElseGet(() -> printed.at(current, whyNone(current)));
      }
      return family.isBelow(current) ? below() : least.orElseGet(this::above);
    }
    return of(family.at(current));
  }

  private Delivery of(Discharge discharge) {
    Origin origin = discharge.between() ? Origin.INTERPOLATED : Origin.CURVE;
    List<String> notes = new ArrayList<>();
    notes.add(discharge.how());
    notes.addAll(discharge.doubts());
    discharges.notes().stream()
        .filter(n -> discharge.curves().stream().anyMatch(c -> n.contains("curves " + c + " ")))
        .forEach(notes::add);
    return new Delivery(
        figure(discharge, discharge.capacity(), origin, notes),
        figure(discharge, discharge.energy(), origin, notes),
        figure(discharge, discharge.meanVoltage(), origin, notes),
        discharge,
        null);
  }

  private static Figure figure(
      Discharge discharge, Estimate estimate, Origin origin, List<String> notes) {
    return new Figure(
        estimate.value(),
        estimate.low(),
        estimate.high(),
        origin,
        discharge.from(),
        notes,
        discharge.isUnsure());
  }

  /** Less current gives no less. */
  private Delivery below() {
    Discharge lowest = family.lowest();
    String unknown = "not known below " + number(lowest.current()) + " A";
    if (!family.isOrdered()) {
      return Delivery.absent(unknown + "; the curves are not in the order of their currents");
    }
    List<String> notes = List.of(unknown, "at least that of " + lowest.name());
    return new Delivery(
        bound(lowest, lowest.capacity().low(), null, notes),
        bound(lowest, lowest.energy().low(), null, notes),
        Figure.absent(unknown),
        null,
        unknown);
  }

  /** More current gives no more. */
  private Delivery above() {
    Discharge highest = family.highest();
    String unknown = "not known above " + number(highest.current()) + " A";
    if (!family.isOrdered()) {
      return Delivery.absent(unknown + "; the curves are not in the order of their currents");
    }
    List<String> notes = List.of(unknown, "at most that of " + highest.name());
    return new Delivery(
        bound(highest, null, highest.capacity().high(), notes),
        bound(highest, null, highest.energy().high(), notes),
        Figure.absent(unknown),
        null,
        unknown);
  }

  private static Figure bound(Discharge discharge, Double low, Double high, List<String> because) {
    List<String> notes = new ArrayList<>(because);
    notes.addAll(discharge.doubts());
    return new Figure(
        null, low, high, Origin.BOUNDED, discharge.from(), notes, discharge.isUnsure());
  }

  /** A curve of as much current or more that ends above the cut-off has given this by then. */
  private Optional<Delivery> atLeast(double current) {
    return discharges.cut().stream()
        .filter(c -> c.current() >= current * (1 - CurveChoice.SAME_CURRENT))
        .findFirst()
        .flatMap(
            curve -> {
              List<List<Double>> points = curve.curve().points();
              double last = points.get(points.size() - 1).get(1);
              List<String> notes =
                  List.of(
                      curve.named() + " ends at " + number(last) + " V, above the cut-off",
                      "at least this");
              return Discharge.of(curve, last)
                  .map(
                      d ->
                          new Delivery(
                              bound(d, d.capacity().low(), null, notes),
                              bound(d, d.energy().low(), null, notes),
                              Figure.absent(NO_MEAN),
                              null,
                              NO_MEAN));
            });
  }

  private String whyNone(double current) {
    if (discharges.cut().isEmpty()) {
      return discharges.absence();
    }
    CurveAtCurrent highest = discharges.cut().get(discharges.cut().size() - 1);
    return "not known above "
        + number(highest.current())
        + " A: no curve of "
        + number(current)
        + " A or more, and those below end above the cut-off";
  }
}
