package commonsheet.quantity;

import java.math.BigDecimal;

/** The one unit of two amounts of a figure: "0 ~ 45 °C", "4.2V ± 50mV", "20º ± 5C". */
final class CommonUnit {
  private CommonUnit() {}

  /** Whether two units, either of which may be null, can belong to one figure. */
  static boolean exists(PrintedUnit first, PrintedUnit second) {
    return first == null
        || second == null
        || first.unit().equals(second.unit())
        || areTemperatures(first, second)
        || areHumidity(first, second)
        || (first.dimension() == second.dimension() && first.dimension() != Dimension.OTHER);
  }

  /** The unit the figure is given in: the preferred one unless the other says more. */
  static PrintedUnit of(PrintedUnit preferred, PrintedUnit other) {
    if (preferred == null || other == null) {
      return preferred == null ? other : preferred;
    }
    if (areTemperatures(preferred, other)) {
      // "20º ± 5C": the degree sign and the letter settle each other.
      return preferred.loneC() ? other.settled() : preferred.settled();
    }
    boolean saysLess = preferred.doubtful() || preferred.dimension() == Dimension.RATIO;
    return saysLess ? other : preferred;
  }

  /** A number printed in one unit, in the figure's unit. */
  static BigDecimal inUnit(BigDecimal number, PrintedUnit from, PrintedUnit to) {
    return isSameScale(from, to)
        ? number
        : UnitTable.standard().convert(number, from.unit().ucum(), to.unit().ucum());
  }

  /** A tolerance printed in one unit, in the figure's unit. */
  static BigDecimal differenceInUnit(BigDecimal difference, PrintedUnit from, PrintedUnit to) {
    return isSameScale(from, to)
        ? difference
        : UnitTable.standard().convertDifference(difference, from.unit().ucum(), to.unit().ucum());
  }

  private static boolean isSameScale(PrintedUnit from, PrintedUnit to) {
    return from == null
        || to == null
        || from.dimension() != to.dimension()
        || from.doubtful()
        || from.unit().equals(to.unit());
  }

  private static boolean areTemperatures(PrintedUnit first, PrintedUnit second) {
    return (first.dimension() == Dimension.TEMPERATURE && second.loneC())
        || (second.dimension() == Dimension.TEMPERATURE && first.loneC());
  }

  private static boolean areHumidity(PrintedUnit first, PrintedUnit second) {
    return (isHumidity(first) && second.dimension() == Dimension.RATIO)
        || (isHumidity(second) && first.dimension() == Dimension.RATIO);
  }

  private static boolean isHumidity(PrintedUnit unit) {
    return unit.unit().ucum().equals("%{RH}");
  }
}
