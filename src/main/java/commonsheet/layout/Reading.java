package commonsheet.layout;

import commonsheet.record.CellRecord;
import java.util.List;

/**
 * What a sheet gave.
 *
 * @param records one per model the sheet describes; empty where it describes no lithium-ion cell
 * @param reason why there is no record, one sentence; null where there is one
 */
public record Reading(List<CellRecord> records, Explanation explanation, String reason) {
  public Reading {
    records = List.copyOf(records);
  }
}
