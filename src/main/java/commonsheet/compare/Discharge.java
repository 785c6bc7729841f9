package commonsheet.compare;

import commonsheet.discharge.CutOff;
import commonsheet.discharge.DischargeCurve;
import commonsheet.discharge.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A discharge at one current and temperature down to the cut-off asked for: traced, or put between
 * two that are.
 *
 * @param name for people, such as {@code curve c3 (4.8 A)}
 * @param from ids of the curves and statements it comes from
 * @param curves ids of the curves among them, for people
 * @param current in A
 * @param temperature in °C, or null where the chart does not say
 * @param capacity in A.h
 * @param energy in W.h
 * @param meanVoltage in V
 * @param voltageError how far the voltage along it may be off, in V
 * @param doubts why it is unsure, one sentence each; empty where it is not
 * @param between whether it lies between others
 */
record Discharge(
    String name,
    List<String> from,
    List<String> curves,
    double current,
    Double temperature,
    Profile profile,
    Estimate capacity,
    Estimate energy,
    Estimate meanVoltage,
    double voltageError,
    List<String> doubts,
    boolean between) {
  Discharge {
    from = List.copyOf(from);
    curves = List.copyOf(curves);
    doubts = List.copyOf(doubts);
  }

  /** The same under another name. */
  Discharge named(String other) {
    return new Discharge(
        other,
        from,
        curves,
        current,
        temperature,
        profile,
        capacity,
        energy,
        meanVoltage,
        voltageError,
        doubts,
        between);
  }

  /** For people: along which curve, or between which. */
  String how() {
    return (between ? "between " : "along ") + name;
  }

  boolean isUnsure() {
    return !doubts.isEmpty();
  }

  /**
   * A traced curve down to a cut-off; nothing where it ends before, or begins late.
   *
   * @param source the curve with its current
   */
  static Optional<Discharge> of(CurveAtCurrent source, double cutoffVoltage) {
    return DischargeCurve.of(source.curve(), new CutOff(cutoffVoltage, null))
        .filter(curve -> curve.unit().equals(DischargeCurve.AMPERE_HOURS))
        .filter(curve -> curve.voltage(0) > cutoffVoltage)
        .flatMap(curve -> of(source, curve));
  }

  private static Optional<Discharge> of(CurveAtCurrent source, DischargeCurve curve) {
    Optional<Estimate> capacity = curve.capacity();
    Optional<Estimate> straight = capacity.flatMap(curve::energy);
    if (straight.isEmpty()) {
      return Optional.empty();
    }
    Estimate charge = capacity.get();
    double last = curve.voltage(curve.size() - 1);
    double cutOff = curve.cutOff().voltage();
    TracedProfile profile = TracedProfile.of(curve, charge.value(), Math.max(cutOff, last));
    double energy = profile.energyTo(charge.value());
    // How the line runs between the points of a curve is not known any better than this.
    double bend = Math.abs(energy - straight.get().value());
    double mean = energy / charge.value();
    double below = Math.hypot(bend, straight.get().value() - straight.get().low());
    double above = Math.hypot(bend, straight.get().high() - straight.get().value());
    double error = source.curve().uncertainty().y();
    double byCharge = (mean - cutOff) * charge.relative();
    double half = Math.hypot(Math.hypot(error, byCharge), bend / charge.value());
    return Optional.of(
        new Discharge(
            source.named(),
            source.from(),
            List.of(source.curve().id()),
            source.current(),
            source.temperature(),
            profile,
            charge,
            new Estimate(energy, energy - below, energy + above),
            Estimate.within(mean, half),
            error,
            source.doubts(),
            false));
  }

  /**
   * Between two discharges, in current or in temperature.
   *
   * @param share of the second, 0 to 1
   * @param capacity at that place by way of the capacities alone, in A.h
   * @param energy likewise, in W.h
   * @param open how far what lies between may be off
   */
  static Discharge between(
      Discharge one, Discharge two, double share, double capacity, double energy, Openness open) {
    double most = Openness.at(share);
    ProfileBetween profile = new ProfileBetween(one.profile, two.profile, share);
    double charge = profile.end();
    double work = profile.energyTo(charge);
    // Two ways lead there; the truth is looked for in their middle.
    double given = (capacity + charge) / 2;
    double delivered = (energy + work) / 2;
    double mean = delivered / given;
    double apart = Math.abs(energy / capacity - work / charge) / 2;
    return new Discharge(
        one.name + " and " + two.name,
        joined(one.from, two.from),
        joined(one.curves, two.curves),
        one.current + share * (two.current - one.current),
        mixed(one.temperature, two.temperature, share),
        profile,
        bounded(
            one.capacity,
            two.capacity,
            share,
            given,
            Math.hypot(
                Math.abs(capacity - charge) / 2,
                open.capacity() * most * one.gap(two, Discharge::capacity))),
        bounded(
            one.energy,
            two.energy,
            share,
            delivered,
            Math.hypot(
                Math.abs(energy - work) / 2,
                open.energy() * most * one.gap(two, Discharge::energy))),
        widened(
            one.meanVoltage,
            two.meanVoltage,
            share,
            mean,
            Math.hypot(apart, open.voltage() * most * one.gap(two, Discharge::meanVoltage))),
        Math.max(one.voltageError, two.voltageError)
            + open.voltage() * most * one.gap(two, Discharge::meanVoltage),
        joined(one.doubts, two.doubts),
        true);
  }

  /** Within the bounds of both, since what lies between two neighbours is taken to be monotone. */
  private static Estimate bounded(
      Estimate one, Estimate two, double share, double value, double open) {
    Estimate wide = widened(one, two, share, value, open);
    return new Estimate(
        value,
        Math.min(value, Math.max(wide.low(), Math.min(one.low(), two.low()))),
        Math.max(value, Math.min(wide.high(), Math.max(one.high(), two.high()))));
  }

  private static Estimate widened(
      Estimate one, Estimate two, double share, double value, double open) {
    double below =
        one.value() - one.low() + share * (two.value() - two.low() - one.value() + one.low());
    double above =
        one.high() - one.value() + share * (two.high() - two.value() - one.high() + one.value());
    return new Estimate(value, value - Math.hypot(below, open), value + Math.hypot(above, open));
  }

  private double gap(Discharge other, Function<Discharge, Estimate> kind) {
    return Math.abs(kind.apply(this).value() - kind.apply(other).value());
  }

  private static Double mixed(Double one, Double two, double share) {
    return one == null || two == null ? null : one + share * (two - one);
  }

  private static List<String> joined(List<String> one, List<String> two) {
    List<String> all = new ArrayList<>(one);
    two.stream().filter(id -> !all.contains(id)).forEach(all::add);
    return all;
  }
}
