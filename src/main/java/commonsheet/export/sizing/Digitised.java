package commonsheet.export.sizing;

import commonsheet.compare.Condition;
import commonsheet.compare.DischargeFamily;
import commonsheet.compare.DischargeLine;
import commonsheet.compare.Figure;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.VoltageTable;
import commonsheet.record.CellRecord;
import commonsheet.record.Conditions;
import commonsheet.record.Standing;
import commonsheet.record.Statement;
import java.util.List;

/**
 * What a cell's digitised discharges give without a load being named.
 *
 * @param condition the cut-off and temperature at which they were looked at
 * @param table the look-up grid, or null where there is none
 * @param why there is no grid, the end of a sentence; null where there is one
 * @param resistance from the separation of the curves, in mOhm
 */
record Digitised(Condition condition, VoltageTable table, String why, Figure resistance) {

  static Digitised of(CellRecord record, Double cutoff, double temperature) {
    double end = cutoff == null ? ownCutoff(record) : cutoff;
    Condition condition =
        new Condition(Load.constant(1), end, temperature, 0, Condition.Tolerance.STANDARD);
    DischargeFamily family = DischargeFamily.of(record, condition);
    List<DischargeLine> lines = family.lines();
    if (lines.size() < 2) {
      String why =
          lines.isEmpty()
              ? "no discharge curve of the sheet serves at this cut-off and temperature"
              : "only one discharge curve of the sheet serves at this cut-off and temperature";
      return new Digitised(condition, null, why, Figure.absent(why));
    }
    VoltageTable table = family.voltageTable().orElse(null);
    Load load = Load.constant(middle(lines));
    Figure resistance = family.under(load).figure(Measure.CURVE_RESISTANCE);
    String why = table == null ? "the curves do not give one grid" : null;
    return new Digitised(condition.under(load), table, why, resistance);
  }

  /** Midway between the outermost digitised currents, so that it lies between curves. */
  private static double middle(List<DischargeLine> lines) {
    return (lines.get(0).current() + lines.get(lines.size() - 1).current()) / 2;
  }

  /**
   * The cut-off that the sheet states; where it states several, the highest, to which all curves
   * reach; where it states none, the usual one.
   */
  private static double ownCutoff(CellRecord record) {
    return record.statements().stream()
        .filter(s -> s.quantity().equals("dischargeCutoffVoltage"))
        .filter(s -> s.standing() != Standing.REJECTED && s.value() != null)
        .mapToDouble(Statement::value)
        .max()
        .orElse(Condition.USUAL_CUTOFF);
  }

  /** The condition as a record states conditions. */
  Conditions conditions() {
    return Conditions.NONE
        .with(Conditions.CUTOFF_VOLTAGE, condition.cutoffVoltage())
        .with(Conditions.TEMPERATURE, condition.temperature());
  }
}
