package commonsheet.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Discharges at a temperature that a sheet shows none of, each between the nearest colder and the
 * nearest warmer one of the same current.
 */
final class BetweenTemperatures {
  private BetweenTemperatures() {}

  /** One for each current that is shown on both sides of the temperature asked for. */
  static List<Discharge> of(List<CurveAtCurrent> curves, Condition condition) {
    double asked = condition.temperature();
    List<Discharge> all =
        curves.stream()
            .filter(c -> c.temperature() != null)
            .flatMap(
                c ->
                    Discharge.of(c, condition.cutoffVoltage()).stream()
                        .map(d -> d.named(c.namedWithTemperature())))
            .toList();
    List<Double> currents = new ArrayList<>();
    List<Discharge> between = new ArrayList<>();
    for (Discharge one : all) {
      if (currents.stream().anyMatch(i -> CurveChoice.sameCurrent(i, one.current()))) {
        continue;
      }
      currents.add(one.current());
      List<Discharge> same =
          all.stream().filter(d -> CurveChoice.sameCurrent(d.current(), one.current())).toList();
      Optional<Discharge> colder =
          same.stream()
              .filter(d -> d.temperature() < asked)
              .max(Comparator.comparingDouble(Discharge::temperature));
      Optional<Discharge> warmer =
          same.stream()
              .filter(d -> d.temperature() > asked)
              .min(Comparator.comparingDouble(Discharge::temperature));
      if (colder.isPresent() && warmer.isPresent()) {
        between.add(at(asked, colder.get(), warmer.get()));
      }
    }
    return between;
  }

  private static Discharge at(double asked, Discharge colder, Discharge warmer) {
    double share = (asked - colder.temperature()) / (warmer.temperature() - colder.temperature());
    return Discharge.between(
        colder,
        warmer,
        share,
        mixed(colder.capacity().value(), warmer.capacity().value(), share),
        mixed(colder.energy().value(), warmer.energy().value(), share),
        Openness.WIDE);
  }

  private static double mixed(double one, double two, double share) {
    return one + share * (two - one);
  }
}
