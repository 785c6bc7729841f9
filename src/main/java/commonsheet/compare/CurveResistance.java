package commonsheet.compare;

import java.util.ArrayList;
import java.util.List;

/**
 * The DC resistance that the separation of two discharge curves amounts to: (V₁ − V₂) / (I₂ − I₁)
 * at equal charge, the two-current definition of IEC 61960-3 taken along whole discharges.
 */
final class CurveResistance {
  private static final double MIDDLE = 0.5;
  private static final double FROM = 0.2;
  private static final double TO = 0.8;
  private static final int STEPS = 12;
  private static final double MILLIOHM = 1000;

  private CurveResistance() {}

  /** From the lowest and the highest rate of a family. */
  static Figure of(RateFamily family) {
    if (family.members().size() < 2) {
      return Figure.absent("a separation needs curves of two currents, and only one serves");
    }
    Discharge low = family.lowest();
    Discharge high = family.highest();
    double whole = low.capacity().value();
    if (MIDDLE * whole > high.profile().end()) {
      return Figure.absent("the curve of the highest current ends before half of the charge");
    }
    double value = at(low, high, MIDDLE * whole);
    double least = value;
    double most = value;
    for (int i = 0; i <= STEPS; i++) {
      double charge = (FROM + (TO - FROM) * i / STEPS) * whole;
      if (charge <= high.profile().end()) {
        least = Math.min(least, at(low, high, charge));
        most = Math.max(most, at(low, high, charge));
      }
    }
    double reading =
        Math.hypot(low.voltageError(), high.voltageError())
            / (high.current() - low.current())
            * MILLIOHM;
    List<String> notes = new ArrayList<>();
    notes.add("between " + low.name() + " and " + high.name());
    notes.add("at half of the charge that the lower rate gives, bounds from 20 to 80 % of it");
    notes.add("heating and diffusion are in it, so not below a pulse DC resistance");
    notes.addAll(LoadFigures.joined(low.doubts(), high.doubts()));
    return new Figure(
        value,
        least - reading,
        most + reading,
        Origin.DERIVED,
        LoadFigures.joined(low.from(), high.from()),
        notes,
        low.isUnsure() || high.isUnsure());
  }

  private static double at(Discharge low, Discharge high, double charge) {
    return (low.profile().voltageAt(charge) - high.profile().voltageAt(charge))
        / (high.current() - low.current())
        * MILLIOHM;
  }
}
