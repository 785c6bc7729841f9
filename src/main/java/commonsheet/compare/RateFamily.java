package commonsheet.compare;

import java.util.List;

/** Discharges of one cell by current, and what lies between them. */
final class RateFamily {
  /**
   * A current this near to that of a curve is its current, as a share: sheets print currents to
   * three digits.
   */
  private static final double SAME = 0.005;

  private final List<Discharge> members;
  private final MonotoneCubic capacities;
  private final MonotoneCubic energies;

  /** Found out when something between the members is first asked for, which is not always. */
  private Openness open;

  /**
   * A family that tells by itself how far off may be what lies between its members.
   *
   * @param members by ascending current, at least one
   */
  RateFamily(List<Discharge> members) {
    this(members, null);
  }

  /** A family of which it is known how far off may be what lies between its members. */
  RateFamily(List<Discharge> members, Openness open) {
    this.members = List.copyOf(members);
    this.open = open;
    if (members.size() < 2) {
      capacities = null;
      energies = null;
      return;
    }
    double[] currents = members.stream().mapToDouble(Discharge::current).toArray();
    capacities =
        new MonotoneCubic(
            currents, members.stream().mapToDouble(m -> m.capacity().value()).toArray());
    energies =
        new MonotoneCubic(
            currents, members.stream().mapToDouble(m -> m.energy().value()).toArray());
  }

  List<Discharge> members() {
    return members;
  }

  Discharge lowest() {
    return members.get(0);
  }

  Discharge highest() {
    return members.get(members.size() - 1);
  }

  boolean isAbove(double current) {
    return current > highest().current() * (1 + SAME);
  }

  boolean isBelow(double current) {
    return current < lowest().current() * (1 - SAME);
  }

  /**
   * The discharge at a current.
   *
   * @param current in A, neither above nor below the family
   */
  Discharge at(double current) {
    for (Discharge member : members) {
      if (Math.abs(current - member.current()) <= SAME * member.current()) {
        return member;
      }
    }
    int next = 1;
    while (members.get(next).current() < current) {
      next++;
    }
    Discharge one = members.get(next - 1);
    Discharge two = members.get(next);
    double share = (current - one.current()) / (two.current() - one.current());
    open = open == null ? Openness.of(members) : open;
    return Discharge.between(one, two, share, capacities.at(current), energies.at(current), open);
  }

  /** Whether more current gives less, as far as the curves can tell. */
  boolean isOrdered() {
    for (int i = 1; i < members.size(); i++) {
      if (members.get(i).capacity().low() > members.get(i - 1).capacity().high()
          || members.get(i).energy().low() > members.get(i - 1).energy().high()) {
        return false;
      }
    }
    return true;
  }
}
