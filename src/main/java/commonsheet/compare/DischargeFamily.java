package commonsheet.compare;

import commonsheet.record.CellRecord;
import java.util.List;
import java.util.Optional;

/**
 * The discharges of one cell that serve at a condition, and what they say about any load between
 * their currents.
 */
public final class DischargeFamily {
  private DischargeFamily() {}

  /** What a record's curves and printed values give at the condition's cut-off and temperature. */
  public static DischargeFamily of(CellRecord record, Condition condition) {
    throw new UnsupportedOperationException(record.id() + condition);
  }

  /** The discharges used, by ascending current; none where no curve serves. */
  public List<DischargeLine> lines() {
    throw new UnsupportedOperationException();
  }

  /** The cell under a load per cell, every measure with its origin. */
  public CellFigures under(Load load) {
    throw new UnsupportedOperationException(load.toString());
  }

  /** The look-up grid over the digitised currents; nothing where fewer than two curves serve. */
  public Optional<VoltageTable> voltageTable() {
    throw new UnsupportedOperationException();
  }
}
