package commonsheet.compare;

import org.hipparchus.analysis.solvers.BrentSolver;

/** The voltage under one load while charge is given, from full to the end of the discharge. */
interface Profile {
  /** Charges are found to this, in A.h: a thousandth of the smallest step that sheets print. */
  double FOUND = 1e-6;

  int MOST_STEPS = 200;

  /** The charge at which it ends, in A.h. */
  double end();

  /**
   * In V.
   *
   * @param charge given, from 0 to {@link #end()}, in A.h
   */
  double voltageAt(double charge);

  /**
   * Energy given until then, in W.h.
   *
   * @param charge given, from 0 to {@link #end()}, in A.h
   */
  double energyTo(double charge);

  /**
   * Where the voltage falls to a level.
   *
   * @param level in V, not above the voltage at {@code from} nor below the one at the end
   * @param from where to begin, in A.h
   */
  default double chargeAt(double level, double from) {
    if (voltageAt(from) <= level) {
      return from;
    }
    if (voltageAt(end()) >= level) {
      return end();
    }
    return new BrentSolver(FOUND).solve(MOST_STEPS, q -> voltageAt(q) - level, from, end());
  }
}
