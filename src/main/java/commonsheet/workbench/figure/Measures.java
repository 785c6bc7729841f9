package commonsheet.workbench.figure;

import commonsheet.export.MeasureHead;
import commonsheet.quantity.Units;
import java.util.List;

/** What the axis of a chart can show, and the units that sheets print it in. */
final class Measures {
  private static final List<Choice> ALL =
      List.of(
          choice("capacity", "Capacity", "A.h", "mA.h", "%"),
          choice("voltage", "Voltage", "V", "mV"),
          choice("current", "Current", "A", "mA"),
          choice("time", "Time", "s", "min", "h"),
          choice("temperature", "Temperature", "Cel", "[degF]"),
          choice("cycles", "Cycles", "1"),
          choice("capacityRetention", "Capacity left", "%"),
          choice("stateOfCharge", "State of charge", "%"),
          choice("depthOfDischarge", "Depth of discharge", "%"),
          choice("energy", "Energy", "W.h"),
          choice("resistance", "Resistance", "mOhm", "Ohm"),
          choice("power", "Power", "W"));

  private Measures() {}

  /**
   * A quantity.
   *
   * @param units the canonical one first
   */
  record Choice(String quantity, String label, List<Unit> units) {}

  /**
   * A unit that values can be typed in.
   *
   * @param code UCUM code
   * @param shown as the trade writes it; empty for counts
   * @param kept UCUM code of the unit that the record keeps them in
   * @param factor times the number plus {@code shift} is the number kept
   */
  record Unit(String code, String shown, String kept, double factor, double shift) {}

  static List<Choice> all() {
    return ALL;
  }

  /** Whether a record keeps a quantity in this unit. */
  static boolean isKept(String quantity, String unit) {
    return ALL.stream()
        .filter(choice -> choice.quantity().equals(quantity))
        .flatMap(choice -> choice.units().stream())
        .anyMatch(each -> each.kept().equals(unit));
  }

  private static Choice choice(String quantity, String label, String canonical, String... others) {
    List<Unit> units = new java.util.ArrayList<>(List.of(unit(canonical, canonical)));
    for (String other : others) {
      // A share of the capacity cannot be told in ampere-hours and stays a share.
      units.add(unit(other, other.equals("%") ? other : canonical));
    }
    return new Choice(quantity, label, List.copyOf(units));
  }

  private static Unit unit(String code, String kept) {
    double shift = Units.convert(0, code, kept);
    double factor = Units.convert(1, code, kept) - shift;
    return new Unit(code, code.equals("1") ? "" : MeasureHead.unit(code), kept, factor, shift);
  }
}
