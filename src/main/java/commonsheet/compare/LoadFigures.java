package commonsheet.compare;

import static commonsheet.compare.StatedFigures.number;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The measures of a cell under a load, from its discharges. */
final class LoadFigures {
  /** Without a reserve the voltage is looked for before the last tenth of the charge. */
  private static final double LAST_PART = 0.1;

  private static final double GRAMS_PER_KILOGRAM = 1000;

  private final Deliveries deliveries;
  private final Condition condition;

  LoadFigures(Deliveries deliveries, Condition condition) {
    this.deliveries = deliveries;
    this.condition = condition;
  }

  /**
   * The measures that depend on the load.
   *
   * @param mass in g
   */
  Map<Measure, Figure> under(Load load, Figure mass) {
    MixedDelivery mix = MixedDelivery.of(load, deliveries);
    Map<Measure, Figure> figures = new EnumMap<>(Measure.class);
    figures.put(Measure.DELIVERED_CAPACITY, mix.capacity());
    figures.put(Measure.DELIVERED_ENERGY, mix.energy());
    figures.put(Measure.MEAN_VOLTAGE, mix.meanVoltage());
    figures.put(Measure.DELIVERED_SPECIFIC_ENERGY, perMass(mix.energy(), mass));
    figures.put(Measure.LOWEST_VOLTAGE, lowestVoltage(load, mix));
    Figure heat = heat(mix);
    figures.put(Measure.HEAT, heat);
    figures.put(Measure.VOLTAGE_DROP, drop(heat, load));
    figures.put(
        Measure.CURVE_RESISTANCE,
        deliveries.family().map(CurveResistance::of).orElseGet(() -> Figure.absent(mix.reason())));
    return figures;
  }

  static Figure perMass(Figure energy, Figure mass) {
    if (energy.origin() == Origin.ABSENT) {
      return energy;
    }
    if (!mass.isKnown()) {
      return Figure.absent("the sheet states no mass");
    }
    double grams = mass.value();
    double most = mass.high() == null ? grams : mass.high();
    double least = mass.low() == null ? grams : mass.low();
    boolean onlyMost = mass.high() != null && mass.low() == null && mass.high() == grams;
    if (onlyMost && energy.low() == null) {
      return Figure.absent("of energy and mass only the most is known");
    }
    List<String> notes = new ArrayList<>();
    if (onlyMost) {
      notes.add("by the largest mass that the sheet allows, so at least this");
    }
    notes.addAll(energy.notes());
    if (mass.unsure()) {
      notes.addAll(mass.notes());
    }
    return new Figure(
        energy.isKnown() ? energy.value() / grams * GRAMS_PER_KILOGRAM : null,
        energy.low() == null ? null : energy.low() / most * GRAMS_PER_KILOGRAM,
        energy.high() == null || onlyMost ? null : energy.high() / least * GRAMS_PER_KILOGRAM,
        energy.isKnown() ? Origin.DERIVED : energy.origin(),
        joined(energy.from(), mass.from()),
        notes,
        energy.unsure() || mass.unsure());
  }

  private Figure lowestVoltage(Load load, MixedDelivery mix) {
    Delivery peak = load.peak() > 0 ? deliveries.at(load.peak()) : Delivery.absent("no current");
    if (peak.discharge() == null) {
      return Figure.absent(peak.reason());
    }
    if (!mix.capacity().isKnown()) {
      return Figure.absent(mix.capacity().notes().get(0));
    }
    Discharge discharge = peak.discharge();
    double part = 1 - (condition.reserve() > 0 ? condition.reserve() : LAST_PART);
    boolean alone = load.isConstant() && load.peak() <= load.averageCurrent();
    double charge = part * (alone ? discharge.profile().end() : mix.capacity().value());
    List<String> notes = new ArrayList<>();
    notes.add(
        "at "
            + number(load.peak())
            + " A when "
            + number(100 * part)
            + " % of the charge is given");
    if (!alone) {
      notes.add("as if the peak had been drawn all along, so rather too low");
    }
    notes.addAll(peak.capacity().notes());
    boolean unsure = discharge.isUnsure() || mix.capacity().unsure();
    List<String> from = joined(discharge.from(), mix.capacity().from());
    if (charge > discharge.profile().end()) {
      notes.add(0, "under the peak the voltage falls to the cut-off before that");
      return new Figure(null, null, condition.cutoffVoltage(), Origin.BOUNDED, from, notes, unsure);
    }
    double value = discharge.profile().voltageAt(charge);
    double shift =
        mix.capacity().high() == null ? 0 : mix.capacity().high() - mix.capacity().value();
    double sooner = discharge.profile().voltageAt(Math.max(0, charge - part * shift));
    double later =
        discharge.profile().voltageAt(Math.min(discharge.profile().end(), charge + part * shift));
    return new Figure(
        value,
        value - Math.hypot(discharge.voltageError(), Math.max(0, value - later)),
        value + Math.hypot(discharge.voltageError(), Math.max(0, sooner - value)),
        discharge.between() || !alone ? Origin.INTERPOLATED : Origin.CURVE,
        from,
        notes,
        unsure);
  }

  /** In W: what the cell loses more than at the lowest rate drawn. */
  private Figure heat(MixedDelivery mix) {
    if (mix.parts().isEmpty()) {
      return Figure.absent(mix.reason());
    }
    RateFamily family = deliveries.family().orElseThrow();
    if (family.members().size() < 2) {
      return Figure.absent("a gap needs curves of two currents, and only one serves");
    }
    Discharge lowest = family.lowest();
    double watts = 0;
    double error = 0;
    boolean unsure = lowest.isUnsure();
    Set<String> from = new LinkedHashSet<>(lowest.from());
    for (MixedDelivery.Part part : mix.parts()) {
      Discharge discharge = part.discharge();
      double charge = Math.min(discharge.profile().end(), lowest.profile().end());
      double gap =
          (lowest.profile().energyTo(charge) - discharge.profile().energyTo(charge)) / charge;
      double reading = discharge == lowest ? 0 : lowest.voltageError() + discharge.voltageError();
      watts += part.time() * part.current() * gap;
      error += part.time() * part.current() * reading;
      unsure |= discharge.isUnsure();
      from.addAll(discharge.from());
    }
    return new Figure(
        watts,
        watts - error,
        watts + error,
        Origin.DERIVED,
        List.copyOf(from),
        List.of(
            "from the gap to " + lowest.name(), "what the lowest rate itself loses is not in it"),
        unsure || mix.capacity().unsure());
  }

  /** In V: the heat for each ampere of the average. */
  private static Figure drop(Figure heat, Load load) {
    if (!heat.isKnown()) {
      return heat;
    }
    double current = load.averageCurrent();
    return new Figure(
        heat.value() / current,
        heat.low() / current,
        heat.high() / current,
        heat.origin(),
        heat.from(),
        heat.notes(),
        heat.unsure());
  }

  static List<String> joined(List<String> one, List<String> two) {
    Set<String> all = new LinkedHashSet<>(one);
    all.addAll(two);
    return List.copyOf(all);
  }
}
