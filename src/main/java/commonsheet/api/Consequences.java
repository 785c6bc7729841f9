package commonsheet.api;

import commonsheet.chart.derived.DerivedFigures;
import commonsheet.check.Checks;
import commonsheet.record.CellRecord;

/** What follows from what a record says. */
public final class Consequences {
  private Consequences() {}

  /**
   * The record with what follows from it computed anew: values derived from its curves, and what
   * the checks find. For whoever has changed a record.
   */
  public static CellRecord drawn(CellRecord record) {
    return Checks.standard().applied(DerivedFigures.applied(record));
  }
}
