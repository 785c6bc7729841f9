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
import java.util.Map;

/**
 * What is known of a cell without a load being named.
 *
 * @param condition the cut-off and temperature at which its discharges were looked at
 * @param table the look-up grid, or null where there is none
 * @param why there is no grid, the end of a sentence; null where there is one
 * @param figures those that do not depend on a load: what the sheet states, and the resistance from
 *     curves
 */
record Digitised(
    Condition condition, VoltageTable table, String why, Map<Measure, Figure> figures) {

  static Digitised of(CellRecord record, Double cutoff, double temperature) {
    double end = cutoff == null ? ownCutoff(record) : cutoff;
    Condition condition =
        new Condition(Load.constant(1), end, temperature, 0, Condition.Tolerance.STANDARD);
    DischargeFamily family = DischargeFamily.of(record, condition);
    List<DischargeLine> lines = family.lines();
    // Any load will do for what does not depend on it; this one lies between curves.
    Load load = Load.constant(lines.isEmpty() ? 1 : middle(lines));
    Map<Measure, Figure> figures = family.under(load).figures();
    VoltageTable table = family.voltageTable().orElse(null);
    return new Digitised(condition, table, table == null ? why(lines.size()) : null, figures);
  }

  private static String why(int lines) {
    return switch (lines) {
      case 0 -> "no discharge curve of the sheet serves at this cut-off and temperature";
      case 1 -> "only one discharge curve of the sheet serves at this cut-off and temperature";
      default -> "the discharge curves of the sheet do not make one grid";
    };
  }

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

  /** Under which conditions the curves stand, as a record states them. */
  Conditions conditions() {
    Conditions cutoff = Conditions.NONE.with(Conditions.CUTOFF_VOLTAGE, condition.cutoffVoltage());
    return table == null || table.temperature() == null
        ? cutoff
        : cutoff.with(Conditions.TEMPERATURE, table.temperature());
  }
}
