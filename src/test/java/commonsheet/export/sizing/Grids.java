package commonsheet.export.sizing;

import commonsheet.compare.Condition;
import commonsheet.compare.Figure;
import commonsheet.compare.Load;
import commonsheet.compare.Measure;
import commonsheet.compare.Origin;
import commonsheet.compare.VoltageTable;
import commonsheet.record.CellRecord;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Hand-made look-up grids of the invented cells. */
final class Grids {
  private Grids() {}

  /** Three currents; the discharges end at 2.5, 2.4 and 2.1 A·h. */
  static VoltageTable three() {
    return new VoltageTable(
        List.of(0.52, 2.6, 10.0),
        List.of(0.0, 1.0, 2.1, 2.4, 2.5),
        List.of(
            List.of(4.15, 3.7, 3.3, 2.9, 2.5),
            Arrays.asList(4.05, 3.6, 3.1, 2.5, null),
            Arrays.asList(3.9, 3.4, 2.5, null, null)),
        0.0125,
        2.5,
        23.0,
        List.of("c1", "c2", "c3"),
        false);
  }

  static Condition condition() {
    return new Condition(Load.constant(5), 2.5, 23, 0, Condition.Tolerance.STANDARD);
  }

  static Digitised with(VoltageTable table) {
    Figure resistance =
        new Figure(
            24.5,
            22.0,
            27.0,
            Origin.DERIVED,
            List.of("c1", "c3"),
            List.of("Between 0.52 and 10 A."),
            false);
    return new Digitised(condition(), table, null, Map.of(Measure.CURVE_RESISTANCE, resistance));
  }

  static Digitised none() {
    String why = "no discharge curve of the sheet serves at this cut-off and temperature";
    return new Digitised(
        condition(), null, why, Map.of(Measure.CURVE_RESISTANCE, Figure.absent(why)));
  }

  static CellVoltageTable of(CellRecord record) {
    return CellVoltageTable.of(record, three());
  }
}
