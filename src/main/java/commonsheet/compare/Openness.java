package commonsheet.compare;

import commonsheet.discharge.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * How far a value between two discharges may be off, as a share of the gap between them when it
 * lies half-way, and less towards either. A cell with enough curves tells it by itself: each curve
 * between others is put between them as if it were not there, and how far that is off counts.
 */
record Openness(double capacity, double energy, double voltage) {
  /**
   * Where a cell has too few curves to tell, or they do not follow each other smoothly. Chosen so
   * that the hidden rates of measured cells lie within it (docs/compare.md, how the figures are
   * computed).
   */
  static final Openness WIDE = new Openness(0.4, 0.4, 0.4);

  /** Fewer leave less than two between others, and one may fit by chance. */
  private static final int FEWEST = 4;

  /** Two or three curves that fit do not show that a fourth does: common practice, no source. */
  private static final double MARGIN = 2;

  /** And they do not show that nothing lies beside the line. */
  private static final double LEAST = 0.1;

  /** What the curves of one cell tell of themselves. */
  static Openness of(List<Discharge> members) {
    if (members.size() < FEWEST) {
      return WIDE;
    }
    Openness most = new Openness(LEAST, LEAST, LEAST);
    for (int i = 1; i < members.size() - 1; i++) {
      List<Discharge> others = new ArrayList<>(members);
      Discharge hidden = others.remove(i);
      Discharge said = new RateFamily(others, WIDE).at(hidden.current());
      Neighbours around = new Neighbours(others.get(i - 1), hidden, others.get(i), said);
      most =
          new Openness(
              Math.max(most.capacity, around.apart(Discharge::capacity)),
              Math.max(most.energy, around.apart(Discharge::energy)),
              Math.max(most.voltage, around.apart(Discharge::meanVoltage)));
    }
    // Curves of which one stands apart in any respect are not smooth in the others by merit.
    boolean smooth = Math.max(most.capacity, Math.max(most.energy, most.voltage)) <= WIDE.capacity;
    return smooth ? most : WIDE;
  }

  /** Nothing is open at the curves themselves. */
  static double at(double share) {
    return 4 * share * (1 - share);
  }

  /** A curve, those around it, and what they say of it. */
  private record Neighbours(Discharge one, Discharge hidden, Discharge two, Discharge said) {
    double apart(Function<Discharge, Estimate> kind) {
      Estimate truth = kind.apply(hidden);
      double off = Math.abs(kind.apply(said).value() - truth.value());
      if (off <= truth.halfWidth()) {
        return 0;
      }
      double share = (hidden.current() - one.current()) / (two.current() - one.current());
      double gap = Math.abs(kind.apply(one).value() - kind.apply(two).value());
      return MARGIN * off / (at(share) * gap);
    }
  }
}
