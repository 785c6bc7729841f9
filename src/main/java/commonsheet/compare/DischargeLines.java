package commonsheet.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Discharges as points, for charts and for sizing tools. */
final class DischargeLines {
  /** Into so many steps the largest charge is divided. */
  private static final int STEPS = 50;

  private DischargeLines() {}

  /** Densely, so that straight pieces between the points stay on the line. */
  static DischargeLine of(Discharge discharge) {
    List<Double> charges = new ArrayList<>();
    List<Double> voltages = new ArrayList<>();
    double end = discharge.profile().end();
    for (double charge : places(discharge.profile())) {
      charges.add(charge);
      voltages.add(discharge.profile().voltageAt(Math.min(end, charge)));
    }
    return new DischargeLine(
        String.join("+", discharge.curves()),
        discharge.current(),
        discharge.temperature(),
        charges,
        voltages,
        discharge.isUnsure());
  }

  private static Set<Double> places(Profile profile) {
    Set<Double> places = new TreeSet<>();
    for (int i = 0; i <= STEPS; i++) {
      places.add(profile.end() * i / STEPS);
    }
    if (profile instanceof TracedProfile traced) {
      traced.points().forEach(p -> places.add(p[0]));
    }
    return places;
  }

  /** Voltage over current and charge; the end of every row is among the charges. */
  static VoltageTable table(List<Discharge> members, Condition condition) {
    double most = members.stream().mapToDouble(m -> m.profile().end()).max().orElseThrow();
    TreeSet<Double> charges = new TreeSet<>();
    for (int i = 0; i <= STEPS; i++) {
      charges.add(most * i / STEPS);
    }
    members.forEach(m -> charges.add(m.profile().end()));
    List<List<Double>> rows = new ArrayList<>();
    Set<String> from = new LinkedHashSet<>();
    for (Discharge member : members) {
      from.addAll(member.curves());
      List<Double> row = new ArrayList<>();
      for (double charge : charges) {
        row.add(charge <= member.profile().end() ? member.profile().voltageAt(charge) : null);
      }
      rows.add(Collections.unmodifiableList(row));
    }
    return new VoltageTable(
        members.stream().map(Discharge::current).toList(),
        List.copyOf(charges),
        List.copyOf(rows),
        members.stream().mapToDouble(Discharge::voltageError).max().orElseThrow(),
        condition.cutoffVoltage(),
        temperature(members),
        List.copyOf(from),
        members.stream().anyMatch(Discharge::isUnsure));
  }

  private static Double temperature(List<Discharge> members) {
    return members.stream().allMatch(m -> m.temperature() != null)
        ? members.stream().mapToDouble(Discharge::temperature).average().orElseThrow()
        : null;
  }
}
