package commonsheet.chart.derived;

import static commonsheet.discharge.DischargeCurve.AMPERE_HOURS;

import commonsheet.discharge.DischargeCurve;
import commonsheet.discharge.Estimate;
import commonsheet.discharge.PeukertFit;
import commonsheet.quantity.PlainNumber;
import commonsheet.record.Conditions;
import commonsheet.record.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;

/** The statements that the discharges of a record give. */
final class CurveStatements {
  /** The middle of the temperatures at which cells are tested indoors, in °C: 20 to 25. */
  private static final double ROOM = 22.5;

  /** Farther from {@link #ROOM} than this is no ordinary test, in K. */
  private static final double ROOM_MARGIN = 7.5;

  private static final double PER_CENT = 100;

  private CurveStatements() {}

  /** The statements, without ids, curve by curve and then of several curves together. */
  static List<Statement> of(List<DischargeCurve> discharges) {
    List<Delivery> deliveries = Delivery.of(discharges);
    List<Statement> statements = new ArrayList<>();
    deliveries.forEach(delivery -> addOwn(delivery, statements));
    List<Delivery> sure = deliveries.stream().filter(Delivery::isSure).toList();
    for (List<Delivery> family : families(sure, DischargeCurve::sharesTemperatureWith)) {
      addByLoad(family, discharges, statements);
    }
    for (List<Delivery> family : families(sure, DischargeCurve::sharesLoadWith)) {
      addByTemperature(family, statements);
    }
    return statements;
  }

  private static void addOwn(Delivery delivery, List<Statement> statements) {
    DischargeCurve curve = delivery.curve();
    Estimate capacity = delivery.capacity();
    List<DischargeCurve> origin = List.of(curve);
    String end = PlainNumber.of(curve.cutOff().voltage(), 4) + " V";
    if (delivery.isInAmpereHours()) {
      String note = "charge at which curve " + curve.id() + " falls to " + end;
      statements.add(Derivation.of("capacity", AMPERE_HOURS, capacity, note, origin));
    } else {
      String note =
          "share at which curve " + curve.id() + " falls to " + end + ", by the chart's own axis";
      statements.add(Derivation.of("capacityRetention", "%", capacity, note, origin));
    }
    curve
        .energy(capacity)
        .ifPresent(
            energy -> {
              String note = "voltage over charge along curve " + curve.id() + " down to " + end;
              statements.add(Derivation.of("energy", "W.h", energy, note, origin));
            });
    curve
        .midCapacityVoltage(capacity)
        .ifPresent(
            voltage -> {
              String note =
                  "voltage of curve " + curve.id() + " at half of the charge given down to " + end;
              statements.add(Derivation.of("midCapacityVoltage", "V", voltage, note, origin));
            });
  }

  /** Relative capacities against the lowest load, and how sharply the capacity falls with it. */
  private static void addByLoad(
      List<Delivery> family, List<DischargeCurve> discharges, List<Statement> statements) {
    Optional<String> told = loadToldByAll(family);
    if (told.isEmpty()) {
      return;
    }
    String load = told.get();
    List<Delivery> byLoad =
        family.stream().sorted(Comparator.comparing(d -> d.condition(load))).toList();
    Delivery lowest = byLoad.get(0);
    boolean lowestOfAll = discharges.stream().noneMatch(d -> isBelow(d, lowest.curve(), load));
    for (Delivery other : byLoad.subList(1, byLoad.size())) {
      if (lowestOfAll && other.condition(load) > lowest.condition(load)) {
        statements.add(relative(other, lowest));
      }
    }
    long loads = byLoad.stream().map(d -> d.condition(load)).distinct().count();
    if (loads == byLoad.size() && loads >= PeukertFit.FEWEST && lowest.isInAmpereHours()) {
      statements.add(peukert(byLoad, load));
    }
  }

  /**
   * Whether the chart shows a lower load, even if its curve does not reach the cut-off: relative to
   * another one the capacities would look better than they are.
   */
  private static boolean isBelow(DischargeCurve one, DischargeCurve lowest, String load) {
    return one.sharesPlotWith(lowest)
        && one.sharesTemperatureWith(lowest)
        && one.condition(load) != null
        && one.condition(load) < lowest.condition(load);
  }

  /** Relative capacities against the temperature at which cells are usually tested. */
  private static void addByTemperature(List<Delivery> family, List<Statement> statements) {
    List<Delivery> told =
        family.stream().filter(d -> d.condition(Conditions.TEMPERATURE) != null).toList();
    Optional<Delivery> room =
        told.stream()
            .filter(d -> fromRoom(d) <= ROOM_MARGIN)
            .min(Comparator.comparing(CurveStatements::fromRoom));
    room.ifPresent(
        reference ->
            told.stream()
                .filter(d -> !d.curve().sharesTemperatureWith(reference.curve()))
                .forEach(d -> statements.add(relative(d, reference))));
  }

  private static double fromRoom(Delivery delivery) {
    return Math.abs(delivery.condition(Conditions.TEMPERATURE) - ROOM);
  }

  private static Statement relative(Delivery one, Delivery reference) {
    double ratio = PER_CENT * one.capacity().value() / reference.capacity().value();
    double share = Math.hypot(one.capacity().relative(), reference.capacity().relative());
    String note =
        "charge given on curve "
            + one.curve().id()
            + " over that on curve "
            + reference.curve().id();
    return Derivation.of(
        "capacityRetention",
        "%",
        Estimate.within(ratio, ratio * share),
        note,
        List.of(one.curve(), reference.curve()));
  }

  private static Statement peukert(List<Delivery> byLoad, String load) {
    PeukertFit fit =
        PeukertFit.of(
            byLoad.stream()
                .map(d -> new PeukertFit.Sample(d.condition(load), d.capacity()))
                .toList());
    String unit = load.equals(Conditions.DISCHARGE_RATE) ? " C" : " A";
    String note =
        String.format(
            Locale.ROOT,
            "least squares of ln capacity over ln current through %d curves from %s to %s;"
                + " standard error of the fit %s",
            byLoad.size(),
            PlainNumber.of(byLoad.get(0).condition(load), 4) + unit,
            PlainNumber.of(byLoad.get(byLoad.size() - 1).condition(load), 4) + unit,
            PlainNumber.of(fit.standardError(), 2));
    return Derivation.ofLoads(
        "peukertExponent",
        "1",
        fit.estimate(),
        note,
        byLoad.stream().map(Delivery::curve).toList());
  }

  /** The condition by which every curve tells its load; nothing for a mixture. */
  private static Optional<String> loadToldByAll(List<Delivery> family) {
    return List.of(Conditions.DISCHARGE_CURRENT, Conditions.DISCHARGE_RATE).stream()
        .filter(name -> family.stream().allMatch(d -> d.condition(name) != null))
        .findFirst();
  }

  /** The curves of each plot that have something in common. */
  private static List<List<Delivery>> families(
      List<Delivery> deliveries, BiPredicate<DischargeCurve, DischargeCurve> common) {
    List<List<Delivery>> families = new ArrayList<>();
    for (Delivery delivery : deliveries) {
      DischargeCurve curve = delivery.curve();
      families.stream()
          .filter(f -> f.get(0).curve().sharesPlotWith(curve))
          .filter(f -> common.test(f.get(0).curve(), curve))
          .findFirst()
          .orElseGet(
              () -> {
                families.add(new ArrayList<>());
                return families.get(families.size() - 1);
              })
          .add(delivery);
    }
    return families;
  }
}
